import { describe, expect, test } from 'vitest';
import { quality, reachesFrom } from '../../../src/core/weather/quality.ts';
import { at, forecastOf } from './forecast-of.ts';

const whole = [1, 1, 1, 1, 1, 1];
const columns = {
  temperature2mC: whole,
  relativeHumidity2mPercent: whole,
  windSpeed10mKmh: whole,
  windGusts10mKmh: whole,
  precipitationMm: whole,
};

describe('how whole a forecast is', () => {
  test('an hour counts only if every variable needed is there', () => {
    const gaps = forecastOf('2026-11-06T00:00Z', 6, {
      ...columns,
      temperature2mC: [1, null, 1, 1, 1, 1],
      windGusts10mKmh: [1, 1, null, 1, 1, null],
    });
    expect(quality(gaps)).toEqual({ coverage: 0.5, longestGapHours: 2, lastGoodHour: at('2026-11-06T04:00Z') });
  });

  test('a column that is missing whole leaves no good hour', () => {
    const { precipitationMm: _, ...dry } = columns;
    expect(quality(forecastOf('2026-11-06T00:00Z', 6, dry))).toEqual({
      coverage: 0,
      longestGapHours: 6,
      lastGoodHour: null,
    });
    expect(quality(forecastOf('2026-11-06T00:00Z', 0, {}))).toEqual({
      coverage: 0,
      longestGapHours: 0,
      lastGoodHour: null,
    });
  });

  test('what a decision can do without may be missing', () => {
    expect(quality(forecastOf('2026-11-06T00:00Z', 6, columns)).coverage).toBe(1);
    expect(quality(forecastOf('2026-11-06T00:00Z', 6, columns), ['et0Mm']).coverage).toBe(0);
  });

  test.each(Object.keys(columns))('spray weather cannot be judged without %s', (needed) => {
    const without = forecastOf('2026-11-06T00:00Z', 6, { ...columns, [needed]: [null, 1, 1, 1, 1, 1] });
    expect(quality(without)).toMatchObject({ coverage: 5 / 6, longestGapHours: 1 });
  });

  test('the longest gap is told, not the last', () => {
    const gaps = forecastOf('2026-11-06T00:00Z', 6, { ...columns, temperature2mC: [null, null, 1, null, 1, 1] });
    expect(quality(gaps).longestGapHours).toBe(2);
  });

  test('the reach stops before the first gap, though good hours follow it', () => {
    const gap = forecastOf('2026-11-06T00:00Z', 6, { ...columns, precipitationMm: [1, 1, 1, null, 1, 1] });
    expect(reachesFrom(gap, at('2026-11-06T00:30Z'))).toBe(at('2026-11-06T02:00Z'));
    expect(reachesFrom(gap, at('2026-11-06T03:00Z'))).toBeNull();
    expect(reachesFrom(gap, at('2026-11-07T03:00Z'))).toBeNull();
    expect(reachesFrom(gap, at('2026-11-05T03:00Z'))).toBeNull();
    expect(reachesFrom(gap, at('2026-11-06T04:10Z'))).toBe(at('2026-11-06T05:00Z'));
    expect(reachesFrom(gap, at('2026-11-05T23:59Z'))).toBeNull();
    expect(reachesFrom(gap, at('2026-11-06T00:00Z'))).toBe(at('2026-11-06T02:00Z'));
    expect(reachesFrom(forecastOf('2026-11-06T00:00Z', 0, {}), at('2026-11-06T00:00Z'))).toBeNull();
  });
});
