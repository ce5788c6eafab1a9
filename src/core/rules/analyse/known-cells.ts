import Big from 'big.js';
import type { FactDefinition, Known } from '../../facts/types.ts';
import { monthDayNumber } from '../compile.ts';
import { judgeComparison } from '../judge.ts';
import type { CompiledComparison } from '../types.ts';
import { knownChoice, knownDate, knownNumber, knownSigns } from './known-values.ts';

/** Most signs of one fact that are told apart: each doubles the cells. */
const mostSigns = 10;

/**
 * One known value for each way in which comparisons of one fact can come out together, of all values that the fact can have:
 * numbers at the ends of its range, at each limit and one step of its precision off it; of the days of a leap year the first, the
 * last, each limit and its neighbours; every choice; every set of the signs that are asked for. Null where there are too many signs to tell apart.
 */
export function knownCellsOf(
  definition: FactDefinition,
  comparisons: readonly CompiledComparison[],
): readonly Known[] | null {
  const values = valuesOf(definition, comparisons);
  if (values === null) return null;
  const cells = new Map<string, Known>();
  for (const value of values) {
    const outcomes = comparisons.map((comparison) => judgeComparison(comparison, value)).join(' ');
    if (!cells.has(outcomes)) cells.set(outcomes, value);
  }
  return [...cells.values()];
}

function valuesOf(definition: FactDefinition, comparisons: readonly CompiledComparison[]): readonly Known[] | null {
  const named = [...new Set(comparisons.flatMap(({ limit }) => (limit.kind === 'choices' ? limit.values : [])))];
  switch (definition.type) {
    case 'number':
      return numbersOf(definition, comparisons).map(knownNumber);
    case 'date':
      return daysAround(comparisons).map(knownDate);
    case 'choice':
      return (definition.choices ?? []).map(knownChoice);
    case 'country':
      return [...named, elsewhere(named)].map(knownChoice);
    case 'signs':
      return named.length > mostSigns ? null : subsetsOf(named).map(knownSigns);
  }
}

function numbersOf({ range, precision = 1 }: FactDefinition, comparisons: readonly CompiledComparison[]): number[] {
  const limits = comparisons.flatMap(({ limit }) => (limit.kind === 'number' ? [limit.value] : []));
  const [low, high] = range ?? [Math.min(...limits) - 2 * precision, Math.max(...limits) + 2 * precision];
  const around = limits.flatMap((limit) => [-1, 0, 1].map((by) => new Big(precision).times(by).plus(limit).toNumber()));
  return [low, ...around, high].filter((value) => low <= value && value <= high);
}

/** A code of no country (ISO 3166-1 leaves XA to XZ to users) that is not among those named. */
function elsewhere(named: readonly string[]): string {
  const letter = [...'ZYXWVUTSRQPONMLKJIHGFEDCBA'].find((one) => !named.includes(`X${one}`)) ?? 'Z';
  return `X${letter}`;
}

function subsetsOf(signs: readonly string[]): string[][] {
  return signs.reduce<string[][]>((sets, sign) => sets.flatMap((set) => [set, [...set, sign]]), [[]]);
}

function daysAround(comparisons: readonly CompiledComparison[]): string[] {
  const around = comparisons.flatMap(({ limit }) => {
    if (limit.kind !== 'month-day') return [];
    const at = daysOfLeapYear.findIndex((iso) => monthDayNumber(iso.slice(5)) === limit.value);
    return daysOfLeapYear.slice(Math.max(0, at - 1), at + 2);
  });
  return [...daysOfLeapYear.slice(0, 1), ...around, ...daysOfLeapYear.slice(-1)];
}

const monthLengths = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const daysOfLeapYear = monthLengths.flatMap((length, month) =>
  Array.from({ length }, (_, day) => `2028-${two(month + 1)}-${two(day + 1)}`),
);

function two(value: number): string {
  return String(value).padStart(2, '0');
}
