import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type DailyHumidity, dailyVapourPressure } from '../../../../src/core/science/air/daily-vapour-pressure.ts';
import { pressureAtElevation, psychrometricConstant } from '../../../../src/core/science/air/pressure.ts';
import {
  dewPoint,
  meanSaturationVapourPressure,
  saturationVapourPressure,
  vapourPressureOfAir,
  vapourPressureSlope,
} from '../../../../src/core/science/air/vapour-pressure.ts';
import {
  between,
  expectWithin,
  fao56,
  outOfRange,
  type Published,
  type PublishedCall,
  publishedCallTitle,
  publishedTitle,
} from '../published.ts';

const saturation: Published<number>[] = [
  ['svp-24.5C', 24.5, 3.075, 0.001, fao56('eq. 11, Example 3')],
  ['svp-15C', 15, 1.705, 0.001, fao56('eq. 11, Example 3')],
  ['svp-18C', 18, 2.064, 0.001, fao56('eq. 11, Example 5')],
  ['svp-25C', 25, 3.168, 0.001, fao56('eq. 11, Example 5')],
  ['svp-19.5C', 19.5, 2.267, 0.001, fao56('eq. 11, Example 4')],
  ['svp-table-0C', 0, 0.611, 0.001, `${fao56('Annex 2, Table 2.3')}; from memory`],
  ['svp-table-5C', 5, 0.872, 0.001, `${fao56('Annex 2, Table 2.3')}; from memory`],
  ['svp-table-10C', 10, 1.228, 0.001, `${fao56('Annex 2, Table 2.3')}; from memory`],
  ['svp-table-20C', 20, 2.338, 0.001, `${fao56('Annex 2, Table 2.3')}; from memory`],
  ['svp-table-30C', 30, 4.243, 0.001, `${fao56('Annex 2, Table 2.3')}; from memory`],
];

const daily: Published<[number, number, DailyHumidity]>[] = [
  ['ea-rhmax-rhmin', [25, 18, { highestPercent: 82, lowestPercent: 54 }], 1.7, 0.005, fao56('eq. 17, Example 5')],
  ['ea-rhmean', [25, 18, { meanPercent: 68 }], 1.78, 0.005, fao56('eq. 19, Example 5')],
  ['ea-from-dewpoint-14.8C', [26.6, 14.8, { unknown: true }], 1.68, 0.005, fao56('eq. 48, Example 20')],
  ['ea-from-dewpoint-14.8C', [26.6, 16, { dewPointC: 14.8 }], 1.68, 0.005, fao56('eq. 14, Example 20')],
  ['ea-rhmax', [25, 18, { highestPercent: 82 }], 1.69, 0.005, `${fao56('eq. 18')}; computed`],
];

describe('vapour pressure of the air', () => {
  test.each(saturation)(publishedTitle, (_id, temperature, expected, tolerance) => {
    expectWithin(saturationVapourPressure(temperature), expected, tolerance);
  });

  test.each(daily)(publishedTitle, (_id, [highest, lowest, humidity], expected, tolerance) => {
    expectWithin(dailyVapourPressure(highest, lowest, humidity), expected, tolerance);
  });

  const others: PublishedCall[] = [
    ['pressure-1800m', 81.8, 0.1, fao56('eq. 7, Example 2'), () => pressureAtElevation(1800)],
    ['pressure-1200m', 87.9, 0.1, fao56('eq. 7, Example 4'), () => pressureAtElevation(1200)],
    ['psychrometric-constant-1800m', 0.054, 0.0005, fao56('eq. 8, Example 2'), () => psychrometricConstant(81.8)],
    ['es-mean-tmax-tmin', 2.39, 0.005, fao56('eq. 12, Example 3'), () => meanSaturationVapourPressure(24.5, 15)],
    ['slope-30.2C', 0.246, 0.0005, fao56('eq. 13, Example 17'), () => vapourPressureSlope(30.2)],
    ['dewpoint-20-50', 9.26, 0.02, `${fao56('Annex 3')}; from memory`, () => dewPoint(vapourPressureOfAir(20, 50))],
  ];

  test.each(others)(publishedCallTitle, (_id, expected, tolerance, _source, value) => {
    expectWithin(value(), expected, tolerance);
  });

  const temperature = between(-60, 60);
  const humidity = between(1, 100);

  test('warmer air holds more, and ever more per degree', () => {
    fc.assert(
      fc.property(temperature, between(0.01, 20), (low, step) => {
        fc.pre(low + step <= 60);
        expect(saturationVapourPressure(low + step)).toBeGreaterThan(saturationVapourPressure(low));
        expect(vapourPressureSlope(low + step)).toBeGreaterThan(vapourPressureSlope(low));
      }),
    );
  });

  test('a day holds more at its mean of extremes than the mean temperature says', () => {
    fc.assert(
      fc.property(temperature, temperature, (a, b) => {
        const mean = meanSaturationVapourPressure(Math.max(a, b), Math.min(a, b));
        expect(mean).toBeGreaterThanOrEqual(saturationVapourPressure((a + b) / 2) - 1e-12);
      }),
    );
  });

  test('air never holds more than saturated air, and the dew point of what it holds is not above its temperature', () => {
    fc.assert(
      fc.property(between(-10, 55), humidity, (t, rh) => {
        const actual = vapourPressureOfAir(t, rh);
        expect(actual).toBeLessThanOrEqual(saturationVapourPressure(t) * (1 + 1e-12));
        fc.pre(actual >= 0.01);
        const dew = dewPoint(actual);
        expect(dew).toBeLessThanOrEqual(t + 0.02);
        fc.pre(dew >= -60);
        expect(saturationVapourPressure(dew) / actual).toBeCloseTo(1, 2);
      }),
    );
  });

  test.each([
    () => saturationVapourPressure(-60.1),
    () => saturationVapourPressure(Number.NaN),
    () => vapourPressureOfAir(10, 101),
    () => dewPoint(0),
    () => dailyVapourPressure(20, 10, { meanPercent: -1 }),
    () => pressureAtElevation(10_000),
    () => psychrometricConstant(1013),
  ])('what lies outside the range of a formula is refused with its code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });
});
