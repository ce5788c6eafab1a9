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
import { number } from '../../generators/small.ts';
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
});
