import { DateTime } from 'luxon';
import type { FactId } from '../../facts/registry/index.ts';
import type { Parameter } from '../../units/parameter.ts';
import { roundTo } from '../../units/round.ts';
import { comparisonsOf, parameterOf } from '../reads.ts';
import type { Rule } from '../types.ts';
import { changeList, type DefinitionOf } from './change-conditions.ts';

/** A country that no list of a pack names, by the code that stands for another country. */
export const otherCountry = 'ZZ';

/** Days by which a day of the year is moved: the least, and a week. */
const daySteps = [1, 7];

/** Facts that rules compare with each parameter. */
export function factsByParameter(rules: readonly Rule[]): ReadonlyMap<string, ReadonlySet<FactId>> {
  const found = new Map<string, Set<FactId>>();
  for (const { when } of rules) {
    for (const comparison of comparisonsOf(when, new Map())) {
      const id = parameterOf(comparison);
      if (id !== null) found.set(id, (found.get(id) ?? new Set()).add(comparison.fact));
    }
  }
  return found;
}

/**
 * A version of a parameter moved each way: a number by one step of the precision of each fact that it is compared with, and by
 * the last decimal that people are shown; a day of the year by a day and a week; a list by one entry less or more.
 */
export function changeLimit(parameter: Parameter, facts: ReadonlySet<FactId>, definitionOf: DefinitionOf): Parameter[] {
  const { value } = parameter;
  const definitions = [...facts].map(definitionOf);
  const moved = (): readonly Parameter['value'][] => {
    if (typeof value === 'string') return daySteps.flatMap((days) => [moveDay(value, days), moveDay(value, -days)]);
    if (typeof value === 'object') {
      const country = definitions.some(({ type }) => type === 'country') ? [otherCountry] : [];
      return changeList(value, [...definitions.flatMap(({ choices }) => choices ?? []), ...country]);
    }
    const steps = new Set(
      definitions.flatMap(({ precision = 1, shownDecimals = 0 }) => [
        precision,
        Math.max(precision, Number(`1e-${shownDecimals}`)),
      ]),
    );
    return [...steps].flatMap((step) =>
      [value + step, value - step].map((each) => roundTo(each, Math.min(...steps) / 10)),
    );
  };
  return moved().map((each) => ({ ...parameter, value: each }));
}

/** A day of the year (MM-DD) some days on, in a common year. */
function moveDay(monthDay: string, days: number): string {
  const day = monthDay === '02-29' ? '02-28' : monthDay;
  return DateTime.fromISO(`2001-${day}`, { zone: 'utc' }).plus({ days }).toFormat('MM-dd');
}
