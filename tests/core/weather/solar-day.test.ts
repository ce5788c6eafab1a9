import { Settings } from 'luxon';
import { describe, expect, test } from 'vitest';
import { referenceEvapotranspirationOfDay } from '../../../src/core/science/evapotranspiration/day.ts';
import { metresPerSecond } from '../../../src/core/units/brands.ts';
import { parseInstant } from '../../../src/core/units/instant.ts';
import type { Forecast } from '../../../src/core/weather/forecast.ts';
import { isoMinute } from '../../../src/core/weather/show-time.ts';
import { elevationOf, skyHourOf, solarDays, spreadDay } from '../../../src/core/weather/solar-day.ts';
import { forecastOf } from './forecast-of.ts';

/** So many hours from 00:00 UTC on at a longitude, each a degree warmer than the last, from 0 C. */
function warming(hours: number, longitude: number, more: Forecast['values'] = {}): Forecast {
  const temperature2mC = Array.from({ length: hours }, (_, index) => index);
  const forecast = forecastOf('2026-11-06T00:00Z', hours, { temperature2mC, ...more });
  return { ...forecast, place: { ...forecast.place, longitude } };
}

describe('days from midnight to midnight by the sun', () => {
  const days = (forecast: Forecast) =>
    [...solarDays(forecast)].map(([index, day]) => `${index}: ${day.first} to ${day.last}`);

  test('at Greenwich the stamps from 01:00 to 24:00 make a day; at the ends the nearest 24 do', () => {
    const found = days(warming(60, 0));
    expect(found).toHaveLength(60);
    expect([found[0], found[1], found[24], found[25], found[48], found[49], found[59]]).toEqual([
      '0: 0 to 23',
      '1: 1 to 24',
      '24: 1 to 24',
      '25: 25 to 48',
      '48: 25 to 48',
      '49: 36 to 59',
      '59: 36 to 59',
    ]);
  });

  test.each([
    [90, 18, 19],
    [-90, 6, 7],
  ])('at %d degrees midnight by the sun is %d h after midnight UTC', (longitude, lastOfFirst, firstOfNext) => {
    const found = solarDays(warming(60, longitude));
    expect(found.get(lastOfFirst)?.first).toBe(0);
    expect(found.get(firstOfNext)?.first).toBe(firstOfNext);
  });

  test('has its lowest and highest temperature, or none where an hour is missing', () => {
    expect(solarDays(warming(60, 0)).get(30)?.airC).toEqual({ lowestC: 25, highestC: 48 });
    const temperature2mC = Array.from({ length: 60 }, (_, index) => (index === 25 ? null : index));
    const holed = solarDays(warming(60, 0, { temperature2mC }));
    expect([24, 25, 48, 49].map((index) => holed.get(index)?.airC === null)).toEqual([false, true, true, false]);
  });

  test('takes 24 stamps at least', () => {
    expect(solarDays(warming(23, 0)).size).toBe(0);
    expect(days(warming(24, 0))).toHaveLength(24);
    expect(new Set(solarDays(warming(24, 0)).values())).toContainEqual({
      first: 0,
      last: 23,
      airC: { lowestC: 0, highestC: 23 },
    });
  });
});

test('the hour before a stamp is that of its middle, the day before at midnight', () => {
  const forecast = forecastOf('2027-01-01T00:00Z', 30, {});
  expect(skyHourOf(forecast, 0)).toEqual({ latitude: 53.4, longitude: -1.9, dayOfYear: 365, middleUtcH: 23.5 });
  expect(skyHourOf(forecast, 1)).toMatchObject({ dayOfYear: 1, middleUtcH: 0.5 });
  expect(skyHourOf(forecast, 25)).toMatchObject({ dayOfYear: 2, middleUtcH: 0.5 });
});

test('the hour is the same whatever the zone of the machine', () => {
  const forecast = forecastOf('2027-01-01T00:00Z', 30, {});
  const here = Settings.defaultZone;
  Settings.defaultZone = 'Pacific/Auckland';
  try {
    expect(skyHourOf(forecast, 1)).toMatchObject({ dayOfYear: 1, middleUtcH: 0.5 });
    expect(isoMinute(forecast.times[1]!)).toBe('2027-01-01T01:00Z');
    expect(parseInstant('2027-01-01T01:00Z')).toBe(forecast.times[1]);
  } finally {
    Settings.defaultZone = here;
  }
});

test('sea level stands in for a height that is not told', () => {
  const forecast = forecastOf('2026-11-06T00:00Z', 1, {});
  expect(elevationOf(forecast)).toBe(180);
  expect(elevationOf({ ...forecast, place: { ...forecast.place, elevationM: null } })).toBe(0);
});

describe('the evapotranspiration of a day spread over its sun', () => {
  const day = (of: Parameters<typeof referenceEvapotranspirationOfDay>[0]) => referenceEvapotranspirationOfDay(of);
  const hourly = (value: number) => Array.from({ length: 25 }, () => value);
  const air = Array.from({ length: 25 }, (_, index) => (index === 0 ? null : index === 15 ? 16 : index === 6 ? 4 : 9));
  const whole = {
    latitude: 53.4,
    elevationM: 180,
    dayOfYear: 310,
    highestC: 16,
    lowestC: 4,
    humidity: { unknown: true },
    wind: null,
    windHeightM: 10,
    sun: { unknown: 'inland' },
  } as const;

  /** Sum over the 24 hours of 6 November (by the sun, near enough). */
  function sum(values: Forecast['values']): number {
    const forecast = warming(25, 0, { temperature2mC: air, ...values });
    const found = solarDays(forecast).get(12)!;
    const hours = Array.from({ length: 24 }, (_, index) => spreadDay(forecast, found, index + 1)!);
    expect(hours.slice(0, 6)).toEqual([0, 0, 0, 0, 0, 0]);
    expect(Math.max(...hours)).toBe(hours[11]);
    return hours.reduce((total, one) => total + one, 0);
  }

  test('makes up that of the day: without wind and humidity as FAO-56 fills them', () => {
    expect(sum({})).toBeCloseTo(day(whole), 2);
  });

  test('with the mean wind of the day, brought down from 10 m', () => {
    expect(sum({ windSpeed10mKmh: hourly(36) })).toBeCloseTo(day({ ...whole, wind: metresPerSecond(10) }), 2);
  });

  test('with the mean dew point of the day, which outranks humidity', () => {
    const dewPoint2mC = [null, ...hourly(1).slice(0, 12), ...hourly(3).slice(0, 12)];
    const relativeHumidity2mPercent = hourly(30);
    const expected = day({ ...whole, humidity: { dewPointC: 2 } });
    expect(sum({ dewPoint2mC, relativeHumidity2mPercent })).toBeCloseTo(expected, 2);
  });

  test('with the highest and lowest humidity of the day, where it is whole', () => {
    const humid = (index: number) => (index === 6 ? 96 : index === 14 ? 61 : 80);
    const relativeHumidity2mPercent = Array.from({ length: 25 }, (_, index) => humid(index));
    const expected = day({ ...whole, humidity: { highestPercent: 96, lowestPercent: 61 } });
    expect(sum({ relativeHumidity2mPercent })).toBeCloseTo(expected, 2);
    const holed = relativeHumidity2mPercent.map((one, index) => (index === 20 ? null : one));
    expect(sum({ relativeHumidity2mPercent: holed })).toBeCloseTo(day(whole), 2);
  });
});
