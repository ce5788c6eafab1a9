import { unitSuffix } from '../../src/core/words/units.ts';
import { coreWords, pageWords } from '../words.ts';

/** What a number box takes. Numbers in the fact's unit; null where there is no end. */
export interface NumberRange {
  readonly label: string;
  readonly unit: string | null;
  readonly low: number | null;
  readonly high: number | null;
}

/** The number in a box, or the sentence that says what was expected. */
export type NumberRead = { readonly value: number } | { readonly problem: string };

/**
 * Reads a number box strictly: digits with at most one decimal point or comma and a sign, within the range. Anything else, a unit
 * included, is refused, since a number in another unit must not pass for one in this. A comma before three digits is refused too:
 * it may part thousands or decimals.
 */
export function parseNumber(text: string, range: NumberRange): NumberRead {
  const { label } = range;
  const unit = unitSuffix(range.unit, coreWords);
  const came = text.trim();
  if (came === '') return { problem: pageWords.number.empty(label) };
  if (!/^[-+−]?\d{1,9}([.,]\d{1,9})?$/.test(came))
    return { problem: pageWords.number.notANumber(label, unit, shown(came)) };
  if (/^[-+−]?[1-9]\d{0,2},\d{3}$/.test(came)) {
    return { problem: pageWords.number.twoWays(came, came.replace(',', ''), came.replace(',', '.')) };
  }
  const value = Number(came.replace(',', '.').replace('−', '-'));
  if (value < (range.low ?? -Infinity) || value > (range.high ?? Infinity)) {
    return { problem: pageWords.number.outside(label, endText(range.low), endText(range.high), unit, came) };
  }
  return { value };
}

/** An end of a range in words. */
export function endText(end: number | null): string {
  return end === null ? 'any' : String(end);
}

/** Keyboard that suits: no minus sign is to be had on the number pads of phones. */
export function inputModeOf({ low, step }: { readonly low: number | null; readonly step: number }) {
  if (low === null || low < 0) return 'text' as const;
  return Number.isInteger(step) ? ('numeric' as const) : ('decimal' as const);
}

function shown(came: string): string {
  return came.length > 40 ? `${came.slice(0, 40)}…` : came;
}
