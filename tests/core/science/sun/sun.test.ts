import fc from 'fast-check';
import * as reference from 'suncalc';
import { describe, expect, test } from 'vitest';
import { sunPosition } from '../../../../src/core/science/sun/position.ts';
import { dayLength, isDaylight, sunTimes } from '../../../../src/core/science/sun/times.ts';
import { epochSeconds } from '../../../../src/core/units/brands.ts';
import { between, outOfRange } from '../published.ts';

const seconds = (iso: string) => epochSeconds(Date.parse(iso) / 1000);
const moment = fc.integer({ min: 946_684_800, max: 2_524_608_000 }).map(epochSeconds);
const longitude = between(-180, 180);
const latitude = between(-89, 89);
const inhabited = between(-60, 60);
/** Lift by the air of a sun at a true height, degrees (Saemundsson 1986; Meeus 1998, eq. 16.4). */
const refraction = (height: number) => 1.02 / (60 * Math.tan(((height + 10.3 / (height + 5.11)) * Math.PI) / 180));

describe('the sun', () => {
  test('its height and direction agree with the reference library suncalc to 0.003 degrees', () => {
    fc.assert(
      fc.property(moment, latitude, longitude, (at, lat, lng) => {
        const ours = sunPosition({ latitude: lat, longitude: lng }, at);
        fc.pre(ours.elevationDeg > 3 && ours.elevationDeg < 85);
        const theirs = reference.getPosition(new Date(at * 1000), lat, lng);
        expect(Math.abs(ours.elevationDeg + refraction(ours.elevationDeg) - theirs.altitude)).toBeLessThan(0.003);
        const turn = Math.abs(ours.azimuthDeg - theirs.azimuth);
        const across = Math.min(turn, 360 - turn) * Math.cos((ours.elevationDeg * Math.PI) / 180);
        expect(across).toBeLessThan(0.003);
      }),
      { numRuns: 500 },
    );
  });

  test('sunrise, sunset, civil twilight and noon agree with suncalc to 3 seconds up to 60 degrees of latitude', () => {
    fc.assert(
      fc.property(moment, inhabited, longitude, (at, lat, lng) => {
        const ours = sunTimes({ latitude: lat, longitude: lng }, at);
        const theirs = reference.getTimes(new Date(ours.noon * 1000), lat, lng);
        const pairs = [
          [ours.dawn, theirs.dawn],
          [ours.sunrise, theirs.sunrise],
          [ours.noon, theirs.solarNoon],
          [ours.sunset, theirs.sunset],
          [ours.dusk, theirs.dusk],
        ] as const;
        for (const [mine, other] of pairs) {
          if (mine !== null && other) expect(Math.abs(mine - other.getTime() / 1000)).toBeLessThan(3);
          else expect([mine, other ?? null]).toEqual([null, null]);
        }
      }),
      { numRuns: 300 },
    );
  });

  test.each([
    ['2026-11-06', '2026-11-06T07:00:00Z', '2026-11-06T16:23:00Z'],
    ['2026-12-21', '2026-12-21T08:04:00Z', '2026-12-21T15:54:00Z'],
    ['2026-06-21', '2026-06-21T03:43:00Z', '2026-06-21T20:22:00Z'],
  ])(
    'in London on %s the sun rises at %s and sets at %s (almanac times to a few minutes, from memory)',
    (day, up, down) => {
      const { sunrise, sunset } = sunTimes({ latitude: 51.5, longitude: -0.12 }, seconds(`${day}T12:00:00Z`));
      expect(Math.abs(sunrise! - seconds(up))).toBeLessThan(240);
      expect(Math.abs(sunset! - seconds(down))).toBeLessThan(240);
    },
  );

  test('of one moment the times are those of the place asked for, whichever was asked for before', () => {
    const [north, south, east] = [
      { latitude: 53, longitude: -1 },
      { latitude: -53, longitude: -1 },
      { latitude: 53, longitude: 20 },
    ] as const;
    const [morning, evening] = [seconds('2026-11-06T06:00:00Z'), seconds('2026-11-07T20:00:00Z')];
    const rises = (place: typeof north | typeof south | typeof east, at: typeof morning) =>
      sunTimes(place, at).sunrise!;
    expect(rises(south, morning)).toBeLessThan(rises(north, morning) - 3600);
    expect(rises(east, morning)).toBeLessThan(rises(north, morning) - 3600);
    expect(rises(north, evening)).toBeGreaterThan(rises(north, morning) + 86_000);
    expect(rises(north, morning)).toBe(rises(north, morning));
  });

  test('the times of a day come in order, and the day lasts from sunrise to sunset', () => {
    fc.assert(
      fc.property(moment, inhabited, longitude, (at, lat, lng) => {
        const place = { latitude: lat, longitude: lng };
        const { dawn, sunrise, noon, sunset, dusk } = sunTimes(place, at);
        const order = [dawn, sunrise, noon, sunset, dusk].filter((time) => time !== null);
        expect(order).toEqual([...order].sort((a, b) => a - b));
        expect(Math.abs(noon - at)).toBeLessThanOrEqual(43_260);
        expect(dayLength(place, at)).toBeCloseTo((sunset! - sunrise!) / 3600, 9);
      }),
    );
  });

  test('it is daylight just when the moment lies between sunrise and sunset', () => {
    fc.assert(
      fc.property(moment, inhabited, longitude, (at, lat, lng) => {
        const { sunrise, sunset } = sunTimes({ latitude: lat, longitude: lng }, at);
        fc.pre(Math.abs(at - sunrise!) > 60 && Math.abs(at - sunset!) > 60);
        expect(isDaylight(lat, lng, at)).toBe(at > sunrise! && at < sunset!);
      }),
    );
  });

  test('beyond the polar circle a summer day lasts 24 hours and a winter day none', () => {
    const place = { latitude: 75, longitude: 20 };
    const [summer, winter] = [seconds('2026-06-21T12:00:00Z'), seconds('2026-12-21T12:00:00Z')];
    expect(sunTimes(place, summer)).toMatchObject({ sunrise: null, sunset: null, upAtNoon: true });
    expect(sunTimes(place, winter)).toMatchObject({ sunrise: null, sunset: null, upAtNoon: false });
    expect([dayLength(place, summer), dayLength(place, winter)]).toEqual([24, 0]);
  });

  test.each([
    () => sunPosition({ latitude: 91, longitude: 0 }, epochSeconds(0)),
    () => sunPosition({ latitude: 0, longitude: 181 }, epochSeconds(0)),
    () => isDaylight(51, 0, epochSeconds(Number.NaN)),
    () => sunTimes({ latitude: Number.NaN, longitude: 0 }, epochSeconds(0)),
    () => dayLength({ latitude: 51, longitude: 0 }, epochSeconds(1e12)),
  ])('a place or moment that cannot be is refused with its code (%#)', (call) => {
    expect(call).toThrow(outOfRange);
  });
});
