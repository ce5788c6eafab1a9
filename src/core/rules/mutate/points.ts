import { DateTime } from 'luxon';
import type { FactDefinition } from '../../facts/types.ts';
import { roundTo } from '../../units/round.ts';
import type { Limit } from '../types.ts';
import type { Point } from './cells.ts';
import { otherCountry } from './change-limits.ts';

/** Numbers at each limit and one step of precision off it, within the fact's range, and every band between two of them. */
export function numberPoints(limits: readonly Limit[], { precision = 1, range }: FactDefinition): Point[] {
  const [least, most] = range ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const at = limits.flatMap((limit) => (limit.kind === 'number' ? [limit.value] : []));
  const near = at.flatMap((limit) => [limit, limit - precision, limit + precision]);
  const values = [...new Set(near.map((each) => roundTo(each, precision)))].filter(
    (each) => each >= least && each <= most,
  );
  const plain = values.map(
    (value): Point => ({ value: { type: 'number', value, low: value, high: value }, given: value, cost: 0 }),
  );
  const bands = values.flatMap((low) =>
    values
      .filter((high) => high > low)
      .map((high): Point => {
        const band = { value: low, low, high };
        return { value: { type: 'number', ...band }, given: band, cost: 2 };
      }),
  );
  return [...plain, ...bands];
}

/** The day of each limit, the day before and the day after, in a year; 29 February of a leap year near a limit there. */
export function dayPoints(limits: readonly Limit[], year: number): Point[] {
  const days = limits.flatMap((limit) => {
    if (limit.kind !== 'month-day') return [];
    const first = DateTime.utc(year, Math.floor(limit.value / 100), 1);
    return [0, -1, 1].map((off) => first.plus({ days: (limit.value % 100) - 1 + off }).set({ year }));
  });
  const leap = DateTime.utc(year + ((4 - (year % 4)) % 4), 2, 29);
  const onLeapDay = limits.some((limit) => limit.kind === 'month-day' && limit.value >= 228 && limit.value <= 301);
  const all = onLeapDay && leap.isValid ? [...days, leap] : days;
  return [...new Set(all.map((day) => day.toISODate() ?? ''))].map((iso) => ({
    value: { type: 'date', iso },
    given: iso,
    cost: 0,
  }));
}

/** Each choice alone, every two together, and all of them; of countries those that a list names and another. */
export function choicePoints(limits: readonly Limit[], { choices, type }: FactDefinition): Point[] {
  const named = limits.flatMap((limit) => (limit.kind === 'choices' ? limit.values : []));
  const other = type === 'country' ? [otherCountry] : [];
  const all = [...new Set([...(choices ?? []), ...(choices === undefined ? named : []), ...other])];
  const pairs = all.flatMap((one, index) => all.slice(index + 1).map((two) => [one, two]));
  return [...all.map((one) => [one]), ...pairs, all].map((possible) => ({
    value: { type: 'choice', possible },
    given: possible.length === 1 ? possible[0] : possible,
    cost: possible.length === 1 ? 0 : 2,
  }));
}

/** Each sign that is read: there, perhaps there, and not there, in every combination. */
export function signPoints(limits: readonly Limit[]): Point[] {
  const read = [...new Set(limits.flatMap((limit) => (limit.kind === 'choices' ? limit.values : [])))];
  let states: readonly { readonly present: readonly string[]; readonly perhaps: readonly string[] }[] = [
    { present: [], perhaps: [] },
  ];
  for (const sign of read) {
    states = states.flatMap(({ present, perhaps }) => [
      { present, perhaps },
      { present: [...present, sign], perhaps },
      { present, perhaps: [...perhaps, sign] },
    ]);
  }
  return states.map(({ present, perhaps }) => {
    const possible = [...present, ...perhaps];
    const given = perhaps.length === 0 ? present : { value: present, possible };
    return { value: { type: 'signs', present, possible }, given, cost: perhaps.length === 0 ? 0 : 2 };
  });
}
