import { fetchWeatherApi } from 'openmeteo';
import { afterEach, describe, expect, test } from 'vitest';
import { createForecastService } from '../../../src/adapters/openmeteo/forecast-service.ts';
import { forecastToJson } from '../../../src/adapters/openmeteo/json-own.ts';
import { parseForecastJson } from '../../../src/adapters/openmeteo/json-reply.ts';
import { addressOf, ensembleAddressOf } from '../../../src/adapters/openmeteo/question.ts';
import { defaultSettings, ensembleBaseOf, type ForecastSettings } from '../../../src/adapters/openmeteo/settings.ts';
import { rainMembers } from '../../../src/core/weather/rain-members.ts';
import type { EnsembleFailureName } from '../../../src/tools/stand-in/ensemble-failures.ts';
import { inventedMembers } from '../../../src/tools/stand-in/invented-members.ts';
import { type StandIn, startStandIn } from '../../../src/tools/stand-in/server.ts';
import { fakeTime, hollinBank, settingsFor } from './means.ts';

let standIn: StandIn;

afterEach(() => standIn.close());

async function service(ensembleFailure: EnsembleFailureName | null = null, changes: Partial<ForecastSettings> = {}) {
  const { time, means } = fakeTime();
  standIn = await startStandIn({ clock: means.clock, scenario: 'wet', ensembleFailure });
  const sleep: typeof means.sleep = async (milliseconds, signal) => {
    if (milliseconds === 5000 && ensembleFailure === 'silence') return;
    await means.sleep(milliseconds, signal);
  };
  const settings = settingsFor(standIn.url, { forecastDays: 16, ...changes });
  const { forecastFor } = createForecastService({ settings, fetch, ...means, sleep });
  const forecast = async () => {
    const answer = await forecastFor(hollinBank);
    if (!('forecast' in answer)) throw new Error(answer.error.code);
    return answer.forecast;
  };
  return { forecast, time };
}

describe('the ensemble beside the forecast', () => {
  test('its runs lie on the hours of the forecast, and chances of rain can be counted from them', async () => {
    const { forecast } = await service();
    const got = await forecast();
    expect(got.precipitationMembersMm).toHaveLength(inventedMembers);
    expect(got.precipitationMembersMm?.every((member) => member.length === got.times.length)).toBe(true);
    expect(got.note).toBeUndefined();
    const totals = rainMembers(got, got.fetchedAt, 48).map(({ totalMm }) => totalMm);
    expect(totals[0]).toBeCloseTo(12 * 2.4, 5);
    expect(totals.filter((mm) => mm <= 14.5)).toHaveLength(13);
    expect([Math.min(...totals), Math.max(...totals)]).toEqual([0, 57.6]);
  });

  test('it is kept and asked for with the forecast, once in 30 minutes, and saved with it', async () => {
    const { forecast, time } = await service();
    const got = await forecast();
    time.now += 29 * 60;
    await forecast();
    expect(standIn.ensembleQuestions).toHaveLength(1);
    expect(parseForecastJson(forecastToJson(got))).toEqual(got);
  });

  test('runs that end after seven days are unknown beyond', async () => {
    const { forecast } = await service('seven-days');
    const got = await forecast();
    expect(rainMembers(got, got.fetchedAt, 48)).toHaveLength(inventedMembers);
    expect(got.precipitationMembersMm?.every((member) => member.at(-1) === null)).toBe(true);
  });

  test('runs without numbers are left out while enough remain', async () => {
    const { forecast } = await service('nan-members');
    expect((await forecast()).precipitationMembersMm).toHaveLength(26);
  });

  test.each<[EnsembleFailureName, string]>([
    ['page-503', 'FORECAST_DOWN'],
    ['page-404', 'FORECAST_REJECTED'],
    ['busy-429-long', 'FORECAST_BUSY'],
    ['json-200', 'FORECAST_REJECTED'],
    ['truncated', 'FORECAST_GARBLED'],
    ['appended', 'FORECAST_GARBLED'],
    ['empty', 'FORECAST_GARBLED'],
    ['wrong-place', 'FORECAST_WRONG_PLACE'],
    ['wrong-step', 'FORECAST_GARBLED'],
    ['reset', 'FORECAST_UNREACHABLE'],
    ['silence', 'FORECAST_SLOW'],
    ['too-few', 'FORECAST_INCOMPLETE'],
    ['all-nan', 'FORECAST_INCOMPLETE'],
    ['gap-in-all', 'FORECAST_INCOMPLETE'],
    ['other-hours', 'FORECAST_INCOMPLETE'],
    ['half-hour-off', 'FORECAST_INCOMPLETE'],
    ['member-twice', 'FORECAST_GARBLED'],
    ['something-else', 'FORECAST_GARBLED'],
    ['wrong-unit', 'FORECAST_WRONG_UNIT'],
    ['impossible-value', 'FORECAST_GARBLED'],
  ])('the forecast stands without it and says so: %s', async (failure, code) => {
    const { forecast } = await service(failure);
    const got = await forecast();
    expect(got.precipitationMembersMm).toBeUndefined();
    expect(got.note).toContain(code);
    expect(got.note).toContain('one run and a wider band');
  });

  test('one that asks to wait is left alone until then, while forecasts go on', async () => {
    const { forecast, time } = await service('busy-429-long');
    await forecast();
    time.now += 31 * 60;
    await forecast();
    expect([standIn.questions.length, standIn.ensembleQuestions.length]).toEqual([2, 1]);
    standIn.control.ensembleFailure = null;
    time.now += 31 * 60;
    expect((await forecast()).precipitationMembersMm).toHaveLength(inventedMembers);
  });

  test('switched off it is not asked for', async () => {
    const { forecast } = await service(null, { ensemble: false });
    expect((await forecast()).note).toContain('FORECAST_OFF');
    expect(standIn.ensembleQuestions).toEqual([]);
  });

  test('invented runs never join a forecast that is not invented', async () => {
    const { means } = fakeTime();
    standIn = await startStandIn({ clock: means.clock });
    const real: typeof fetch = async (address, init) => {
      const response = await fetch(address, init);
      if (String(address).includes('/v1/ensemble')) return response;
      return new Response(await response.arrayBuffer());
    };
    const { forecastFor } = createForecastService({ settings: settingsFor(standIn.url), ...means, fetch: real });
    const answer = await forecastFor(hollinBank);
    expect(answer).not.toHaveProperty('forecast.invented');
    expect(answer).not.toHaveProperty('forecast.precipitationMembersMm');
    expect(answer).toHaveProperty('forecast.note', expect.stringContaining('FORECAST_REJECTED'));
  });
});

describe('where the ensemble is asked', () => {
  test('on its public host beside the public service, on the same server beside any other, or where it is set', async () => {
    standIn = await startStandIn({ clock: () => 0 });
    expect(ensembleBaseOf(defaultSettings)).toBe('https://ensemble-api.open-meteo.com');
    expect(ensembleBaseOf({ baseUrl: 'http://a', ensembleUrl: null })).toBe('http://a');
    expect(ensembleBaseOf({ baseUrl: 'http://a', ensembleUrl: 'http://b' })).toBe('http://b');
  });
});

// Reference: the service's own client library, openmeteo from its package, on the same bytes over HTTP.
test('our reading of the runs agrees with the service’s own client: every member and hour', async () => {
  const { forecast } = await service();
  const got = await forecast();
  const settings = settingsFor(standIn.url);
  const question = { ...hollinBank, pastDays: 7, forecastDays: 16 };
  const asked = new URL(ensembleAddressOf(question, settings));
  expect(new URL(addressOf(question, settings)).pathname).toBe('/v1/forecast');
  const [theirs] = await fetchWeatherApi(`${standIn.url}/v1/ensemble`, Object.fromEntries(asked.searchParams));
  const hourly = theirs!.hourly()!;
  const first = got.times.indexOf(Number(hourly.time()) as (typeof got.times)[number]);
  expect([first, hourly.variablesLength()]).toEqual([7 * 24, inventedMembers]);
  for (let index = 0; index < inventedMembers; index += 1) {
    const variable = hourly.variables(index)!;
    const ours = got.precipitationMembersMm![variable.ensembleMember()]!.slice(first);
    const values = [...variable.valuesArray()!];
    expect(ours).toHaveLength(values.length);
    values.forEach((value, hour) => {
      expect(ours[hour]).toBeCloseTo(value, 2);
    });
  }
});
