import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bothSeasons } from '../../../src/core/compare/both-seasons.ts';
import { pickPlaces } from '../../../src/core/compare/pick-places.ts';
import { runsOf, windowDifferences } from '../../../src/core/compare/windows.ts';

const flags = (text: string) => [...text].map((one) => one === 'x');

describe('windows', () => {
  test.each([
    ['..xx..', '......', 'vanishes'],
    ['......', '..xx..', 'appears'],
    ['..xx..', '.xxx..', 'grows'],
    ['.xxxx.', '..xx..', 'shrinks'],
    ['.xx...', '..xx..', 'moves'],
    ['.xxxx.', '.x.xx.', 'shrinks'],
    ['.x.xx.', '.xxxx.', 'grows'],
    ['..x.xx', '..x', 'vanishes'],
    ['x', 'x.xx', 'appears'],
  ])('%s under A and %s under B: %s', (a, b, change) => {
    expect(windowDifferences(flags(a), flags(b))).toMatchObject([{ change }]);
  });

  test('that stay are left out, and a window apart counts for itself', () => {
    expect(windowDifferences(flags('xx..xx'), flags('xx...x'))).toEqual([
      { change: 'shrinks', a: [{ first: 4, last: 5 }], b: [{ first: 5, last: 5 }] },
    ]);
  });

  test('hold each day that fits once', () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { maxLength: 40 }), (fits) => {
        const days = runsOf(fits).flatMap(({ first, last }) =>
          Array.from({ length: last - first + 1 }, (_, at) => first + at),
        );
        expect(days).toEqual(fits.flatMap((fit, at) => (fit ? [at] : [])));
      }),
    );
  });
});

describe('pairs that are sampled', () => {
  test('are different pairs, as many as were asked for or all that fit, and the same for the same seed', () => {
    fc.assert(
      fc.property(fc.nat(30), fc.nat(500), fc.nat(), (count, most, seed) => {
        const fits = (one: number, other: number) => (one + other) % 3 !== 0;
        const picked = pickPlaces(count, most, seed, fits);
        const all = Array.from({ length: count }, (_, one) =>
          Array.from({ length: count }, (__, other) => [one, other] as const),
        )
          .flat()
          .filter(([one, other]) => one < other && fits(one, other));
        expect(new Set(picked.map(String)).size).toBe(Math.min(most, all.length));
        expect(picked.every(([one, other]) => one < other && other < count && fits(one, other))).toBe(true);
        expect(pickPlaces(count, most, seed, fits)).toEqual(picked);
      }),
    );
  });
});

describe('a sample of pairs', () => {
  test('is spread evenly over all pairs, a tenth of it in each tenth of them', () => {
    const count = 200;
    const places = pickPlaces(count, 2000, 3, () => true).map(([one, other]) => (other * (other - 1)) / 2 + one);
    const tenth = (count * (count - 1)) / 20;
    for (let at = 0; at < 10; at += 1) {
      const inside = places.filter((place) => Math.floor(place / tenth) === at);
      expect(Math.abs(inside.length - 200)).toBeLessThan(5);
    }
  });

  // The sample of a seed, so that a comparison made again by a later version is made on the same days: of ten
  // pairs it takes every seventh, the first number from the golden share on that shares no divisor with ten.
  test.each([
    [0, ['0 1', '1 4', '1 3', '0 2']],
    [3, ['0 3', '0 1', '1 4', '1 3']],
    [-13, ['0 3', '0 1', '1 4', '1 3']],
    [13.9, ['0 3', '0 1', '1 4', '1 3']],
  ])('of seed %d begins anew at its own place and stays the same', (seed, expected) => {
    expect(pickPlaces(5, 4, seed, () => true).map((pair) => pair.join(' '))).toEqual(expected);
  });

  test.each([
    [0, []],
    [1, []],
    [2, ['0 1']],
    [3, ['0 1', '0 2', '1 2']],
  ])('of %i things is all pairs', (count, expected) => {
    const picked = pickPlaces(count, 9, 0, () => true).map((pair) => pair.join(' '));
    expect(picked.toSorted()).toEqual(expected);
  });
});

describe('the days of both seasons', () => {
  test.each([
    ['10-01', '01-31', '10-01', '01-31', '10-01', '01-31'],
    ['10-01', '01-31', '10-01', '12-20', '10-01', '01-31'],
    ['10-15', '02-10', '10-01', '01-31', '10-01', '02-10'],
    ['03-01', '05-31', '04-15', '06-30', '03-01', '06-30'],
    ['10-01', '01-31', '03-01', '04-30', '10-01', '04-30'],
    ['10-01', '06-30', '05-01', '11-30', '01-01', '12-31'],
  ])('%s to %s with %s to %s: %s to %s, whichever stands first', (opens, lastDay, other, otherLast, from, to) => {
    const [a, b] = [
      { opens, lastDay },
      { opens: other, lastDay: otherLast },
    ];
    expect([bothSeasons(a, b), bothSeasons(b, a)]).toEqual(Array(2).fill({ opens: from, lastDay: to }));
  });
});
