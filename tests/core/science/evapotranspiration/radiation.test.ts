import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  clearSkyRadiation,
  monthlySoilHeat,
  netLongwave,
  netShortwave,
  radiationFromSunshine,
  radiationFromTemperature,
} from '../../../../src/core/science/evapotranspiration/radiation.ts';
import {
  daylightHours,
  declination,
  extraterrestrialRadiation,
  inverseSunDistance,
  sunsetHourAngle,
} from '../../../../src/core/science/evapotranspiration/sky.ts';
import { dayLength } from '../../../../src/core/science/sun/times.ts';
import { epochSeconds } from '../../../../src/core/units/brands.ts';
import { between, expectWithin, fao56, outOfRange, type PublishedCall, publishedCallTitle } from '../published.ts';

const uccleRa = () => extraterrestrialRadiation(50.8, 187);
const uccleRs = () => radiationFromSunshine(9.25, daylightHours(50.8, 187), uccleRa());
const rio = { highestC: 25.1, lowestC: 19.1, vapourPressureKPa: 2.1, solar: 14.5, clearSky: 18.8 };

const rows: PublishedCall[] = [
  ['Ra-20S-3Sep', 32.2, 0.1, fao56('eq. 21, Example 8'), () => extraterrestrialRadiation(-20, 246)],
  ['dr-doy246', 0.985, 0.0006, fao56('eq. 23, Example 8'), () => inverseSunDistance(246)],
  ['declination-doy246', 0.12, 0.0006, fao56('eq. 24, Example 8'), () => declination(246)],
  ['sunset-angle-20S', 1.527, 0.001, fao56('eq. 25, Example 8'), () => sunsetHourAngle(-20, 246)],
  ['daylight-hours-20S', 11.7, 0.05, fao56('eq. 34, Example 9'), () => daylightHours(-20, 246)],
  ['Rs-sunshine-rio', 14.45, 0.05, fao56('eq. 35, Example 10'), () => radiationFromSunshine(7.1, 10.9, 25.1)],
  ['Rnl-rio', 3.5, 0.05, fao56('eq. 39, Example 11'), () => netLongwave(rio)],
  ['G-monthly', 0.33, 0.005, fao56('eq. 43, Example 13'), () => monthlySoilHeat(14.1, 18.8)],
  [
    'Rs-from-temperature',
    22.3,
    0.05,
    fao56('eq. 50, Example 15'),
    () => radiationFromTemperature(26.6, 14.8, 40.6, 0.16),
  ],
  ['ex18-uccle-Ra', 41.09, 0.01, fao56('Example 18'), uccleRa],
  ['ex18-uccle-N', 16.1, 0.05, fao56('Example 18'), () => daylightHours(50.8, 187)],
  ['ex18-uccle-Rs', 22.07, 0.01, fao56('Example 18'), uccleRs],
  ['ex18-uccle-Rso', 30.9, 0.01, fao56('Example 18'), () => clearSkyRadiation(100, uccleRa())],
  ['ex18-uccle-Rns', 17, 0.01, `${fao56('eq. 38, Example 18')}; computed`, () => netShortwave(uccleRs())],
  [
    'ex18-uccle-Rnl',
    3.71,
    0.01,
    fao56('Example 18'),
    () =>
      netLongwave({
        highestC: 21.5,
        lowestC: 12.3,
        vapourPressureKPa: 1.4086,
        solar: uccleRs(),
        clearSky: clearSkyRadiation(100, uccleRa()),
      }),
  ],
];

describe('sun and radiation of a day', () => {
  test.each(rows)(publishedCallTitle, (_id, expected, tolerance, _source, value) => {
    expectWithin(value(), expected, tolerance);
  });

  const latitude = fc.integer({ min: -90, max: 90 });
  const dayOfYear = fc.integer({ min: 1, max: 366 });

  test('day and night share 24 hours between the two halves of the earth', () => {
    fc.assert(
      fc.property(latitude, dayOfYear, (lat, day) => {
        expect(daylightHours(lat, day) + daylightHours(-lat, day)).toBeCloseTo(24, 6);
        expect(extraterrestrialRadiation(lat, day)).toBeGreaterThanOrEqual(0);
        expect(extraterrestrialRadiation(lat, day)).toBeLessThan(50);
      }),
    );
  });

  test('the day of eq. 34 is as long as that of the sun itself, to half an hour, up to 55 degrees', () => {
    for (let lat = -55; lat <= 55; lat += 5) {
      for (let day = 1; day <= 365; day += 4) {
        const noon = epochSeconds(Date.parse('2026-01-01T12:00:00Z') / 1000 + (day - 1) * 86_400);
        const lengthened = dayLength({ latitude: lat, longitude: 0 }, noon) - daylightHours(lat, day);
        expect(lengthened).toBeGreaterThan(-0.1);
        expect(lengthened).toBeLessThan(0.5);
      }
    }
  });

  test('more sun than a clear sky lets through counts as a clear sky (FAO-56 eq. 39)', () => {
    expect(netLongwave({ ...rio, solar: 22 })).toBe(netLongwave({ ...rio, solar: rio.clearSky }));
  });

  test('a clearer and drier sky lets more heat go', () => {
    const share = between(0.3, 1);
    const pressure = between(0, 5);
    fc.assert(
      fc.property(share, share, pressure, pressure, (s1, s2, e1, e2) => {
        const heat = (clear: number, damp: number) =>
          netLongwave({ ...rio, clearSky: 20, solar: 20 * clear, vapourPressureKPa: damp });
        const least = heat(Math.min(s1, s2), Math.max(e1, e2));
        expect(heat(Math.max(s1, s2), Math.min(e1, e2))).toBeGreaterThanOrEqual(least);
        expect(least).toBeGreaterThan(0);
      }),
    );
  });

  test.each([
    () => extraterrestrialRadiation(91, 100),
    () => declination(0),
    () => inverseSunDistance(Number.NaN),
    () => radiationFromSunshine(12, 10, 25),
    () => radiationFromTemperature(10, 20, 30, 0.16),
    () => netLongwave({ ...rio, clearSky: 0 }),
    () => netLongwave({ ...rio, vapourPressureKPa: 6 }),
    () => monthlySoilHeat(Number.NaN, 10),
  ])('what lies outside the range of a formula is refused with its code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });

  test('a day on which the sun never rises gives what comes through cloud, of nothing: none', () => {
    expect(radiationFromSunshine(0, 0, 0)).toBe(0);
  });

  test('hours of sunshine beyond those possible, or on a day without any, are refused', () => {
    expect(() => radiationFromSunshine(0.1, 0, 0)).toThrow(outOfRange);
    expect(radiationFromSunshine(10, 10, 25)).toBeCloseTo(0.75 * 25, 10);
    expect(radiationFromSunshine(0, 10, 25)).toBeCloseTo(0.25 * 25, 10);
  });
});
