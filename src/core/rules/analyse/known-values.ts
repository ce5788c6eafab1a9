import type { KnownChoice, KnownDate, KnownNumber, KnownSigns, Origin } from '../../facts/types.ts';
import { epochSeconds } from '../../units/brands.ts';

const supposed: Origin & { readonly known: true } = {
  known: true,
  source: 'said',
  at: epochSeconds(0),
  goodUntil: null,
};

/** A number known without a band, supposed for an analysis. */
export function knownNumber(value: number): KnownNumber {
  return { ...supposed, type: 'number', value, low: value, high: value };
}

/** A day known, supposed for an analysis; `iso` is YYYY-MM-DD. */
export function knownDate(iso: string): KnownDate {
  return { ...supposed, type: 'date', iso };
}

/** A choice known to be just this one, supposed for an analysis. */
export function knownChoice(choice: string): KnownChoice {
  return { ...supposed, type: 'choice', possible: [choice] };
}

/** Signs known to be just these, supposed for an analysis. */
export function knownSigns(present: readonly string[]): KnownSigns {
  return { ...supposed, type: 'signs', present, possible: present };
}
