import { afterEach, describe, expect, test } from 'vitest';
import { createForecastService } from '../../../src/adapters/openmeteo/forecast-service.ts';
import type { ErrorCode } from '../../../src/core/errors/table.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { sumAhead } from '../../../src/core/weather/sums.ts';
import { type FailureName, failures } from '../../../src/tools/stand-in/failures.ts';
import { type StandIn, startStandIn } from '../../../src/tools/stand-in/server.ts';
import { fakeTime, hollinBank, settingsFor } from './means.ts';

/** What becomes of each failure: an error and the number of tries, a forecast with a warning, or a plain forecast. */
const expected: Readonly<Record<FailureName, readonly ['error' | 'warning', ErrorCode, number] | 'forecast'>> = {
  'page-503': ['error', 'FORECAST_DOWN', 3],
  'page-500': ['error', 'FORECAST_DOWN', 3],
  'page-404': ['error', 'FORECAST_REJECTED', 1],
  'page-200': ['error', 'FORECAST_GARBLED', 3],
  'json-401': ['error', 'FORECAST_REJECTED', 1],
  'json-400': ['error', 'FORECAST_REJECTED', 1],
  'busy-429': ['error', 'FORECAST_BUSY', 3],
  'busy-429-text': ['error', 'FORECAST_BUSY', 3],
  'busy-429-retry-after': ['error', 'FORECAST_BUSY', 3],
  'busy-429-long': ['error', 'FORECAST_BUSY', 1],
  'json-200': ['error', 'FORECAST_REJECTED', 1],
  truncated: ['error', 'FORECAST_GARBLED', 3],
  'spliced-in': ['error', 'FORECAST_GARBLED', 3],
  'spliced-over': ['error', 'FORECAST_GARBLED', 3],
  appended: ['error', 'FORECAST_GARBLED', 3],
  'negative-length': ['error', 'FORECAST_GARBLED', 3],
  'zero-length': ['error', 'FORECAST_GARBLED', 3],
  empty: ['error', 'FORECAST_GARBLED', 3],
  'two-places': ['error', 'FORECAST_GARBLED', 3],
  'nan-tail': ['warning', 'FORECAST_INCOMPLETE', 1],
  'nothing-ahead': ['error', 'FORECAST_INCOMPLETE', 1],
  'zeros-beside-gaps': ['warning', 'FORECAST_INCOMPLETE', 1],
  'zeros-past-end': ['warning', 'FORECAST_INCOMPLETE', 1],
  'absent-needed': ['error', 'FORECAST_INCOMPLETE', 1],
  'absent-optional': 'forecast',
  'undefined-optional': 'forecast',
  'unasked-twice': ['error', 'FORECAST_GARBLED', 3],
  'wrong-unit': ['error', 'FORECAST_WRONG_UNIT', 1],
  'wrong-order': 'forecast',
  'wrong-place': ['error', 'FORECAST_WRONG_PLACE', 1],
  'wrong-step': ['error', 'FORECAST_GARBLED', 3],
  'impossible-value': ['error', 'FORECAST_GARBLED', 3],
  'all-past': ['error', 'FORECAST_TOO_OLD', 1],
  'too-short': ['error', 'FORECAST_OUT_OF_HORIZON', 1],
  'clock-change': 'forecast',
  reset: ['error', 'FORECAST_UNREACHABLE', 3],
  silence: ['error', 'FORECAST_SLOW', 3],
};

let standIn: StandIn | undefined;

afterEach(async () => {
  await standIn?.close();
  standIn = undefined;
});

async function fetchWith(failure: FailureName | null, iso?: string, changes = {}) {
  const { time, means } = fakeTime(iso);
  standIn = await startStandIn({ clock: means.clock, scenario: 'wet', failure });
  const { questions, url } = standIn;
  if (failure === 'silence') time.limitReached = untilMore(questions);
  const service = createForecastService({
    settings: settingsFor(url, { ensemble: false, ...changes }),
    fetch,
    ...means,
  });
  return { answer: await service.forecastFor(hollinBank), questions, time };
}

/** Lets the question reach the silent server before its time limit counts as reached. */
function untilMore(questions: readonly string[]) {
  let seen = 0;
  return async () => {
    seen += 1;
    while (questions.length < seen) await new Promise((resolve) => setImmediate(resolve));
  };
}

describe('each failure of the service over a real connection', () => {
  test.each(Object.keys(failures) as FailureName[])('%s ends as it should, never in false zeros', async (failure) => {
    const { answer, questions, time } = await fetchWith(failure);
    const outcome = expected[failure];
    if (outcome === 'forecast') {
      expect(answer).toHaveProperty('forecast');
      expect(answer).not.toHaveProperty('warning');
    } else {
      const [kind, code, tries] = outcome;
      expect(answer).toMatchObject({ [kind]: { code } });
      expect(questions).toHaveLength(tries);
    }
    if (!('forecast' in answer)) return;
    const ahead = sumAhead(answer.forecast, 'precipitationMm', epochSeconds(time.now), 48);
    expect(ahead.complete).toBe(outcome === 'forecast');
    if (ahead.complete) expect(ahead.total).toBeGreaterThan(20);
  });

  test('nobody listening is unreachable, and the error names no address', async () => {
    const { means } = fakeTime();
    const gone = await startStandIn({ clock: means.clock });
    await gone.close();
    const settings = settingsFor(gone.url, { key: 'geheim-42' });
    const answer = await createForecastService({ settings, fetch, ...means }).forecastFor(hollinBank);
    expect(answer).toMatchObject({ error: { code: 'FORECAST_UNREACHABLE', came: 'ECONNREFUSED' } });
    expect(JSON.stringify(answer)).not.toMatch(/geheim|127\.0\.0\.1/);
  });
});

describe('a good reply', () => {
  test('holds every column, its place, its age and that it is invented', async () => {
    const { answer, questions } = await fetchWith(null, undefined, { key: 'k&y' });
    expect(answer).not.toHaveProperty('warning');
    if (!('forecast' in answer)) throw new Error('no forecast');
    expect(Object.keys(answer.forecast.values)).toHaveLength(15);
    expect(answer.forecast).toMatchObject({
      fetchedAt: Date.parse('2026-11-06T09:10:00Z') / 1000,
      invented: true,
      place: { askedLatitude: 53.41, askedLongitude: -1.93, elevationM: 120, distanceKm: 0 },
    });
    expect(answer.forecast.times).toHaveLength(14 * 24);
    expect(answer.forecast.times[0]).toBe(Date.parse('2026-10-30T00:00:00Z') / 1000);
    const query = new URL(questions[0]!, 'http://localhost').searchParams;
    expect(Object.fromEntries(query)).toMatchObject({
      timezone: 'GMT',
      wind_speed_unit: 'kmh',
      temperature_unit: 'celsius',
      precipitation_unit: 'mm',
      format: 'flatbuffers',
      past_days: '7',
      forecast_days: '7',
      apikey: 'k&y',
    });
  });

  test('on the day clocks go back the stamps stay evenly spaced UTC hours', async () => {
    const { answer } = await fetchWith('clock-change', '2026-10-25T00:30:00Z');
    if (!('forecast' in answer)) throw new Error('no forecast');
    const { times } = answer.forecast;
    expect(times[7 * 24]).toBe(Date.parse('2026-10-25T00:00:00Z') / 1000);
    expect(times.every((time, index) => index === 0 || time - times[index - 1]! === 3600)).toBe(true);
  });
});
