import { describe, expect, test } from 'vitest';
import { dailySums } from '../../../src/core/weather/days.ts';
import { forecastOf } from './forecast-of.ts';

const ones = (hours: number) => Array.from({ length: hours }, () => 1);

describe('sums of a local day', () => {
  test.each([
    ['Europe/London', '2026-10-25', 25, 'clocks go back on the last Sunday of October'],
    ['Europe/London', '2026-03-29', 23, 'clocks go forward on the last Sunday of March'],
    ['Europe/London', '2026-11-06', 24, 'an ordinary day'],
    ['Asia/Kolkata', '2026-10-25', 24, 'a zone of a half hour'],
    [
      'Australia/Lord_Howe',
      '2026-10-04',
      23,
      'clocks go forward by half an hour: the hours beginning at 14:00Z to 12:00Z',
    ],
  ])('%s on %s has %i hours (%s)', (zone, date, hours) => {
    const start = new Date(Date.parse(`${date}T00:00Z`) - 2 * 86_400_000).toISOString();
    const day = dailySums(forecastOf(start, 5 * 24, { precipitationMm: ones(5 * 24) }), 'precipitationMm', zone).find(
      (entry) => entry.date === date,
    );
    expect(day).toEqual({ date, total: hours, hours, complete: true });
  });

  test('the sum stamped at local midnight belongs to the day before', () => {
    const winter = forecastOf('2026-11-05T00:00Z', 49, {
      precipitationMm: ones(49).map((_, hour) => (hour === 24 ? 7 : 0)),
    });
    const sums = dailySums(winter, 'precipitationMm', 'Europe/London');
    expect(sums.find((day) => day.date === '2026-11-05')?.total).toBe(7);
    expect(sums.find((day) => day.date === '2026-11-06')?.total).toBe(0);
  });

  test('a missing hour makes its day incomplete and no other', () => {
    const column: (number | null)[] = ones(73);
    column[30] = null;
    const sums = dailySums(forecastOf('2026-11-05T00:00Z', 73, { precipitationMm: column }), 'precipitationMm', 'UTC');
    expect(sums.map((day) => [day.date, day.hours, day.complete])).toEqual([
      ['2026-11-04', 1, false],
      ['2026-11-05', 24, true],
      ['2026-11-06', 23, false],
      ['2026-11-07', 24, true],
    ]);
  });

  test('a zone that does not exist is refused', () => {
    const forecast = forecastOf('2026-11-05T00:00Z', 3, { precipitationMm: ones(3) });
    expect(() => dailySums(forecast, 'precipitationMm', 'Europe/Nowhere')).toThrow('ZONE_UNKNOWN');
  });
});
