import { getTimes } from 'suncalc';
import { describe, expect, test } from 'vitest';
import { daylightWithin } from '../../../src/core/outlook/daylight.ts';
import { outlookOf } from '../../../src/core/outlook/index.ts';
import type { Span } from '../../../src/core/outlook/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { utc } from '../facts/moments.ts';
import { input, morning } from './field.ts';

const place = { latitude: 53, longitude: -1 };
const span = (from: string, until: string) => ({ from: utc(from), until: utc(until) });

describe('daylight within a window', () => {
  // Sunrise and sunset of the reference library suncalc, which stands apart from our own sun.
  test('is from sunrise to sunset of each day, to five minutes inwards', () => {
    const found = daylightWithin(span('2026-11-06T00:00Z', '2026-11-08T00:00Z'), place);
    expect(found).toHaveLength(2);
    for (const [index, { from, until }] of found.entries()) {
      const { sunrise, sunset } = getTimes(
        new Date(Date.UTC(2026, 10, 6 + index, 12)),
        place.latitude,
        place.longitude,
      );
      const late = from - sunrise!.getTime() / 1000;
      const early = sunset!.getTime() / 1000 - until;
      for (const inwards of [late, early]) expect(Math.abs(inwards - 150)).toBeLessThan(150 + 90);
      expect([from % 300, until % 300]).toEqual([0, 0]);
    }
  });

  test.each<[string, Span, number[][], typeof place?]>([
    ['all of it by day', span('2026-11-06T09:00Z', '2026-11-06T14:00Z'), [[9, 14]]],
    ['none by night', span('2026-11-06T18:00Z', '2026-11-07T05:00Z'), []],
    ['none in polar night', span('2026-12-20T06:00Z', '2026-12-20T18:00Z'), [], { latitude: 80, longitude: 0 }],
    ['all of polar day', span('2026-06-20T06:00Z', '2026-06-20T18:00Z'), [[6, 18]], { latitude: 80, longitude: 0 }],
  ])('%s', (_, between, expected, at = place) => {
    const midnight = between.from - (between.from % 86_400);
    const hours = daylightWithin(between, at).map((one) =>
      [one.from, one.until].map((each) => (each - midnight) / 3600),
    );
    expect(hours).toEqual(expected);
  });
});

test('where the sun does not set one day follows the other, none twice', () => {
  const found = daylightWithin(span('2026-06-20T06:00Z', '2026-06-22T06:00Z'), { latitude: 80, longitude: 0 });
  expect(found.length).toBeGreaterThan(1);
  expect([found[0]!.from, found.at(-1)!.until]).toEqual([utc('2026-06-20T06:00Z'), utc('2026-06-22T06:00Z')]);
  for (const [index, { from }] of found.entries()) {
    if (index > 0) expect(Math.abs(from - found[index - 1]!.until)).toBeLessThanOrEqual(300);
  }
});

test('less than five minutes of sun are left out, five are not', () => {
  const [day] = daylightWithin(span('2026-11-06T00:00Z', '2026-11-07T00:00Z'), place);
  const before = (seconds: number) =>
    daylightWithin({ from: epochSeconds(day!.until - seconds), until: day!.until }, place);
  expect(before(300)).toHaveLength(1);
  expect(before(299)).toEqual([]);
  const after = (seconds: number) =>
    daylightWithin({ from: day!.from, until: epochSeconds(day!.from + seconds) }, place);
  expect([after(300).length, after(299).length]).toEqual([1, 0]);
});

test('a window over several days says when the sun is up in each, and nothing without a place', () => {
  const [first] = outlookOf(input({})).windows;
  expect(first!.daylight!.length).toBeGreaterThan(0);
  expect(first!.daylight![0]!.from).toBe(morning);
});
