import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { ageHours, valueAt } from '../../../src/core/weather/series.ts';
import { at, forecastOf } from './forecast-of.ts';

const day = forecastOf('2026-11-06T08:00Z', 4, {
  windSpeed10mKmh: [8, 9, 10, 11],
  precipitationMm: [0.8, 0.9, 1, 1.1],
  windGusts10mKmh: [18, 19, null, 21],
});

describe('reading a forecast at a moment', () => {
  test.each([
    ['2026-11-06T09:00Z', 9],
    ['2026-11-06T09:29Z', 9],
    ['2026-11-06T09:30Z', 10],
    ['2026-11-06T09:31Z', 10],
    ['2026-11-06T11:29Z', 11],
    ['2026-11-06T07:31Z', 8],
    ['2026-11-06T07:29Z', null],
    ['2026-11-06T11:31Z', null],
  ])('an instant at %s is the nearest stamp within 30 minutes', (moment, expected) => {
    expect(valueAt(day, 'windSpeed10mKmh', at(moment))).toBe(expected);
  });

  test.each([
    ['2026-11-06T09:00Z', 1],
    ['2026-11-06T09:59Z', 1],
    ['2026-11-06T08:59Z', 0.9],
    ['2026-11-06T07:00Z', 0.8],
    ['2026-11-06T06:59Z', null],
    ['2026-11-06T11:00Z', null],
  ])('a preceding-hour value at %s is the stamp that ends its hour', (moment, expected) => {
    expect(valueAt(day, 'precipitationMm', at(moment))).toBe(expected);
  });

  test('a gap and a column that is not there are null, never zero', () => {
    expect(valueAt(day, 'windGusts10mKmh', at('2026-11-06T09:10Z'))).toBeNull();
    expect(valueAt(day, 'cloudCoverPercent', at('2026-11-06T09:10Z'))).toBeNull();
  });

  test('age counts from fetching and is never negative', () => {
    expect(ageHours(day, at('2026-11-06T14:00Z'))).toBe(6);
    expect(ageHours(day, at('2026-11-06T07:00Z'))).toBe(0);
  });

  test('an empty forecast says nothing', () => {
    const none = forecastOf('2026-11-06T08:00Z', 0, {});
    expect(valueAt(none, 'precipitationMm', at('2026-11-06T08:00Z'))).toBeNull();
    expect(valueAt(none, 'windSpeed10mKmh', at('2026-11-06T08:00Z'))).toBeNull();
    expect(ageHours(none, at('2026-11-06T08:30Z'))).toBe(0.5);
  });

  test('whatever the moment, the preceding-hour stamp read lies after it by at most an hour', () => {
    fc.assert(
      fc.property(fc.integer({ min: -3 * 3600, max: 8 * 3600 }), (offset) => {
        const moment = epochSeconds(at('2026-11-06T08:00Z') + offset);
        const value = valueAt(day, 'precipitationMm', moment);
        const ends = [8, 9, 10, 11].filter((hour) => {
          const stamp = at(`2026-11-06T${String(hour).padStart(2, '0')}:00Z`);
          return stamp > moment && stamp - 3600 <= moment;
        });
        expect(value).toBe(ends.length === 1 ? ends[0]! / 10 : null);
      }),
    );
  });
});
