import { describe, expect, test } from 'vitest';
import {
  isCalendarDay,
  localDate,
  localTime,
  momentOfDay,
  nextMidnight,
  nextYearlyDay,
  noonOf,
} from '../../../src/core/facts/local-day.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { utc } from './moments.ts';

const london = 'Europe/London';

describe('a day at the field', () => {
  // In 2026 the clocks of the United Kingdom go forward on 29 March and back on 25 October at 01:00 UTC.
  test.each([
    ['2026-11-06T00:00Z', london, '2026-11-06', '2026-11-06 00:00', '2026-11-07T00:00Z'],
    ['2026-07-06T22:59Z', london, '2026-07-06', '2026-07-06 23:59', '2026-07-06T23:00Z'],
    ['2026-07-06T23:00Z', london, '2026-07-07', '2026-07-07 00:00', '2026-07-07T23:00Z'],
    ['2026-03-29T00:30Z', london, '2026-03-29', '2026-03-29 00:30', '2026-03-29T23:00Z'],
    ['2026-10-25T01:30Z', london, '2026-10-25', '2026-10-25 01:30', '2026-10-26T00:00Z'],
    ['2026-11-06T18:29Z', 'Asia/Kolkata', '2026-11-06', '2026-11-06 23:59', '2026-11-06T18:30Z'],
    ['2026-11-06T18:30Z', 'Asia/Kolkata', '2026-11-07', '2026-11-07 00:00', '2026-11-07T18:30Z'],
  ])('%s in %s is %s, on its clocks %s, and ends at %s', (moment, zone, day, clock, end) => {
    const at = utc(moment);
    expect([localDate(at, zone), localTime(at, zone)]).toEqual([day, clock]);
    expect(nextMidnight(at, zone)).toBe(utc(end));
    expect(localDate(epochSeconds(nextMidnight(at, zone) - 1), zone)).toBe(day);
    expect(localDate(nextMidnight(at, zone), zone)).not.toBe(day);
  });

  test('is the same however many other days were asked for in between', () => {
    const day = (days: number) => localDate(epochSeconds(utc('2026-01-01T12:00Z') + days * 86_400), london);
    const first = Array.from({ length: 700 }, (_, days) => day(days));
    expect(new Set(first).size).toBe(700);
    expect(Array.from({ length: 700 }, (_, days) => day(699 - days)).toReversed()).toEqual(first);
  });

  test.each([
    ['2026-07-01', '2026-11-06T09:00Z', '2027-06-30T23:00Z'],
    ['2026-07-01', '2026-06-30T22:59Z', '2026-06-30T23:00Z'],
    ['2026-07-01', '2026-06-30T23:00Z', '2027-06-30T23:00Z'],
    ['2026-01-01', '2026-12-31T23:59Z', '2027-01-01T00:00Z'],
  ])('the next %s (month and day) after %s begins at %s', (iso, moment, next) => {
    expect(nextYearlyDay(utc(moment), london, iso.slice(5))).toBe(utc(next));
  });

  test.each([
    ['2026-11-06', 0, '2026-11-06T00:00Z'],
    ['2026-11-06', 555, '2026-11-06T09:15Z'],
    ['2026-07-06', 1439, '2026-07-06T22:59Z'],
    ['2026-03-29', 180, '2026-03-29T02:00Z'],
  ])('minute %s %i on the clocks is %s', (iso, minute, moment) => {
    expect(momentOfDay(iso, minute, london)).toBe(utc(moment));
  });

  test.each([
    ['2026-11-06', london, '2026-11-06T12:00Z'],
    ['2026-07-06', london, '2026-07-06T11:00Z'],
    ['2026-11-06', 'Pacific/Auckland', '2026-11-05T23:00Z'],
  ])('noon of %s in %s is %s', (iso, zone, moment) => {
    expect(noonOf(iso, zone)).toBe(utc(moment));
  });

  test.each([
    ['2026-11-06', true],
    ['2028-02-29', true],
    ['2026-02-29', false],
    ['2026-13-01', false],
    ['2026-00-10', false],
    ['2026-11-31', false],
    ['2026-11-6', false],
    ['02026-11-06', false],
    ['2026-11-061', false],
    ['6 November', false],
    ['', false],
  ])('%j is a day of the calendar: %s', (iso, isDay) => {
    expect(isCalendarDay(iso)).toBe(isDay);
  });

  test('in a zone that does not exist is refused, whatever is asked of it', () => {
    const at = utc('2026-11-06T09:00Z');
    const refusal = expect.objectContaining({
      code: 'ZONE_UNKNOWN',
      details: { expected: 'an IANA time zone, for example Europe/London', came: 'Europe/Nowhere' },
    });
    for (const ask of [
      () => localDate(at, 'Europe/Nowhere'),
      () => localTime(at, 'Europe/Nowhere'),
      () => nextMidnight(at, 'Europe/Nowhere'),
      () => nextYearlyDay(at, 'Europe/Nowhere', '07-01'),
      () => noonOf('2026-11-06', 'Europe/Nowhere'),
    ]) {
      expect(ask).toThrow(refusal);
    }
  });
});
