import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { windAtBoom, windAtBoomOverGrass } from '../../../../src/core/science/wind/at-boom.ts';
import { canopyWindShare } from '../../../../src/core/science/wind/over-canopy.ts';
import { grassProfile, windAt2m } from '../../../../src/core/science/wind/over-grass.ts';
import { kilometresPerHour } from '../../../../src/core/units/brands.ts';
import { between, expectWithin, fao56, outOfRange, type PublishedCall, publishedCallTitle } from '../published.ts';

const rows: PublishedCall[] = [
  ['wind-10m-to-2m', 2.4, 0.05, fao56('eq. 47, Example 14'), () => windAt2m(3.2, 10)],
  ['wind-factor-10m', 0.748, 0.0005, `${fao56('Annex 2, Table 2.9')}; from memory`, () => windAt2m(1, 10)],
  ['ex18-uccle-u2', 2.078, 0.002, fao56('Example 18'), () => windAt2m(10 / 3.6, 10)],
  [
    'boom-vs-10m-rule',
    0.5,
    0.05,
    'UK Code of practice for using plant protection products: wind at boom height is roughly half the forecast',
    () => windAtBoomOverGrass(kilometresPerHour(1), 0.5),
  ],
  [
    'boom-vs-10m-canopy',
    0.5,
    0.005,
    `${fao56('notes to eq. 4')}; computed`,
    () => windAtBoom(kilometresPerHour(1), { boomHeightM: 0.8, canopyHeightM: 0.3 }),
  ],
];

describe('wind at boom height', () => {
  test.each(rows)(publishedCallTitle, (_id, expected, tolerance, _source, value) => {
    expectWithin(value(), expected, tolerance);
  });

  test('half a metre above young rape the way used gives the stronger wind up to about 0.12 m of crop', () => {
    const ways = (canopyHeightM: number) => {
      const boomHeightM = canopyHeightM + 0.5;
      const wind10m = kilometresPerHour(10);
      return windAtBoom(wind10m, { boomHeightM, canopyHeightM }) - windAtBoomOverGrass(wind10m, boomHeightM);
    };
    expect(ways(0.05)).toBeGreaterThan(0);
    expect(ways(0.11)).toBeGreaterThan(0);
    expect(ways(0.2)).toBeLessThan(0);
  });

  const canopy = between(0.01, 3);
  const above = between(0, 2);

  test('the share is from 0 to 1, and rises with the boom', () => {
    fc.assert(
      fc.property(canopy, above, above, (canopyHeightM, a, b) => {
        const share = (clear: number) => canopyWindShare({ boomHeightM: canopyHeightM + clear, canopyHeightM });
        expect(share(Math.min(a, b))).toBeGreaterThan(0);
        expect(share(Math.max(a, b))).toBeLessThanOrEqual(1);
        expect(share(Math.max(a, b))).toBeGreaterThanOrEqual(share(Math.min(a, b)));
      }),
    );
  });

  test('at 10 m both ways give the wind itself, and 2 m over grass is the reference', () => {
    expect(canopyWindShare({ boomHeightM: 10, canopyHeightM: 0.2 })).toBe(1);
    expect(windAtBoomOverGrass(kilometresPerHour(7), 10)).toBe(7);
    expect(grassProfile(2)).toBeCloseTo(1, 2);
  });

  test.each([
    () => canopyWindShare({ boomHeightM: 0.3, canopyHeightM: 0.4 }),
    () => canopyWindShare({ boomHeightM: 0.5, canopyHeightM: 0 }),
    () => canopyWindShare({ boomHeightM: Number.NaN, canopyHeightM: 0.2 }),
    () => windAtBoom(kilometresPerHour(-1), { boomHeightM: 0.7, canopyHeightM: 0.2 }),
    () => windAtBoomOverGrass(kilometresPerHour(10), 0.05),
    () => windAt2m(Number.NaN, 10),
    () => grassProfile(0.09),
  ])('a boom inside the crop, or a wind that is none, is refused with its code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });
});
