import { describe, expect, test } from 'vitest';
import type { ForecastSummary } from '../../../src/core/dialogue/decision-types.ts';
import { summariseForecast } from '../../../src/core/dialogue/forecast-summary.ts';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import type { Forecast } from '../../../src/core/weather/forecast.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { describeForecast } from '../../../src/core/words/forecast.ts';
import { buildForecast } from '../../generators/forecast.ts';
import { testParameters } from '../../generators/parameters.ts';
import { choice, number } from '../../generators/small.ts';
import { hoursAfter, utc } from '../facts/moments.ts';

const at = utc('2026-11-06T09:00Z');
const parameters = testParameters();

function summary(forecast: Forecast, facts: ResolvedFacts = {}): ForecastSummary {
  return summariseForecast(forecast, { at, facts, parameters, registry: coreFacts });
}

const said = (forecast: Forecast, facts?: ResolvedFacts) =>
  describeForecast(summary(forecast, facts), { now: at, zone: 'Europe/London' }, catalogueOf('en'));

const fresh = buildForecast({ from: hoursAfter(at, -9), fetchedAt: hoursAfter(at, -2) });

describe('a decision says of its forecast', () => {
  test('how far it reaches', () => {
    expect(summary(fresh)).toMatchObject({ unused: null, note: null });
    expect(said(fresh)).toMatch(/^Forecast fetched 07:00 \(2 h ago\); it reaches to /);
  });

  test('that nothing of it was used once it is too old', () => {
    const old = buildForecast({ from: hoursAfter(at, -50), fetchedAt: hoursAfter(at, -48) });
    expect(summary(old).unused).toBe('too-old');
    expect(said(old)).toContain('; it is too old, and nothing of it was used.');
  });

  test('that nothing of it was used where its point lies too far from the field', () => {
    const elsewhere = { 'field.latitude': number(10), 'field.longitude': number(10) };
    expect(summary(fresh, elsewhere).unused).toBe('too-far');
    expect(said(fresh, elsewhere)).toContain('; its point lies too far from the field, and nothing of it was used.');
  });

  test('that it lacks weather of this hour, rather than an end before now', () => {
    const gap = buildForecast({
      from: hoursAfter(at, -9),
      fetchedAt: hoursAfter(at, -2),
      columns: { precipitationMm: () => null },
    });
    expect(summary(gap).reachesTo).toBeNull();
    expect(said(gap)).toContain('; it lacks some of the weather of this hour, and what it lacks counts as not known.');
  });

  test('what its note says, of invented weather too', () => {
    const { invented: _, ...real } = fresh;
    expect(said({ ...real, note: 'A note.' })).toContain(' A note. ');
    expect(said({ ...fresh, note: 'A note.' })).toContain(' A note. ');
  });

  test('with its code that it was fetched after the moment asked about, and counts it as new then', () => {
    const later = buildForecast({ from: hoursAfter(at, -9), fetchedAt: hoursAfter(at, 30) });
    expect(summary(later)).toMatchObject({ unused: null, ageHours: 0 });
    expect(summary(later).note).toContain('FORECAST_FETCHED_LATER: 2026-11-07T15:00Z');
    expect(said(later)).toContain('fetched after the moment asked about');
    const aMinute = buildForecast({ from: hoursAfter(at, -9), fetchedAt: hoursAfter(at, 1 / 60) });
    expect(summary(aMinute).note).toBeNull();
  });

  test('its source, age, reach and place to a hundredth, and no chance of rain without courses', () => {
    const near = buildForecast({
      from: hoursAfter(at, -9),
      fetchedAt: hoursAfter(at, -1 / 3),
      hours: 20,
      place: { latitude: 53.01, longitude: -1.02, distanceKm: 1.23456 },
    });
    expect(summary(near)).toEqual({
      attribution: 'invented',
      invented: true,
      fetchedAt: '2026-11-06T08:40:00Z',
      ageHours: 0.33,
      reachesTo: '2026-11-06T19:00:00Z',
      unused: null,
      note: null,
      rainChance: null,
      latitude: 53.01,
      longitude: -1.02,
      distanceKm: 1.23,
    });
    const { invented: _, ...real } = near;
    expect(summary(real).invented).toBe(false);
  });

  test('both its own note and that it was fetched later, one after the other', () => {
    const later = { ...buildForecast({ from: hoursAfter(at, -9), fetchedAt: hoursAfter(at, 30) }), note: 'A note.' };
    expect(summary(later).note).toBe(
      'A note. The forecast was fetched after the moment asked about; it counts as new then, and knows more than could be known. (FORECAST_FETCHED_LATER: 2026-11-07T15:00Z)',
    );
  });

  test('how many of its courses stay at or below the amount that is reckoned with', () => {
    const rain = fresh.times.map((time) => (time > at && time <= at + 4 * 3600 ? 1 : 0));
    const courses = (wet: number): Forecast => ({
      ...fresh,
      values: { ...fresh.values, precipitationMm: rain },
      precipitationMembersMm: Array.from({ length: 10 }, (_, index) => rain.map((mm) => mm * (index < wet ? 5 : 1))),
    });
    const { rainChance } = summary(courses(1));
    expect(rainChance).toMatchObject({ courses: 10, share: 0.9 });
    expect(rainChance?.atMostMm).toBeLessThan(20);
    expect(rainChance!.atMostMm * 10).toBeCloseTo(Math.round(rainChance!.atMostMm * 10), 9);
    expect(summary(courses(0)).rainChance?.share).toBe(1);
    expect(summary({ ...courses(1), fetchedAt: hoursAfter(at, -100) }).rainChance).toBeNull();
    const { 'rain.next48hMm': _, ...registry } = coreFacts;
    expect(summariseForecast(courses(1), { at, facts: {}, parameters, registry }).rainChance).toBeNull();
  });

  test.each<[string, ResolvedFacts, string | null]>([
    ['far off', { 'field.latitude': number(10), 'field.longitude': number(10) }, 'too-far'],
    ['at the field', { 'field.latitude': number(53), 'field.longitude': number(-1) }, null],
    ['of which the latitude alone is known', { 'field.latitude': number(10) }, null],
    ['of which the longitude alone is known', { 'field.longitude': number(100) }, null],
    ['that is no number', { 'field.latitude': choice('north'), 'field.longitude': number(100) }, null],
  ])('whether it holds for a place %s', (_, facts, unused) => {
    expect(summary(fresh, facts).unused).toBe(unused);
  });
});
