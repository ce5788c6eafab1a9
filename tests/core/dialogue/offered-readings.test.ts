import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { offeredReadings } from '../../../src/core/dialogue/offered-readings.ts';
import type { Clock } from '../../../src/core/dialogue/understand/clock.ts';
import type { UnderstoodReading } from '../../../src/core/dialogue/understand/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';

const zone = 'UTC';
const midnight = Date.UTC(2026, 10, 6) / 1000;
const atMinute = (minute: number) => epochSeconds(midnight + minute * 60);
const reading = (more: Partial<UnderstoodReading> = {}): UnderstoodReading => ({
  fact: 'soil.temperature30cmC',
  reading: { type: 'number', value: 9 },
  quote: '9',
  doubtful: false,
  ...more,
});
const clock = (minute: number, half: 'am' | 'said' | null = null, daysAgo = 0): Clock => ({
  kind: 'time',
  minute,
  half,
  daysAgo,
});
/** Minutes after midnight of the sixth at which a reading counts as taken; null where it is refused. */
function seenAtMinute(named: Clock, saidAt: number): number | null {
  const { offered } = offeredReadings([reading({ clock: named })], atMinute(saidAt), zone);
  return offered[0] ? Math.round(saidAt - offered[0].agoHours * 60) : null;
}

describe('an hour named without its half of the day', () => {
  test.each([
    ['4:59 in the evening: the afternoon', clock(4 * 60 + 59), 20 * 60, 16 * 60 + 59],
    ['at 15:00, 4:59 was in the night, when nobody reads: refused', clock(4 * 60 + 59), 15 * 60, null],
    ['at 15:00, 5:00 was in the morning', clock(5 * 60), 15 * 60, 5 * 60],
    ['at 23:30, 10:59 was just before', clock(10 * 60 + 59), 23 * 60 + 30, 22 * 60 + 59],
    ['at 23:30, 11:00 was in the morning: at 23:00 nobody reads', clock(11 * 60), 23 * 60 + 30, 11 * 60],
    ['at 14:00, 2:00 is this very minute', clock(2 * 60), 14 * 60, 14 * 60],
    ['at 13:59, 2:00 is to come: refused', clock(2 * 60), 13 * 60 + 59, null],
    ['yesterday, half past nine: the evening', clock(9 * 60 + 30, null, 1), 8 * 60, (21.5 - 24) * 60],
  ])('%s', (_, named, saidAt, minute) => {
    expect(seenAtMinute(named, saidAt)).toBe(minute);
  });

  test('is taken between 05:00 and 22:59, never to come, and as late as it can be', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 719 }), fc.integer({ min: 0, max: 1439 }), (minute, saidAt) => {
        const usable = [minute, minute + 720].filter((one) => one >= 300 && one < 1380 && one <= saidAt);
        expect(seenAtMinute(clock(minute), saidAt)).toBe(usable.at(-1) ?? null);
      }),
    );
  });
});

describe('a moment that was said', () => {
  test('stands as it was said, at night too', () => {
    expect(seenAtMinute(clock(3 * 60, 'said'), 8 * 60)).toBe(3 * 60);
    expect(seenAtMinute(clock(23 * 60 + 30, 'said', 1), 8 * 60)).toBe(-30);
  });

  test('"now" is the moment of speaking, and hours ago count from it', () => {
    expect(seenAtMinute({ kind: 'now' }, 500)).toBe(500);
    const { offered } = offeredReadings([reading({ agoHours: 3 }), reading()], atMinute(600), zone);
    expect(offered.map(({ agoHours }) => agoHours)).toEqual([3, 0]);
  });

  test('to come is refused with what was said and the time until which it can be; what else was said is taken', () => {
    const later = reading({ clock: clock(23 * 60, 'said'), quote: '9 at 11 pm' });
    const { offered, refused } = offeredReadings([later, reading()], atMinute(600), zone);
    expect(offered).toHaveLength(1);
    expect(refused).toMatchObject([
      {
        code: 'READING_IN_FUTURE',
        expected: 'a time up to 2026-11-06 10:00',
        came: '9 at 11 pm',
        fact: 'soil.temperature30cmC',
      },
    ]);
  });
});

test('a reading at another depth is worked out at 30 cm; one without a depth stays as it is', () => {
  const { offered } = offeredReadings([reading({ depthCm: 10 }), reading()], atMinute(600), zone);
  expect(offered[0]?.reading).toMatchObject({ from: { depthCm: 10, valueC: 9, hour: '10:00' } });
  expect(offered[1]?.reading).toEqual({ type: 'number', value: 9 });
});
