import type { Resolved } from '../facts/types.ts';
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
  const rises = op === 'above' || op === 'atLeast';
  const room = (value: number, at: number): number => tidy(rises === negated ? value - at : at - value);
  const common = { fact: comparison.fact, parameter };
  if (fact.type === 'number') {
    const { value, low, high } = fact;
    const margin = room(value, limit.value);
    const worst = Math.min(room(low, limit.value), room(high, limit.value));
    return { ...common, limit: limit.value, unit: comparison.unit, margin, worst };
  }
  if (fact.type !== 'date') return null;
  const [year, month, day] = fact.iso.split('-').map(Number) as [number, number, number];
  const [limitMonth, limitDay] = [Math.floor(limit.value / 100), limit.value % 100];
  const margin = room(dayNumber(year, month, day), dayNumber(year, limitMonth, limitDay));
  const shown = `${String(limitMonth).padStart(2, '0')}-${String(limitDay).padStart(2, '0')}`;
  return { ...common, limit: shown, unit: 'days', margin, worst: margin };
}

function tidy(value: number): number {
  const kept = Math.round(value * 1e9) / 1e9;
  return kept === 0 ? 0 : kept;
}

const daysBefore = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/** Day of the year in the Gregorian calendar, 1 for 1 January. 29 February of a common year counts as 1 March. */
export function dayNumber(year: number, month: number, day: number): number {
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  return (daysBefore[month - 1] ?? 0) + day + (leap && month > 2 ? 1 : 0);
}
