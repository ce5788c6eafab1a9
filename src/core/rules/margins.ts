import type { KnownDate, KnownNumber, Resolved } from '../facts/types.ts';
import type { Margin } from './trace-types.ts';
import type { CompiledComparison } from './types.ts';

/**
 * How far a known number or date is from the limit of a comparison, or null where there is no distance to tell.
 * Positive = room left before the rule is met; under an odd number of `not` the sign turns. Numbers in the fact's unit,
 * kept to 1e-9; dates in days within the fact's own year.
 */
export function marginOf(comparison: CompiledComparison, fact: Resolved, negated: boolean): Margin | null {
  const { limit, parameter, op } = comparison;
  if (!fact.known || limit.kind === 'choices' || parameter === null) return null;
  const sign = (op === 'above' || op === 'atLeast') !== negated ? 1 : -1;
  if (fact.type === 'number') return numberMargin(comparison, parameter, fact, limit.value, sign);
  return fact.type === 'date' ? dateMargin(comparison, parameter, fact, limit.value, sign) : null;
}

function numberMargin(
  { fact: id, unit }: CompiledComparison,
  parameter: string,
  { value, low, high }: KnownNumber,
  limit: number,
  sign: 1 | -1,
): Margin {
  const worst = sign * (limit - (sign > 0 ? high : low));
  return { fact: id, parameter, limit, unit, margin: tidy(sign * (limit - value)), worst: tidy(worst) };
}

function dateMargin(
  { fact: id }: CompiledComparison,
  parameter: string,
  { iso }: KnownDate,
  limit: number,
  sign: 1 | -1,
): Margin {
  const year = Number(iso.slice(0, 4));
  const month = Math.floor(limit / 100);
  const day = limit % 100;
  const here = dayNumber(year, Number(iso.slice(5, 7)), Number(iso.slice(8)));
  const margin = tidy(sign * (dayNumber(year, month, day) - here));
  return { fact: id, parameter, limit: `${pad(month)}-${pad(day)}`, unit: 'days', margin, worst: margin };
}

function tidy(value: number): number {
  return Math.round(value * 1e9) / 1e9 + 0;
}

function pad(value: number): string {
  return value < 10 ? `0${value}` : String(value);
}

const daysBefore = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/** Day of the year in the Gregorian calendar, 1 for 1 January. 29 February of a common year counts as 1 March. */
export function dayNumber(year: number, month: number, day: number): number {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return (daysBefore[month - 1] ?? 0) + day + (leap && month > 2 ? 1 : 0);
}
