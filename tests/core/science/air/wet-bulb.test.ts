import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { deltaT } from '../../../../src/core/science/air/delta-t.ts';
import { pressureAtElevation } from '../../../../src/core/science/air/pressure.ts';
import { saturationVapourPressure } from '../../../../src/core/science/air/vapour-pressure.ts';
import { humidityOfBulbs, vapourPressureOfBulbs, wetBulb } from '../../../../src/core/science/air/wet-bulb.ts';
import { wetBulbStull } from '../../../../src/core/science/air/wet-bulb-stull.ts';
import { between, expectWithin, fao56, outOfRange, type PublishedCall, publishedCallTitle } from '../published.ts';

const stull = 'Stull 2011, J. Appl. Meteorol. Climatol. 50:2267-2269, eq. 1';
const psychrometer = `${fao56('eq. 15')}; computed`;

/** Air temperature, humidity: wet bulb by Stull, wet bulb of the psychrometer, Delta T (computed from the equations named). */
const pairs = [
  [10, 80, 7.93, 8.31, 1.69],
  [5, 90, 3.99, 4.31, 0.69],
  [8, 85, 6.47, 6.83, 1.17],
  [12, 70, 8.83, 9.24, 2.76],
  [3, 95, 2.45, 2.69, 0.31],
  [30, 50, 22.3, 22.06, 7.94],
] as const;

describe('wet bulb and Delta T', () => {
  test.each(pairs)(
    `%d C and %d %%: ${stull} gives %d; ${psychrometer} gives %d and a Delta T of %d`,
    (t, rh, a, b, d) => {
      expectWithin(wetBulbStull(t, rh), a, 0.005);
      expectWithin(wetBulb({ temperatureC: t, humidityPercent: rh, pressureKPa: 101.3 }), b, 0.01);
      expectWithin(deltaT({ temperatureC: t, humidityPercent: rh }), d, 0.01);
    },
  );

  const single: PublishedCall[] = [
    ['stull-20-50', 13.7, 0.05, `${stull}; worked value from memory`, () => wetBulbStull(20, 50)],
    ['stull-20-10', 6.961, 0.005, `${stull}; computed apart`, () => wetBulbStull(20, 10)],
    [
      'ea-psychrometer',
      1.91,
      0.005,
      fao56('eq. 15 and 16, Example 4'),
      () => vapourPressureOfBulbs({ dryC: 25.6, wetC: 19.5, pressureKPa: pressureAtElevation(1200) }),
    ],
    [
      'rh-from-wetdry',
      30.43,
      0.1,
      'psychrometer equation of the WMO Guide to Instruments, value worked in the documentation of a meteorology library',
      () => humidityOfBulbs({ dryC: 19, wetC: 10, pressureKPa: 100, coefficientPerC: 0.000621 }),
    ],
  ];

  test.each(single)(publishedCallTitle, (_id, expected, tolerance, _source, value) => {
    expectWithin(value(), expected, tolerance);
  });

  test('at 10 C and 80 % the fitted formula and the psychrometer fall on opposite sides of the 2 C line', () => {
    expect(10 - wetBulbStull(10, 80)).toBeGreaterThan(2);
    expect(deltaT({ temperatureC: 10, humidityPercent: 80 })).toBeLessThan(2);
  });

  const temperature = between(-60, 60);
  const humidity = between(0, 100);
  const pressure = between(30, 110);

  test('the wet bulb solves the equation of the psychrometer, at any pressure', () => {
    fc.assert(
      fc.property(temperature, humidity, pressure, (t, rh, pressureKPa) => {
        const wet = wetBulb({ temperatureC: t, humidityPercent: rh, pressureKPa });
        fc.pre(wet >= -60);
        const actual = (saturationVapourPressure(t) * rh) / 100;
        expect(saturationVapourPressure(wet) - 0.000662 * pressureKPa * (t - wet)).toBeCloseTo(actual, 9);
      }),
    );
  });

  test('Delta T is 0 in saturated air, never negative, and falls as the air gets damper', () => {
    fc.assert(
      fc.property(temperature, humidity, humidity, (temperatureC, a, b) => {
        const [drier, damper] = [Math.min(a, b), Math.max(a, b)];
        const dry = deltaT({ temperatureC, humidityPercent: drier });
        const damp = deltaT({ temperatureC, humidityPercent: damper });
        expect(damp).toBeGreaterThanOrEqual(0);
        expect(dry).toBeGreaterThanOrEqual(damp - 1e-9);
        expect(deltaT({ temperatureC, humidityPercent: 100 })).toBeCloseTo(0, 9);
      }),
    );
  });

  test('the fitted formula stays within its published error of -1.0 to +0.65 C where it holds', () => {
    const t = between(0, 35);
    fc.assert(
      fc.property(t, between(20, 99), (temperatureC, humidityPercent) => {
        const error = wetBulbStull(temperatureC, humidityPercent) - wetBulb({ temperatureC, humidityPercent });
        expect(error).toBeGreaterThan(-1);
        expect(error).toBeLessThan(0.65);
      }),
    );
  });

  test('humidity from the two bulbs gives back the humidity that the wet bulb was found for', () => {
    fc.assert(
      fc.property(between(-20, 60), humidity, (temperatureC, humidityPercent) => {
        const wetC = wetBulb({ temperatureC, humidityPercent });
        fc.pre(humidityPercent > 1);
        expect(humidityOfBulbs({ dryC: temperatureC, wetC })).toBeCloseTo(humidityPercent, 6);
      }),
    );
  });

  test.each([
    () => wetBulbStull(10, 4.9),
    () => wetBulbStull(-21, 50),
    () => wetBulb({ temperatureC: 10, humidityPercent: 120 }),
    () => deltaT({ temperatureC: Number.NaN, humidityPercent: 50 }),
    () => deltaT({ temperatureC: 10, humidityPercent: 50, pressureKPa: 1013 }),
    () => vapourPressureOfBulbs({ dryC: 10, wetC: 11 }),
    () => vapourPressureOfBulbs({ dryC: 30, wetC: 2 }),
  ])('what lies outside the range of a formula is refused with its code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });
});
