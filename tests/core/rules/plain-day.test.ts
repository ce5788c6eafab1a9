import { expect, test } from 'vitest';
import { fullest, plainDayIn, plainDayOf } from '../../../src/core/rules/plain-day.ts';

test('the plain day is the fullest case on which all is well, the first of those; none of none', () => {
  const one = (name: string, verdict: 'wait' | 'spray-today', ...facts: string[]) => ({
    ...{ file: 'a', name, facts: Object.fromEntries(facts.map((fact) => [fact, 1])), expect: { verdict } },
  });
  const cases = [
    one('few', 'spray-today', 'a'),
    one('full', 'wait', 'a', 'b', 'c'),
    one('first', 'spray-today', 'a', 'b'),
    one('second', 'spray-today', 'b', 'c'),
  ];
  expect([plainDayOf(cases)?.name, fullest(cases)?.name]).toEqual(['first', 'full']);
  expect([plainDayOf(cases.slice(1, 2)), fullest([])]).toEqual([null, null]);
  expect(plainDayIn(cases)).toStrictEqual({ plainDay: { facts: { a: 1, b: 1 } } });
  expect(plainDayIn([{ ...cases[2]!, at: '2026-11-06T09:00Z' }])).toEqual({
    plainDay: { facts: { a: 1, b: 1 }, at: '2026-11-06T09:00Z' },
  });
  expect(plainDayIn([])).toEqual({});
});
