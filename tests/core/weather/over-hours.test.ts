import { describe, expect, test } from 'vitest';
import { sunTimes } from '../../../src/core/science/sun/times.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { hoursFrom, nightHours, takeOver } from '../../../src/core/weather/over-hours.ts';
import { at } from './forecast-of.ts';

const moment = at('2026-11-06T09:20Z');
const field = { latitude: 53.4, longitude: -1.9 };

describe('the hours from a moment on', () => {
  test.each([
    [3, ['09:20', '10:20', '11:20']],
    [2.1, ['09:20', '10:20', '11:20']],
    [1, ['09:20']],
    [0, ['09:20']],
    [-2, ['09:20']],
  ])('of %d hours', (hours, clock) => {
    expect(hoursFrom(moment, hours)).toEqual(clock.map((time) => at(`2026-11-06T${time}Z`)));
  });
});

describe('the hours of a night', () => {
  const night = (iso: string, place = field) =>
    nightHours(place, at(iso))?.map((hour) => new Date(hour * 1000).toISOString().slice(8, 16)) ?? null;

  // Sunset of 6 November at 53.4 N, 1.9 W about 16:27 UTC, sunrise of the 7th about 07:13 (computed; tests/core/science/sun holds the times to a library).
  test('asked by day are those between the coming sunset and sunrise, on the minutes of the moment', () => {
    const hours = night('2026-11-06T09:20Z');
    expect(hours?.[0]).toBe('06T17:20');
    expect(hours?.at(-1)).toBe('07T06:20');
    expect(hours).toHaveLength(14);
  });

  test('asked in the night begin now', () => {
    expect(night('2026-11-06T22:00Z')?.[0]).toBe('06T22:00');
    expect(night('2026-11-06T22:00Z')?.at(-1)).toBe('07T07:00');
  });

  test('asked when the night is nearly over take in the next one too', () => {
    expect(night('2026-11-06T01:00Z')?.at(-1)).toBe('06T07:00');
    const late = night('2026-11-06T02:00Z');
    expect(late?.slice(0, 7)).toEqual([
      '06T02:00',
      '06T03:00',
      '06T04:00',
      '06T05:00',
      '06T06:00',
      '06T07:00',
      '06T17:00',
    ]);
    expect(late?.at(-1)).toBe('07T07:00');
  });

  test('the moment of sunset is night, and that of sunrise is not', () => {
    const { sunset } = sunTimes(field, moment);
    expect(nightHours(field, sunset!)?.[0]).toBe(sunset);
    const { sunrise } = sunTimes(field, at('2026-11-07T12:00Z'));
    expect(nightHours(field, at('2026-11-06T18:00Z'))?.at(-1)).toBeLessThan(sunrise!);
    expect(nightHours(field, epochSeconds(sunrise! - 10 * 3600))).toHaveLength(10);
  });

  test('where the sun does not rise and set there are none', () => {
    expect(night('2026-06-21T12:00Z', { latitude: 75, longitude: 20 })).toBeNull();
    expect(night('2026-12-21T12:00Z', { latitude: 75, longitude: 20 })).toBeNull();
  });
});

describe('several hours taken as one', () => {
  const hours = [
    { value: 4, low: 3, high: 8 },
    { value: 1, low: 0, high: 2 },
    { value: 7, low: 6, high: 7.5 },
  ];

  test.each([
    ['value', { value: 4, low: 3, high: 8 }],
    ['min', { value: 1, low: 0, high: 2 }],
    ['max', { value: 7, low: 6, high: 8 }],
    ['sum', { value: 12, low: 9, high: 17.5 }],
    ['mean', { value: 4, low: 3, high: 17.5 / 3 }],
  ] as const)('by %s, value and both ends each for themselves', (take, expected) => {
    expect(takeOver[take](hours)).toEqual(expected);
  });
});
