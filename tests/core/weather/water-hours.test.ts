import { describe, expect, test } from 'vitest';
import type { Forecast } from '../../../src/core/weather/forecast.ts';
import { waterHours } from '../../../src/core/weather/water-hours.ts';
import { at, forecastOf } from './forecast-of.ts';

type Cells = (number | null)[];

/** Stamps from 08:00 to 13:00 with rain and evapotranspiration. */
function water(precipitationMm: Cells, et0Mm: Cells = [0.1, 0.1, 0.1, 0.1, 0.1, 0.1]): Forecast {
  return forecastOf('2026-11-06T08:00Z', 6, { precipitationMm, et0Mm });
}

/** What is known from `since` over now to `until`, clock times of the day. */
function known(forecast: Forecast, since: string, now: string, until: string) {
  const moment = (clock: string) => at(`2026-11-06T${clock}Z`);
  const found = waterHours(forecast, { since: moment(since), at: moment(now), until: moment(until) });
  const clock = (time: number) => new Date(time * 1000).toISOString().slice(11, 16);
  return {
    hours: found.hours.map(({ begin, rainMm, referenceMm }) => `${clock(begin)} ${rainMm} ${referenceMm}`),
    before: found.completeBefore,
    after: found.complete,
    to: clock(found.reachesTo),
  };
}

describe('water hour by hour', () => {
  test('from a moment to another, each hour named by its beginning', () => {
    expect(known(water([1, 2, 3, 4, 5, 6], [0, 0.1, 0.2, 0.3, 0.4, 0.5]), '08:00', '10:00', '12:00')).toEqual({
      hours: ['08:00 2 0.1', '09:00 3 0.2', '10:00 4 0.3', '11:00 5 0.4'],
      before: true,
      after: true,
      to: '12:00',
    });
  });

  test('an hour of which only a part is wanted counts whole, at either end', () => {
    const found = known(water([1, 2, 3, 4, 5, 6]), '08:30', '10:00', '10:30');
    expect(found.hours).toEqual(['08:00 2 0.1', '09:00 3 0.1', '10:00 4 0.1']);
    expect(found.to).toBe('11:00');
    expect(known(water([1, 2, 3, 4, 5, 6]), '09:00', '10:00', '11:00').hours).toHaveLength(2);
  });

  test.each<[string, Cells, Cells | undefined]>([
    ['rain missing', [1, 2, null, 4, 5, 6], undefined],
    ['evapotranspiration that cannot be', [1, 2, 3, 4, 5, 6], [0.1, 0.1, 5.1, 0.1, 0.1, 0.1]],
    ['rain below nothing', [1, 2, -0.1, 4, 5, 6], undefined],
    ['rain beyond all records', [1, 2, 501, 4, 5, 6], undefined],
  ])('%s before now is left out, which is said', (_, rain, et0) => {
    const found = known(water(rain, et0), '08:00', '10:00', '12:00');
    expect(found.hours).toHaveLength(3);
    expect(found).toMatchObject({ before: false, after: true, to: '12:00' });
  });

  test('the ends of what can be are known', () => {
    expect(known(water([1, 0, 500, 1, 1, 1], [0, -0.5, 5, 0, 0, 0]), '08:00', '10:00', '12:00')).toMatchObject({
      hours: ['08:00 0 -0.5', '09:00 500 5', '10:00 1 0', '11:00 1 0'],
      before: true,
    });
  });

  test('a gap after now ends what is known, whatever comes after it', () => {
    expect(known(water([1, 2, 3, 4, null, 6]), '08:00', '10:00', '13:00')).toEqual({
      hours: ['08:00 2 0.1', '09:00 3 0.1', '10:00 4 0.1'],
      before: true,
      after: false,
      to: '11:00',
    });
    expect(known(water([1, 2, 3, null, 5, 6]), '08:00', '10:00', '13:00').to).toBe('10:00');
  });

  test('a gap in the hour that holds now counts as ahead', () => {
    expect(known(water([1, 2, 3, null, 5, 6]), '08:00', '10:20', '13:00')).toMatchObject({ before: true, to: '10:20' });
  });

  test('before the first hour of a forecast nothing is complete', () => {
    expect(known(water([1, 2, 3, 4, 5, 6]), '07:00', '10:00', '12:00').before).toBe(true);
    expect(known(water([1, 2, 3, 4, 5, 6]), '06:59', '10:00', '12:00').before).toBe(false);
    expect(known(forecastOf('2026-11-06T08:00Z', 0, {}), '06:59', '10:00', '12:00')).toEqual({
      hours: [],
      before: false,
      after: false,
      to: '10:00',
    });
  });

  test('a forecast that begins only after now leaves a hole, and reaches to now', () => {
    expect(known(water([1, 2, 3, 4, 5, 6]), '05:00', '06:00', '12:00')).toEqual({
      hours: [],
      before: false,
      after: false,
      to: '06:00',
    });
    expect(known(water([1, 2, 3, 4, 5, 6]), '05:00', '07:00', '12:00').to).toBe('12:00');
  });

  test('what is asked up to now is complete', () => {
    expect(known(water([1, 2, 3, 4, 5, 6]), '08:00', '10:00', '10:00')).toMatchObject({ after: true, to: '10:00' });
  });
});
