import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { abbott, hendersonTilton } from '../../../../src/core/science/efficacy/control.ts';
import { countLimits } from '../../../../src/core/science/efficacy/count-limits.ts';
import { expectWithin, outOfRange, type PublishedCall, publishedCallTitle } from '../published.ts';

const hendersonTiltonPaper = 'Henderson & Tilton 1955, J. Econ. Entomol. 48:157-161';
const counts = (treatedBefore: number, treatedAfter: number, untreatedBefore: number, untreatedAfter: number) => ({
  treatedBefore,
  treatedAfter,
  untreatedBefore,
  untreatedAfter,
});

const rows: PublishedCall[] = [
  ['abbott-original', 96, 1e-9, 'Abbott 1925, J. Econ. Entomol. 18:265-267', () => abbott(50, 2)],
  ['abbott-26-6', 76.92, 0.005, 'Abbott 1925; worked row of a public calculator', () => abbott(26, 6)],
  [
    'schneider-orelli',
    96,
    1e-9,
    'Schneider-Orelli 1947, equal to Abbott; from memory',
    () => abbott(100 - 50, 100 - 98),
  ],
  ['efficacy-needed-to-hold', 95, 1e-9, 'Abbott formula; computed', () => abbott(100, 5)],
  [
    'henderson-tilton',
    78.46,
    0.005,
    `${hendersonTiltonPaper}; worked row of a public calculator`,
    () => hendersonTilton(counts(30, 6, 28, 26)),
  ],
  [
    'henderson-tilton-2',
    92.86,
    0.005,
    `${hendersonTiltonPaper}; computed`,
    () => hendersonTilton(counts(140, 12, 150, 180)),
  ],
];

const printed = 'Garwood 1936, Biometrika 28:437-442; printed in statistics documentation';
const computed = 'Garwood 1936; computed';

describe('control achieved', () => {
  test.each(rows)(publishedCallTitle, (_id, expected, tolerance, _source, value) => {
    expectWithin(value(), expected, tolerance);
  });

  test.each([
    [0, 0.95, 0, 3.689, printed],
    [1, 0.95, 0.0253, 5.572, computed],
    [3, 0.95, 0.6187, 8.767, computed],
    [5, 0.95, 1.6235, 11.668, computed],
    [10, 0.95, 4.795, 18.39, printed],
    [20, 0.95, 12.217, 30.888, computed],
    [25, 0.95, 16.18, 36.9, printed],
    [50, 0.95, 37.111, 65.919, computed],
    [100, 0.95, 81.364, 121.627, computed],
    [25, 0.9, 17.38, 34.92, printed],
    [25, 0.99, 14, 41, printed],
  ])('a count of %d with confidence %d lies between %d and %d (%s)', (count, confidence, low, high) => {
    const limits = countLimits(count, confidence);
    expectWithin(limits[0], low, 0.006);
    expectWithin(limits[1], high, 0.006);
  });

  const plants = fc.integer({ min: 1, max: 500 });

  test('control is 100 where none is left, 0 where as many are left as in the check, and falls with each survivor', () => {
    fc.assert(
      fc.property(plants, plants, (check, left) => {
        expect(abbott(check, 0)).toBe(100);
        expect(abbott(check, check)).toBe(0);
        expect(abbott(check, left + 1)).toBeLessThan(abbott(check, left));
        expect(hendersonTilton(counts(check, left, check, check))).toBeCloseTo(abbott(check, left), 9);
      }),
    );
  });

  test('limits enclose the count, widen with confidence and rise with the count', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2000 }), (count) => {
        const [low, high] = countLimits(count, 0.9);
        const wider = countLimits(count, 0.99);
        expect(low <= count && count < high).toBe(true);
        expect(wider[0] <= low && high < wider[1]).toBe(true);
        expect(countLimits(count + 1, 0.9)[0]).toBeGreaterThan(low);
        expect(Number.isFinite(wider[1])).toBe(true);
      }),
      { numRuns: 20 },
    );
  });

  test.each([
    () => abbott(0, 3),
    () => abbott(10, -1),
    () => hendersonTilton(counts(0, 1, 2, 3)),
    () => hendersonTilton(counts(1, 1, 2, 0)),
  ])('counts from which nothing follows are refused with their code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });

  test.each([
    [2.5, 0.95, 'a whole count of 0 to 10000', 'NaN'],
    [-1, 0.95, 'a whole count of 0 to 10000', '-1'],
    [10_001, 0.95, 'a whole count of 0 to 10000', '10001'],
    [Number.NaN, 0.95, 'a whole count of 0 to 10000', 'NaN'],
    [3, 0.4, 'a confidence of 0.5 to 0.999', '0.4'],
    [3, 1, 'a confidence of 0.5 to 0.999', '1'],
  ])('limits of a count of %d with confidence %d are refused: wanted is %s', (count, confidence, expected, came) => {
    expect(() => countLimits(count, confidence)).toThrow(
      expect.objectContaining({ code: 'SCIENCE_OUT_OF_RANGE', details: { expected, came } }),
    );
  });
});
