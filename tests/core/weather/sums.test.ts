import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sumAhead } from '../../../src/core/weather/sums.ts';
import { at, forecastOf } from './forecast-of.ts';

const rain = forecastOf('2026-11-06T08:00Z', 6, { precipitationMm: [64, 32, 16, 8, 4, 2] });

describe('sums of the hours ahead', () => {
  test('from 09:00 over 2 h reads the 10:00 and 11:00 stamps', () => {
    expect(sumAhead(rain, 'precipitationMm', at('2026-11-06T09:00Z'), 2)).toEqual({
      total: 16 + 8,
      maxPerHour: 16,
      complete: true,
      reachesTo: at('2026-11-06T11:00Z'),
    });
  });

  test('a start inside an hour takes the whole of that hour and of the last one', () => {
    expect(sumAhead(rain, 'precipitationMm', at('2026-11-06T09:20Z'), 2).total).toBe(16 + 8 + 4);
  });

  test('beyond the end is incomplete, and the known part is only a lower bound', () => {
    expect(sumAhead(rain, 'precipitationMm', at('2026-11-06T11:00Z'), 3)).toEqual({
      total: 6,
      maxPerHour: 4,
      complete: false,
      reachesTo: at('2026-11-06T13:00Z'),
    });
  });

  test('a gap makes it incomplete and ends the reach before the gap', () => {
    const gap = forecastOf('2026-11-06T08:00Z', 6, { precipitationMm: [0, 0, 1, null, 5, 0] });
    expect(sumAhead(gap, 'precipitationMm', at('2026-11-06T09:00Z'), 4)).toEqual({
      total: 6,
      maxPerHour: 5,
      complete: false,
      reachesTo: at('2026-11-06T10:00Z'),
    });
  });

  test('without a column nothing is known: no zero stands for dry', () => {
    expect(sumAhead(forecastOf('2026-11-06T08:00Z', 6, {}), 'precipitationMm', at('2026-11-06T09:00Z'), 2)).toEqual({
      total: 0,
      maxPerHour: null,
      complete: false,
      reachesTo: at('2026-11-06T09:00Z'),
    });
  });

  test('sums of decimals carry no binary noise', () => {
    const tenths = forecastOf('2026-11-06T08:00Z', 4, { precipitationMm: [0, 0.1, 0.2, 0.3] });
    expect(sumAhead(tenths, 'precipitationMm', at('2026-11-06T08:00Z'), 3).total).toBe(0.6);
  });

  test('of no hours, or of an empty forecast, nothing is known: none is ever complete and dry', () => {
    const none = { total: 0, maxPerHour: null, complete: false };
    const empty = forecastOf('2026-11-06T08:00Z', 0, { precipitationMm: [] });
    const nine = at('2026-11-06T09:00Z');
    expect(sumAhead(empty, 'precipitationMm', nine, 2)).toEqual({ ...none, reachesTo: nine });
    expect(sumAhead(rain, 'precipitationMm', nine, 0)).toEqual({ ...none, reachesTo: nine });
    expect(sumAhead(rain, 'precipitationMm', nine, -1)).toEqual({ ...none, reachesTo: nine });
    expect(sumAhead(rain, 'precipitationMm', at('2026-11-06T09:20Z'), 0).complete).toBe(false);
    expect(sumAhead(rain, 'precipitationMm', nine, 0.1).complete).toBe(true);
  });

  test('the heaviest hour may be below nothing where dew forms', () => {
    const dew = forecastOf('2026-11-06T08:00Z', 3, { et0Mm: [0, -0.02, -0.01] });
    expect(sumAhead(dew, 'et0Mm', at('2026-11-06T08:00Z'), 2)).toMatchObject({ total: -0.03, maxPerHour: -0.01 });
  });

  test('complete exactly when every stamp after the start up to the end is known', () => {
    const cells = fc.array(fc.option(fc.integer({ min: 0, max: 50 }), { nil: null }), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(cells, fc.nat(60), fc.integer({ min: 1, max: 48 }), (column, start, hours) => {
        const forecast = forecastOf('2026-10-20T00:00Z', column.length, { precipitationMm: column });
        const from = forecast.times[0]! + start * 3600;
        const sum = sumAhead(forecast, 'precipitationMm', from as never, hours);
        const wanted = Array.from({ length: hours }, (_, index) => column[start + 1 + index] ?? null);
        expect(sum.complete).toBe(wanted.every((value) => value !== null));
        expect(sum.total).toBe(wanted.reduce<number>((total, value) => total + (value ?? 0), 0));
      }),
    );
  });
});
