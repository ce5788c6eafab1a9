import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dailyVapourPressure } from '../../../../src/core/science/air/daily-vapour-pressure.ts';
import { pressureAtElevation, psychrometricConstant } from '../../../../src/core/science/air/pressure.ts';
import {
  meanSaturationVapourPressure,
  saturationVapourPressure,
  vapourPressureOfAir,
  vapourPressureSlope,
} from '../../../../src/core/science/air/vapour-pressure.ts';
import {
  netRadiationOfDay,
  referenceEvapotranspirationOfDay,
  type StationDay,
} from '../../../../src/core/science/evapotranspiration/day.ts';
import {
  type PenmanMonteithTerms,
  referenceEvapotranspirationDaily,
  referenceEvapotranspirationHourly,
} from '../../../../src/core/science/evapotranspiration/penman-monteith.ts';
import { radiationFromTemperature } from '../../../../src/core/science/evapotranspiration/radiation.ts';
import { extraterrestrialRadiation } from '../../../../src/core/science/evapotranspiration/sky.ts';
import { metresPerSecond } from '../../../../src/core/units/brands.ts';
import { between, expectWithin, fao56, outOfRange, type PublishedCall, publishedCallTitle } from '../published.ts';
import { uccle } from './examples.ts';

const uccleActual = () => dailyVapourPressure(uccle.highestC, uccle.lowestC, uccle.humidity);
const uccleSaturation = () => meanSaturationVapourPressure(uccle.highestC, uccle.lowestC);

const uccleRounded: PenmanMonteithTerms = {
  netRadiation: 13.28,
  soilHeat: 0,
  temperatureC: 16.9,
  windAt2m: metresPerSecond(2.078),
  saturationKPa: 1.997,
  actualKPa: 1.409,
  slope: 0.122,
  psychrometric: 0.0666,
};

/** Example 17: Bangkok, April. */
const bangkok: PenmanMonteithTerms = {
  netRadiation: 14.33,
  soilHeat: 0.14,
  temperatureC: 30.2,
  windAt2m: metresPerSecond(2),
  saturationKPa: 4.42,
  actualKPa: 2.85,
  slope: 0.246,
  psychrometric: 0.0674,
};

const hourAt8m = (temperatureC: number, humidity: number, wind: number, netRadiation: number, soilHeat: number) => ({
  netRadiation,
  soilHeat,
  temperatureC,
  windAt2m: metresPerSecond(wind),
  saturationKPa: saturationVapourPressure(temperatureC),
  actualKPa: vapourPressureOfAir(temperatureC, humidity),
  slope: vapourPressureSlope(temperatureC),
  psychrometric: psychrometricConstant(pressureAtElevation(8)),
});

const rows: PublishedCall[] = [
  ['ex17-monthly-ETo', 5.72, 0.05, fao56('Example 17'), () => referenceEvapotranspirationDaily(bangkok)],
  ['ex18-uccle-gamma', 0.0666, 0.0001, fao56('Example 18'), () => psychrometricConstant(pressureAtElevation(100))],
  ['ex18-uccle-slope', 0.122, 0.0005, fao56('Example 18'), () => vapourPressureSlope(16.9)],
  ['ex18-uccle-es', 1.997, 0.001, fao56('Example 18'), uccleSaturation],
  ['ex18-uccle-ea', 1.409, 0.001, fao56('Example 18'), uccleActual],
  ['ex18-uccle-vpd', 0.589, 0.001, fao56('Example 18'), () => uccleSaturation() - uccleActual()],
  ['ex18-uccle-Rn', 13.28, 0.01, fao56('Example 18'), () => netRadiationOfDay(uccle, uccleActual())],
  ['ex18-uccle-ETo', 3.9, 0.05, fao56('Example 18'), () => referenceEvapotranspirationOfDay(uccle)],
  [
    'ex18-uccle-ETo-unrounded',
    3.880142,
    0.001,
    `${fao56('Example 18')}, at full precision, value worked in a public test suite`,
    () => referenceEvapotranspirationOfDay(uccle),
  ],
  [
    'ex18-rounded-inputs',
    3.877117,
    0.0002,
    `${fao56('Example 18')}, from its rounded intermediates, value worked in a public library`,
    () => referenceEvapotranspirationDaily(uccleRounded),
  ],
  [
    'ex19-hourly-day',
    0.63,
    0.005,
    fao56('eq. 53, Example 19, 14 to 15 h'),
    () => referenceEvapotranspirationHourly(hourAt8m(38, 52, 3.3, 1.749, 0.175)),
  ],
  [
    'ex19-hourly-night',
    0,
    0.006,
    `${fao56('eq. 53, Example 19, 2 to 3 h')}; from memory`,
    () => referenceEvapotranspirationHourly(hourAt8m(28, 90, 1.9, -0.1, -0.05)),
  ],
];

describe('reference evapotranspiration', () => {
  test.each(rows)(publishedCallTitle, (_id, expected, tolerance, _source, value) => {
    expectWithin(value(), expected, tolerance);
  });

  test('guard-es-from-mean-T: saturation at the mean temperature would give 3.75 for Example 18, which is not given', () => {
    const wrong = referenceEvapotranspirationDaily({
      ...uccleRounded,
      netRadiation: netRadiationOfDay(uccle, uccleActual()),
      saturationKPa: saturationVapourPressure(16.9),
      actualKPa: uccleActual(),
    });
    expectWithin(wrong, 3.75, 0.01);
    expect(referenceEvapotranspirationOfDay(uccle) - wrong).toBeGreaterThan(0.1);
  });

  test('solar radiation given outright counts as the sunshine that it follows from', () => {
    const outright = referenceEvapotranspirationOfDay({ ...uccle, sun: { solarRadiation: 22.072 } });
    expect(outright).toBeCloseTo(referenceEvapotranspirationOfDay(uccle), 3);
  });

  test('more sun and drier air use more water, and a day is never a wild figure', () => {
    const percent = fc.integer({ min: 20, max: 100 });
    const hours = between(0, 16);
    fc.assert(
      fc.property(percent, percent, hours, hours, (p1, p2, h1, h2) => {
        const of = (meanPercent: number, sunshineH: number) =>
          referenceEvapotranspirationOfDay({ ...uccle, humidity: { meanPercent }, sun: { sunshineH } });
        const least = of(Math.max(p1, p2), Math.min(h1, h2));
        const most = of(Math.min(p1, p2), Math.min(h1, h2));
        expect(most).toBeGreaterThanOrEqual(least);
        expect(least).toBeGreaterThan(-1);
        expect(of(p1, Math.max(h1, h2))).toBeLessThan(12);
      }),
    );
  });

  test('what is missing is filled as the paper says: dew point from the lowest temperature, 2 m/s, radiation from the range', () => {
    const bare = { ...uccle, humidity: { unknown: true }, wind: null, sun: { unknown: 'inland' } } as const;
    const same = (change: Partial<StationDay>) => referenceEvapotranspirationOfDay({ ...bare, ...change });
    expect(same({ humidity: { dewPointC: uccle.lowestC } })).toBe(same({}));
    expect(same({ wind: metresPerSecond(2), windHeightM: 2 })).toBeCloseTo(same({}), 2);
    const solarRadiation = radiationFromTemperature(21.5, 12.3, extraterrestrialRadiation(50.8, 187), 0.16);
    expect(same({ sun: { solarRadiation } })).toBe(same({}));
    expect(same({ sun: { unknown: 'coast' } })).toBeGreaterThan(same({}));
    expectWithin(same({}), referenceEvapotranspirationOfDay(uccle), 1);
  });

  test.each([
    () => referenceEvapotranspirationDaily({ ...bangkok, windAt2m: metresPerSecond(-1) }),
    () => referenceEvapotranspirationDaily({ ...bangkok, netRadiation: Number.NaN }),
    () => referenceEvapotranspirationHourly({ ...bangkok, slope: 0 }),
    () => referenceEvapotranspirationOfDay({ ...uccle, sun: { sunshineH: 20 } }),
    () => referenceEvapotranspirationOfDay({ ...uccle, latitude: 80, dayOfYear: 355, sun: { solarRadiation: 0 } }),
    () => referenceEvapotranspirationOfDay({ ...uccle, highestC: 99 }),
  ])('weather that cannot be is refused with its code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });
});
