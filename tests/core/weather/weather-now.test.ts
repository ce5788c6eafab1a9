import { describe, expect, test } from 'vitest';
import { windAtBoom } from '../../../src/core/science/wind/at-boom.ts';
import { kilometresPerHour } from '../../../src/core/units/brands.ts';
import { bandAround } from '../../../src/core/weather/banded.ts';
import type { WeatherVariable } from '../../../src/core/weather/forecast.ts';
import {
  airTemperatureNow,
  boomGustNow,
  boomWindNow,
  cloudNow,
  humidityNow,
  rainNow,
  type WeatherNow,
} from '../../../src/core/weather/weather-now.ts';
import { testParameters } from '../../generators/parameters.ts';
import { at, forecastOf } from './forecast-of.ts';

const nine = at('2026-11-06T09:00Z');

/** The reading of one value of a column at nine; bands: 1 C, 5 %, a quarter or 0.1 mm/h of rain, a fifth or 1 km/h of wind. */
function read(now: WeatherNow, variable: WeatherVariable, value: number | null, growth = 1) {
  const forecast = forecastOf('2026-11-06T09:00Z', 2, { [variable]: [value, value] });
  return now(forecast, nine, growth, testParameters());
}

describe('the weather of a moment with its band', () => {
  test.each<[string, WeatherNow, WeatherVariable, value: number, growth: number, low: number, high: number]>([
    ['air', airTemperatureNow, 'temperature2mC', 8, 1, 7, 9],
    ['air, old forecast', airTemperatureNow, 'temperature2mC', -0.5, 2, -2.5, 1.5],
    ['humidity', humidityNow, 'relativeHumidity2mPercent', 80, 1, 75, 85],
    ['humidity, old forecast', humidityNow, 'relativeHumidity2mPercent', 60, 2, 50, 70],
    ['humidity near its end', humidityNow, 'relativeHumidity2mPercent', 97, 1, 92, 100],
    ['humidity near nothing', humidityNow, 'relativeHumidity2mPercent', 3, 1, 0, 8],
    ['no rain', rainNow, 'precipitationMm', 0, 1, 0, 0.1],
    ['light rain', rainNow, 'precipitationMm', 0.2, 1, 0.1, 0.3],
    ['heavy rain', rainNow, 'precipitationMm', 4, 1, 3, 5],
    ['heavy rain, old forecast', rainNow, 'precipitationMm', 4, 2, 2, 6],
  ])('%s', (_, now, variable, value, growth, low, high) => {
    expect(read(now, variable, value, growth)).toEqual({ value, low, high });
  });

  test.each<[string, WeatherNow, WeatherVariable, number]>([
    ['wind', boomWindNow, 'windSpeed10mKmh', 20],
    ['gusts', boomGustNow, 'windGusts10mKmh', 35],
  ])(
    '%s are brought down to half a metre above the crop, with a fifth or 1 km/h either way',
    (_, now, variable, kmh) => {
      const boom = (at10m: number) => windAtBoom(kilometresPerHour(at10m), { canopyHeightM: 0.3, boomHeightM: 0.8 });
      const found = read(now, variable, kmh);
      expect(found?.value).toBe(boom(kmh));
      expect(found?.low).toBeCloseTo(boom(kmh) * 0.8, 5);
      expect(found?.high).toBeCloseTo(boom(kmh) * 1.2, 5);
      expect(read(now, variable, kmh, 2)?.high).toBeCloseTo(boom(kmh) * 1.4, 5);
      expect(read(now, variable, 4)?.high).toBeCloseTo(boom(4) + 1, 5);
      expect(read(now, variable, 1)?.low).toBe(0);
    },
  );

  test.each<[WeatherNow, WeatherVariable, lowest: number, highest: number]>([
    [airTemperatureNow, 'temperature2mC', -95, 65],
    [humidityNow, 'relativeHumidity2mPercent', 0, 100],
    [rainNow, 'precipitationMm', 0, 500],
    [boomWindNow, 'windSpeed10mKmh', 0, 450],
    [boomGustNow, 'windGusts10mKmh', 0, 450],
    [(forecast, moment) => bandOf(cloudNow(forecast, moment)), 'cloudCoverPercent', 0, 100],
  ])('a value that is missing or cannot be is not told (%#: %s, %d to %d)', (now, variable, lowest, highest) => {
    for (const value of [lowest, highest]) expect(read(now, variable, value)).not.toBeNull();
    for (const value of [lowest - 0.1, highest + 0.1, null]) expect(read(now, variable, value)).toBeNull();
  });

  test('cloud is told as it stands', () => {
    expect(cloudNow(forecastOf('2026-11-06T09:00Z', 1, { cloudCoverPercent: [40] }), nine)).toBe(40);
  });
});

function bandOf(value: number | null) {
  return value === null ? null : { value, low: value, high: value };
}

test('a band always holds its value, though the value lies outside what can be, and carries no binary noise', () => {
  expect(bandAround(0.3, 0.1, [0, 1])).toEqual({ value: 0.3, low: 0.2, high: 0.4 });
  expect(bandAround(12, 1, [0, 10])).toEqual({ value: 12, low: 11, high: 12 });
  expect(bandAround(-2, 1, [0, 10])).toEqual({ value: -2, low: -2, high: -1 });
});
