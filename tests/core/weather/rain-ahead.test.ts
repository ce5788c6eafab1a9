import { describe, expect, test } from 'vitest';
import type { Forecast } from '../../../src/core/weather/forecast.ts';
import { rainAhead, rainAheadOfMembers } from '../../../src/core/weather/rain-ahead.ts';
import { rainMembers } from '../../../src/core/weather/rain-members.ts';
import { rainReachedAt } from '../../../src/core/weather/rain-since.ts';
import { testParameters } from '../../generators/parameters.ts';
import { at, forecastOf } from './forecast-of.ts';

const rain = forecastOf('2026-11-06T08:00Z', 6, { precipitationMm: [9, 0, 2, 0.4, 0, 1] });
const nine = at('2026-11-06T09:00Z');
/** Rain of each member from 08:00 on, by hour. */
const withMembers = (...members: (number | null)[][]): Forecast => ({ ...rain, precipitationMembersMm: members });

describe('rain over hours to come', () => {
  test('is its sum and its heaviest hour, each with a quarter either way, more for an old forecast', () => {
    expect(rainAhead(rain, nine, 3, 1, testParameters())).toEqual({
      totalMm: { value: 2.4, low: 1.8, high: 3 },
      maxMmPerH: { value: 2, low: 1.5, high: 2.5 },
    });
    expect(rainAhead(rain, nine, 3, 2, testParameters())?.totalMm).toEqual({ value: 2.4, low: 1.2, high: 3.6 });
    expect(rainAhead(rain, nine, 3, 5, testParameters())?.totalMm.low).toBe(0);
  });

  test('is not told past the end or over a gap', () => {
    const holed = forecastOf('2026-11-06T08:00Z', 6, { precipitationMm: [0, 0, null, 0, 0, 0] });
    expect(rainAhead(rain, nine, 4, 1, testParameters())).not.toBeNull();
    expect(rainAhead(rain, nine, 5, 1, testParameters())).toBeNull();
    expect(rainAhead(holed, nine, 3, 1, testParameters())).toBeNull();
    expect(rainAhead(holed, at('2026-11-06T10:00Z'), 3, 1, testParameters())).not.toBeNull();
  });
});

describe('rain of each member of an ensemble', () => {
  test('is the sum and the heaviest hour of the same hours, without binary noise', () => {
    const found = rainMembers(withMembers([9, 9, 0.1, 0.2, 0.3, 9], [9, 9, 5, 0, 1, 9]), nine, 3);
    expect(found).toEqual([
      { totalMm: 0.6, maxMmPerH: 0.3 },
      { totalMm: 6, maxMmPerH: 5 },
    ]);
  });

  test('takes an hour that is only partly inside whole, at either end', () => {
    const member = withMembers([64, 32, 16, 8, 4, 2]);
    expect(rainMembers(member, at('2026-11-06T09:20Z'), 2)).toEqual([{ totalMm: 28, maxMmPerH: 16 }]);
    expect(rainMembers(member, at('2026-11-06T09:00Z'), 1.5)).toEqual([{ totalMm: 24, maxMmPerH: 16 }]);
  });

  test('leaves out a member with a gap or an end within the hours, and no other', () => {
    const found = rainMembers(withMembers([0, 0, 1, null, 0, 0], [0, 0, 1], [null, null, 1, 1, 1, null]), nine, 3);
    expect(found).toEqual([{ totalMm: 3, maxMmPerH: 1 }]);
    expect(rainMembers(rain, nine, 3)).toEqual([]);
  });
});

describe('rain judged by the courses of an ensemble', () => {
  /** Five courses of an hour's rain at ten; the forecast itself has 2 mm then. */
  const five = (...mm: number[]) => withMembers(...mm.map((one) => [0, 0, one]));
  const judged = (forecast: Forecast, rainChanceLeast = 0.8, growth = 1) =>
    rainAheadOfMembers(forecast, { at: nine, hours: 1, growth }, testParameters({ rainChanceLeast }));

  test.each([
    [0.8, 3],
    [0.81, 10],
    [0.6, 2.5],
    [1, 10],
    [0.01, 2],
  ])('reaches to what %d of five courses stay at or below: %d mm', (chance, high) => {
    const found = judged(five(10, 0, 2.5, 3, 1), chance);
    expect(found?.totalMm).toEqual({ value: 2, low: 2, high });
    expect(found?.maxMmPerH).toEqual({ value: 2, low: 2, high });
    expect(found?.members.map(({ totalMm }) => totalMm)).toEqual([10, 0, 2.5, 3, 1]);
  });

  test('adds what the age of the forecast adds to its own band, and never falls below that band', () => {
    expect(judged(five(0, 0, 0, 0, 0))?.totalMm).toEqual({ value: 2, low: 2, high: 2 });
    expect(judged(five(3, 3, 3, 3, 3), 0.8, 2)?.totalMm).toEqual({ value: 2, low: 1.5, high: 3.5 });
    expect(judged(five(0, 0, 0, 0, 0), 0.8, 2)?.totalMm).toEqual({ value: 2, low: 1.5, high: 2.5 });
  });

  test('is not told without courses, nor where the forecast itself does not reach', () => {
    expect(judged(rain)).toBeNull();
    const further = withMembers(Array.from({ length: 20 }, () => 0));
    expect(rainAheadOfMembers(further, { at: nine, hours: 9, growth: 1 }, testParameters())).toBeNull();
  });
});

describe('when so much rain has fallen', () => {
  test.each([
    ['2026-11-06T08:00Z', 2, '2026-11-06T10:00Z'],
    ['2026-11-06T08:00Z', 2.1, '2026-11-06T11:00Z'],
    ['2026-11-06T07:59Z', 2, '2026-11-06T08:00Z'],
    ['2026-11-06T10:00Z', 1.4, '2026-11-06T13:00Z'],
    ['2026-11-06T10:30Z', 0.4, '2026-11-06T11:00Z'],
    ['2026-11-06T10:00Z', 1.5, null],
  ])('since %s %d mm are reached at %s', (since, mm, reached) => {
    expect(rainReachedAt(rain, at(since), mm)).toBe(reached === null ? null : at(reached));
  });

  test('a missing hour or column adds nothing, and tenths add up', () => {
    const holed = forecastOf('2026-11-06T08:00Z', 4, { precipitationMm: [0.1, null, 0.2, 5] });
    expect(rainReachedAt(holed, at('2026-11-06T07:00Z'), 0.3)).toBe(at('2026-11-06T10:00Z'));
    expect(rainReachedAt(forecastOf('2026-11-06T08:00Z', 4, {}), at('2026-11-06T07:00Z'), 1)).toBeNull();
  });
});
