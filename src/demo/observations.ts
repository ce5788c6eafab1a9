import type { FactId } from '../core/facts/registry/index.ts';
import type { FactObservation } from '../core/facts/resolved.ts';
import type { Reading } from '../core/facts/types.ts';
import type { EpochSeconds } from '../core/units/brands.ts';

/** Values of a field in short: a number, or one choice. */
export type ShortValues = Readonly<Partial<Record<FactId, number | string>>>;

/** Short values as observations of one moment. */
export function observe(values: ShortValues, at: EpochSeconds, source: 'profile' | 'said'): FactObservation[] {
  return (Object.entries(values) as [FactId, number | string][]).map(([fact, value]) => ({
    fact,
    reading: readingOf(value),
    at,
    source,
  }));
}

function readingOf(value: number | string): Reading {
  return typeof value === 'number' ? { type: 'number', value } : { type: 'choice', possible: [value] };
}
