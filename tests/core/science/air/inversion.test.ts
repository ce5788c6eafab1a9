import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type InversionLimits, judgeInversion } from '../../../../src/core/science/air/inversion.ts';
import { sunTimes } from '../../../../src/core/science/sun/times.ts';
import { epochSeconds } from '../../../../src/core/units/brands.ts';
import { between, outOfRange } from '../published.ts';

const limits: InversionLimits = {
  calmBelowKmh: 3,
  clearAtMostPercent: 25,
  hoursBeforeSunset: 1,
  hoursAfterSunrise: 2,
};
const place = { latitude: 52.5, longitude: -1.5 };
const noon = epochSeconds(Date.parse('2026-11-06T12:00:00Z') / 1000);
type Base = 'noon' | 'sunrise' | 'sunset';
/** A moment so many hours after noon, sunrise or sunset of the day. */
const at = (base: Base, hours: number) => epochSeconds(sunTimes(place, noon)[base]! + hours * 3600);

const judge = (moment: number, windKmh: number | null, cloudPercent: number | null) =>
  judgeInversion({ place, at: epochSeconds(moment), windKmh, cloudPercent }, limits);

describe('signs of an inversion (guidance of Canadian and Australian grower bodies)', () => {
  test.each([
    ['a calm clear evening', 'sunset', 1, 2, 10, 'yes'],
    ['a calm clear morning', 'sunrise', 1, 0, 25, 'yes'],
    ['the middle of a calm clear night', 'noon', 12, 1, 0, 'yes'],
    ['a calm clear noon', 'noon', 0, 1, 0, 'no'],
    ['a windy cloudy evening', 'sunset', 1, 12, 90, 'no'],
    ['a clear evening with wind', 'sunset', 1, 12, 0, 'possible'],
    ['a calm evening under cloud', 'sunset', 1, 1, 100, 'possible'],
    ['a calm evening with the sky unknown', 'sunset', 1, 1, null, 'possible'],
    ['a windy evening with the sky unknown', 'sunset', 1, 12, null, 'possible'],
    ['an evening of which nothing is known', 'sunset', 1, null, null, 'possible'],
    ['a noon of which nothing is known', 'noon', 0, null, null, 'no'],
  ] as const)('%s (%s and %d h, wind %s, cloud %s): %s', (_name, base, hours, wind, cloud, risk) => {
    expect(judge(at(base, hours), wind, cloud).risk).toBe(risk);
  });

  test.each([
    ['an hour before sunset', 'sunset', -1, true],
    ['just earlier than that', 'sunset', -1.01, false],
    ['two hours after sunrise', 'sunrise', 2, true],
    ['just later than that', 'sunrise', 2.01, false],
  ] as const)('%s (%s and %d h): evening to morning %s', (_name, base, hours, expected) => {
    expect(judge(at(base, hours), 1, 0).signs.eveningToMorning).toBe(expected);
  });

  test('the limits are exclusive for calm and inclusive for a clear sky, and the signs say which are there', () => {
    expect(judge(at('sunset', 1), 3, 25).signs).toEqual({ calm: false, clear: true, eveningToMorning: true });
    expect(judge(at('sunset', 1), 2.9, 25.1).signs).toEqual({ calm: true, clear: false, eveningToMorning: true });
    expect(judge(at('sunset', 1), null, null).signs).toEqual({ calm: null, clear: null, eveningToMorning: true });
  });

  test('less wind or less cloud never lowers the risk', () => {
    const rank = { no: 0, possible: 1, yes: 2 };
    const wind = between(0, 30);
    const cloud = between(0, 100);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 86_400 }), wind, wind, cloud, cloud, (later, w1, w2, c1, c2) => {
        const moment = noon + later;
        const calmer = judge(moment, Math.min(w1, w2), Math.min(c1, c2)).risk;
        const rougher = judge(moment, Math.max(w1, w2), Math.max(c1, c2)).risk;
        expect(rank[calmer]).toBeGreaterThanOrEqual(rank[rougher]);
      }),
    );
  });

  test('on the last day before the sun stays up it rises and does not set: no evening, and a morning', () => {
    const north = { latitude: 70, longitude: 0 };
    const day = Array.from({ length: 366 }, (_, index) => epochSeconds(noon + index * 86_400)).find((one) => {
      const { sunrise, sunset } = sunTimes(north, one);
      return sunrise !== null && sunset === null;
    });
    const { sunrise } = sunTimes(north, day!);
    const sign = (hours: number) =>
      judgeInversion({ place: north, at: epochSeconds(sunrise! + hours * 3600), windKmh: 1, cloudPercent: 0 }, limits)
        .signs.eveningToMorning;
    expect([sign(1), sign(2.1), sign(11)]).toEqual([true, false, false]);
  });

  test('where the sun does not rise it is night all day, where it does not set there is no evening', () => {
    const polar = (iso: string) =>
      judgeInversion(
        {
          place: { latitude: 78, longitude: 15 },
          at: epochSeconds(Date.parse(iso) / 1000),
          windKmh: 1,
          cloudPercent: 0,
        },
        limits,
      ).risk;
    expect(polar('2026-12-21T11:00:00Z')).toBe('yes');
    expect(polar('2026-06-21T23:00:00Z')).toBe('no');
  });

  test.each([() => judge(noon, -1, 0), () => judge(noon, 1, 101), () => judge(Number.NaN, 1, 10)])(
    'air that cannot be is refused with its code (%#)',
    (call) => {
      expect(call).toThrow(outOfRange);
    },
  );
});
