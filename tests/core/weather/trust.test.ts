import { describe, expect, test } from 'vitest';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { isFetchedLater, lastStamp } from '../../../src/core/weather/series.ts';
import { isoMinute } from '../../../src/core/weather/show-time.ts';
import { growthAhead, trustIn } from '../../../src/core/weather/trust.ts';
import { testParameters } from '../../generators/parameters.ts';
import { at, forecastOf } from './forecast-of.ts';

const fetched = at('2026-11-06T08:00Z');
const forecast = forecastOf('2026-11-06T08:00Z', 4, {});
const field = { latitude: 53.4, longitude: -1.9 };
/** Degrees of latitude that many km make on the sphere of the distance. */
const degrees = (km: number) => (km / 6371.0088) * (180 / Math.PI);

describe('whether a forecast may be used', () => {
  test.each([
    [-3, 1, 45],
    [0, 1, 48],
    [6, 1, 48],
    [8, 1.1, 48],
    [47.5, 3.075, 48],
  ])(
    'fetched %d h before, its bands are %d times as wide, and it may be used to %d h after it was fetched',
    (age, growth, oldest) => {
      const found = trustIn(forecast, epochSeconds(fetched + age * 3600), field, testParameters());
      expect(found).toEqual({
        usable: true,
        growth: expect.closeTo(growth, 9),
        oldestAt: fetched + oldest * 3600,
      });
    },
  );

  test.each([
    [48, '48 h'],
    [71.9, '71 h'],
  ])('fetched %d h before it is too old, which is said', (age, said) => {
    expect(trustIn(forecast, epochSeconds(fetched + age * 3600), field, testParameters())).toEqual({
      usable: false,
      reason: 'too-old',
      note: `forecast fetched 2026-11-06T08:00Z, ${said} before`,
    });
  });

  test.each<[string, placeKm: number, field: { latitude: number; longitude: number } | null, said: string | null]>([
    ['at the field', 0, field, null],
    ['just near enough', 0, { ...field, latitude: 53.4 + degrees(14.9) }, null],
    ['too far', 0, { ...field, latitude: 53.4 + degrees(15.2) }, '15.2'],
    ['near the field, though far from where it was asked for', 15.3, field, '15.3'],
    ['of a field that is not known, at the limit', 15, null, null],
    ['of a field that is not known, too far', 22.04, null, '22.0'],
    ['without a distance', Number.NaN, null, 'NaN'],
  ])('from a grid cell %s', (_, distanceKm, of, said) => {
    const placed = { ...forecast, place: { ...forecast.place, distanceKm } };
    const found = trustIn(placed, fetched, of, testParameters());
    if (said === null) expect(found.usable).toBe(true);
    else {
      expect(found).toEqual({
        usable: false,
        reason: 'forecast-gap',
        note: `the forecast's grid cell is ${said} km from the field, further than 15 km`,
      });
    }
  });
});

describe('how much wider bands stand ahead', () => {
  test.each([
    [1, -24, 1],
    [1, 0, 1],
    [1, 12, 1.05],
    [1, 48, 1.2],
    [2, 24, 2.2],
  ])('%d times as wide now is, %d h ahead, %d times', (growth, hours, expected) => {
    const ahead = growthAhead(growth, fetched, epochSeconds(fetched + hours * 3600), testParameters());
    expect(ahead).toBeCloseTo(expected, 9);
  });
});

test('a forecast counts as fetched later from more than a minute on, for clocks that differ', () => {
  expect(isFetchedLater(forecast, epochSeconds(fetched - 60))).toBe(false);
  expect(isFetchedLater(forecast, epochSeconds(fetched - 61))).toBe(true);
  expect(isFetchedLater(forecast, fetched)).toBe(false);
});

test('the last stamp is told, none of an empty forecast', () => {
  expect(lastStamp(forecast)).toBe(at('2026-11-06T11:00Z'));
  expect(lastStamp(forecastOf('2026-11-06T08:00Z', 0, {}))).toBeNull();
});

test('a moment is shown to the minute in UTC, one that is none as no time', () => {
  expect(isoMinute(at('2026-03-04T05:06:59Z'))).toBe('2026-03-04T05:06Z');
  expect(isoMinute(epochSeconds(Number.NaN))).toBe('no time');
});
