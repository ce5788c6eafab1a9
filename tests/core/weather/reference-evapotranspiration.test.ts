import { describe, expect, test } from 'vitest';
import type { WeatherVariable } from '../../../src/core/weather/forecast.ts';
import {
  computeEvapotranspiration,
  referenceEvapotranspirationHours,
} from '../../../src/core/weather/reference-evapotranspiration.ts';
import { buildForecast, type Column, type ForecastPlan } from '../../generators/forecast.ts';
import { utc } from '../facts/moments.ts';

const from = utc('2026-10-06T00:00Z');
const hourOf = (time: number) => (time / 3600) % 24;
const daily =
  (low: number, high: number): Column =>
  (time) =>
    (low + high) / 2 + ((high - low) / 2) * Math.cos(((hourOf(time) - 14) / 12) * Math.PI);
const sunny: Column = (time) => Math.max(0, 450 * Math.cos(((hourOf(time) - 12.5) / 12) * Math.PI));
type Columns = Readonly<Partial<Record<WeatherVariable, Column | null>>>;

const autumn = (columns: Columns = {}, plan: Partial<ForecastPlan> = {}) =>
  buildForecast({
    from,
    hours: 97,
    ...plan,
    columns: {
      temperature2mC: daily(6, 14),
      relativeHumidity2mPercent: daily(95, 65),
      shortwaveRadiationWPerM2: sunny,
      et0Mm: null,
      ...columns,
    },
  });

const sumOf = (forecast: ReturnType<typeof autumn>) =>
  referenceEvapotranspirationHours(forecast).reduce((sum, hour) => sum + (hour?.mm ?? Number.NaN), 0) / 4;
const waysOf = (forecast: ReturnType<typeof autumn>) => [
  ...new Set(referenceEvapotranspirationHours(forecast).map((hour) => hour?.from ?? null)),
];

describe('reference evapotranspiration of a forecast', () => {
  test("the service's own stands wherever it gives one, and only its gaps are filled", () => {
    expect(waysOf(autumn({ et0Mm: 0.04 }))).toEqual(['service']);
    const holed = autumn({ et0Mm: (_, index) => (index % 5 === 0 ? null : 0.04) });
    expect(waysOf(holed)).toEqual(['hourly', 'service']);
    const filled = referenceEvapotranspirationHours(holed);
    expect(filled[10]).toEqual(computeEvapotranspiration(holed)[10]);
  });

  test('without it, the weather gives an October day of 1 to 2 mm', () => {
    expect(waysOf(autumn())).toEqual(['hourly']);
    expect(sumOf(autumn())).toBeGreaterThan(1);
    expect(sumOf(autumn())).toBeLessThan(2);
  });

  test.each<[string, Columns, ways: (string | null)[]]>([
    ['radiation (from the range of temperature)', { shortwaveRadiationWPerM2: null }, ['daily']],
    ['humidity (dew point from the lowest temperature)', { relativeHumidity2mPercent: null }, ['hourly']],
    ['wind (2 m/s)', { windSpeed10mKmh: null }, ['hourly']],
    [
      'all three',
      { shortwaveRadiationWPerM2: null, relativeHumidity2mPercent: null, windSpeed10mKmh: null },
      ['daily'],
    ],
  ])('without %s it stays near', (_, columns, ways) => {
    expect(waysOf(autumn(columns))).toEqual(ways);
    expect(Math.abs(sumOf(autumn(columns)) - sumOf(autumn()))).toBeLessThan(0.6);
  });

  test('dew point outranks humidity', () => {
    expect(sumOf(autumn({ dewPoint2mC: 2 }))).toBeGreaterThan(sumOf(autumn({ dewPoint2mC: 5 })));
  });

  test.each<[string, ReturnType<typeof autumn>]>([
    ['without temperature', autumn({ temperature2mC: null })],
    ['shorter than a day without radiation', autumn({ shortwaveRadiationWPerM2: null }, { hours: 20 })],
    [
      'at the pole in winter without radiation',
      autumn({ shortwaveRadiationWPerM2: null }, { from: utc('2026-12-20T00:00Z'), place: { latitude: 85 } }),
    ],
    ['of weather that no formula holds', autumn({ temperature2mC: -80 })],
  ])('%s it is not told', (_, forecast) => {
    expect(waysOf(forecast)).toEqual([null]);
  });

  test('a gap in temperature leaves its own day untold where radiation is missing too, and no other', () => {
    const holed = autumn({
      shortwaveRadiationWPerM2: null,
      temperature2mC: (_, index) => (index === 40 ? null : 8 + (index % 24) / 4),
    });
    const days = referenceEvapotranspirationHours(holed).map((hour) => hour !== null);
    expect(days.slice(1, 24).every(Boolean)).toBe(true);
    expect(days.slice(26, 48).some(Boolean)).toBe(false);
    expect(days.slice(50, 96).every(Boolean)).toBe(true);
  });
});
