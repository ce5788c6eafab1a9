import { describe, expect, test } from 'vitest';
import { dayNumber, marginOf } from '../../../src/core/rules/margins.ts';
import type { CompiledComparison, Operator } from '../../../src/core/rules/types.ts';
import { choice, day, number } from '../../generators/small.ts';

describe('the room left to a limit', () => {
  const compared = (
    op: Operator,
    value: number,
    kind: 'number' | 'month-day' = 'number',
    parameter: string | null = 'p',
  ) =>
    ({
      kind: 'comparison',
      name: 'c',
      fact: 'wind.boomKmh',
      op,
      limit: { kind, value },
      parameter,
      unit: 'km/h',
    }) as CompiledComparison;
  const room = (...[comparison, fact, negated]: Parameters<typeof marginOf>) => {
    const margin = marginOf(comparison, fact, negated);
    return margin && [margin.margin, margin.worst, margin.limit, margin.unit];
  };
  const band = number(9, 8, 12);

  test.each<readonly [Operator, boolean, number, number]>([
    ['above', false, 1, -2],
    ['atLeast', false, 1, -2],
    ['below', false, -1, -2],
    ['atMost', false, -1, -2],
    ['above', true, -1, -2],
    ['atLeast', true, -1, -2],
    ['below', true, 1, -2],
    ['atMost', true, 1, -2],
  ])('%s 10, turned by not: %s, from 9 between 8 and 12', (op, negated, margin, worst) => {
    expect(room(compared(op, 10), band, negated)).toEqual([margin, worst, 10, 'km/h']);
  });

  test('is told to a billionth, and nothing is never less than nothing', () => {
    expect(room(compared('above', 0.3), number(0.1 + 0.2), false)?.[0]).toBe(0);
    expect(room(compared('below', 10), number(10), false)?.[0]).toBe(0);
    expect(Object.is(room(compared('below', 10), number(10), false)?.[0], -0)).toBe(false);
  });

  test('is in days for a day of the year, with the limit as month and day', () => {
    const first = compared('atLeast', 1001, 'month-day');
    expect(room(first, day('2026-09-21'), false)).toEqual([10, 10, '10-01', 'days']);
    expect(room(compared('atMost', 1012, 'month-day'), day('2026-09-21'), false)).toEqual([-21, -21, '10-12', 'days']);
    expect(room(compared('atLeast', 301, 'month-day'), day('2028-02-28'), true)?.[0]).toBe(-2);
  });

  test('is none of what is not known, of choices, or where the limit is no parameter', () => {
    expect(room(compared('above', 10), { known: false, reason: 'not-asked' }, false)).toBeNull();
    expect(room(compared('above', 10), choice('dry'), false)).toBeNull();
    expect(room(compared('above', 10, 'number', null), band, false)).toBeNull();
    const listed = { ...compared('above', 10), limit: { kind: 'choices', values: ['a'] } } as const;
    expect(room(listed, band, false)).toBeNull();
  });

  // Day numbers of the Gregorian calendar: 1 March is day 60 of a common year and 61 of a leap year.
  test.each([
    [2026, 1, 1, 1],
    [2026, 2, 28, 59],
    [2026, 2, 29, 60],
    [2026, 3, 1, 60],
    [2026, 12, 31, 365],
    [2028, 2, 29, 60],
    [2028, 3, 1, 61],
    [2028, 12, 31, 366],
    [2100, 3, 1, 60],
    [2000, 3, 1, 61],
    [2026, 7, 1, 182],
    [2026, 11, 1, 305],
  ])('%d-%d-%d is day %d of its year', (year, month, dayOfMonth, is) => {
    expect(dayNumber(year, month, dayOfMonth)).toBe(is);
  });
});
