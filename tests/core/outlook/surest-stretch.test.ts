import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firstSureness, surestStretch } from '../../../src/core/outlook/surest-stretch.ts';
import { hourAt, hoursOn, lookedAt } from '../../generators/outlook.ts';

const plan = { now: lookedAt, shortestHours: 2, likelyLeast: 0.66 };
const hoursOf = (chances: readonly (number | null)[]) =>
  chances.map((sureness, index) => hourAt(hoursOn(index), { sureness }));
const found = (chances: readonly (number | null)[]) => {
  const best = surestStretch(hoursOf(chances), plan, null);
  return best && [(best.from - lookedAt) / 3600, (best.until - lookedAt) / 3600, best.sureness];
};

describe('the surest stretch of a window', () => {
  test.each([
    [
      [0.9, 0.9, 0.5, 0.7, 0.7, 0.8],
      [3, 6, 0.7],
    ],
    [
      [0.7, 0.7, 0.5, 0.8, 0.9],
      [3, 5, 0.8],
    ],
    [
      [0.5, 0.9, 0.5, 0.6, 0.6],
      [3, 5, 0.6],
    ],
    [[0.9], [0, 1, 0.9]],
    [
      [0.2, 0.3, 0.25, 0.1],
      [1, 3, 0.25],
    ],
    [[null, null], null],
  ])('of %j is %j', (chances, expected) => {
    expect(found(chances)).toEqual(expected);
  });

  test('is no shorter than is useful, part of an hour counting as one, and one hour at least', () => {
    const hours = hoursOf([0.2, 0.9, 0.2, 0.7, 0.7, 0.7]);
    const lengthOf = (shortestHours: number) => {
      const best = surestStretch(hours, { ...plan, shortestHours, likelyLeast: 0.8 }, null)!;
      return [(best.from - lookedAt) / 3600, (best.until - lookedAt) / 3600];
    };
    expect([lengthOf(0), lengthOf(1), lengthOf(1.5), lengthOf(2.5)]).toEqual([
      [1, 2],
      [1, 2],
      [3, 5],
      [3, 6],
    ]);
  });

  test('of equally long and sure ones is the first', () => {
    expect(found([0.7, 0.7, 0.1, 0.7, 0.7])).toEqual([0, 2, 0.7]);
    expect(found([0.3, 0.3, 0.3])).toEqual([0, 2, 0.3]);
  });

  test('begins no earlier than now', () => {
    const now = hoursOn(0.5);
    expect(surestStretch(hoursOf([0.9, 0.9]), { ...plan, now }, null)).toMatchObject({ from: now });
  });

  test('lies in daylight wherever that lasts long enough, however sure the night is', () => {
    const hours = hoursOf([0.9, 0.9, 0.9, 0.7, 0.7, 0.9, 0.9]);
    const day = (from: number, until: number) => [{ from: hoursOn(from), until: hoursOn(until) }];
    expect(surestStretch(hours, plan, day(2.5, 5.2))).toEqual({ from: hoursOn(3), until: hoursOn(5), sureness: 0.7 });
    expect(surestStretch(hours, plan, day(3.1, 4.9))).toMatchObject({ from: lookedAt, until: hoursOn(7) });
  });

  test('is likely in every hour wherever a useful stretch is, and no longer such stretch lies beside it', () => {
    const chance = fc.constantFrom(0.2, 0.5, 0.66, 0.8, 0.95);
    fc.assert(
      fc.property(fc.array(chance, { minLength: 2, maxLength: 30 }), (chances) => {
        const [from, until, sureness] = found(chances) as [number, number, number];
        const inside = chances.slice(from, until);
        expect(sureness).toBe(Math.min(...inside));
        const runs = chances.map((_, start) => {
          const end = chances.findIndex((one, index) => index >= start && one < 0.66);
          return (end < 0 ? chances.length : end) - start;
        });
        const longest = Math.max(...runs);
        if (longest >= 2) expect([inside.length, sureness >= 0.66]).toEqual([longest, true]);
        else expect(inside).toHaveLength(2);
      }),
    );
  });
});

test('the first hours are as sure as the least sure of them', () => {
  expect(firstSureness(hoursOf([0.8, 0.6, 0.1]), 2)).toBe(0.6);
  expect(firstSureness(hoursOf([0.8, 0.6, 0.1]), 1.5)).toBe(0.6);
  expect(firstSureness(hoursOf([0.8, 0.6, 0.1]), 0)).toBe(0.8);
  expect(firstSureness(hoursOf([0.8, null, 0.1]), 2)).toBe(0.8);
  expect(firstSureness(hoursOf([null, null]), 2)).toBeNull();
});
