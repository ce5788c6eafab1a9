import { fetchWeatherApi } from 'openmeteo';
import { afterEach, describe, expect, test } from 'vitest';
import { archiveKeptS, createArchiveAsker, readArchive } from '../../../src/adapters/openmeteo/archive.ts';
import { createForecastService } from '../../../src/adapters/openmeteo/forecast-service.ts';
import { forecastToJson } from '../../../src/adapters/openmeteo/json-own.ts';
import { parseForecastJson } from '../../../src/adapters/openmeteo/json-reply.ts';
import { archiveAddressOf } from '../../../src/adapters/openmeteo/question.ts';
import { archiveBaseOf, defaultSettings, type ForecastSettings } from '../../../src/adapters/openmeteo/settings.ts';
import { archiveWaitS, noArchiveNote } from '../../../src/adapters/openmeteo/usual-air.ts';
import { type ArchiveFailureName, inventedDayC } from '../../../src/tools/stand-in/archive.ts';
import { type StandIn, startStandIn } from '../../../src/tools/stand-in/server.ts';
import { fakeTime, hollinBank, settingsFor } from './means.ts';

let standIn: StandIn;

afterEach(() => standIn.close());

async function start(archiveFailure: ArchiveFailureName | null = null, changes: Partial<ForecastSettings> = {}) {
  const { time, means } = fakeTime();
  standIn = await startStandIn({ clock: means.clock, archiveFailure });
  const settings = settingsFor(standIn.url, { archive: true, ...changes });
  return { time, settings, transport: { fetch, ...means } };
}

/** A service with its archive behind a gate: nothing of it arrives before the gate opens, and the wait for it is over at once. */
async function gated(archiveFailure: ArchiveFailureName | null = null, changes: Partial<ForecastSettings> = {}) {
  const { time, settings, transport } = await start(archiveFailure, changes);
  let open = (): void => {};
  const gate = new Promise<void>((resolve) => {
    open = resolve;
  });
  const arrivals: Promise<unknown>[] = [];
  const held: typeof fetch = (input, init) => {
    if (!String(input).includes('/v1/archive')) return fetch(input, init);
    const reply = gate.then(() => fetch(input));
    arrivals.push(reply);
    return reply;
  };
  const sleep: typeof transport.sleep = async (milliseconds, signal) => {
    if (milliseconds !== archiveWaitS * 1000) await transport.sleep(milliseconds, signal);
  };
  const service = createForecastService({ settings, ...transport, sleep, fetch: held });
  const forecast = async () => {
    const answer = await service.forecastFor(hollinBank);
    if (!('forecast' in answer)) throw new Error(answer.error.code);
    return answer.forecast;
  };
  /** The next forecast once the archive has come and been read. */
  const arrived = async (isThere: (climatology: unknown) => boolean) => {
    open();
    await Promise.allSettled(arrivals);
    for (let turn = 0; turn < 1000; turn += 1) {
      const one = await forecast();
      if (isThere(one.climatology)) return one;
      await new Promise((resolve) => setImmediate(resolve));
    }
    return forecast();
  };
  return { forecast, arrived, time, asked: () => arrivals.length };
}

describe('the usual air of the place, from the archive', () => {
  test('is asked for once a place, in ten whole years, and one that is late is kept for the next forecast', async () => {
    const { forecast, arrived, time, asked } = await gated();
    const early = await forecast();
    expect(early.climatology).toBeUndefined();
    const late = await arrived((climatology) => climatology !== undefined);
    expect(late.climatology).toMatchObject({ years: 10, source: 'invented archive' });
    expect(late.fetchedAt).toBe(early.fetchedAt);
    time.now += 3600;
    expect((await forecast()).climatology).toEqual(late.climatology);
    expect(asked()).toBe(1);
    const question = new URL(standIn.archiveQuestions[0]!, 'http://127.0.0.1').searchParams;
    expect([question.get('start_date'), question.get('end_date')]).toEqual(['2016-01-01', '2025-12-31']);
    time.now += archiveKeptS;
    await forecast();
    expect(asked()).toBe(2);
  });

  test('is there with the first forecast where it comes in time', async () => {
    const { settings, transport } = await start();
    const answer = await createForecastService({ settings, ...transport }).forecastFor(hollinBank);
    expect(answer).toMatchObject({ forecast: { climatology: { years: 10 } } });
  });

  test('travels with a saved forecast', async () => {
    const { forecast, arrived } = await gated();
    await forecast();
    const late = await arrived((climatology) => climatology !== undefined);
    expect(parseForecastJson(forecastToJson(late))).toEqual(late);
  });

  test('is the mean over the years and the weeks around a day, of which the stand-in has a wave of its own', async () => {
    const { settings, transport } = await start();
    const answer = await createArchiveAsker(settings, transport)(hollinBank);
    if ('error' in answer) throw new Error(answer.error.code);
    const { meanAirCByDayOfYear: means, spreadC } = answer.climatology;
    expect(means).toHaveLength(366);
    expect([means[14]! - 4, means[196]! - 17].every((off) => Math.abs(off) < 0.5)).toBe(true);
    expect(spreadC).toBeGreaterThan(1.5);
    expect(spreadC).toBeLessThan(2.5);
  });

  test('reads the same numbers as the client of the service (npm package openmeteo)', async () => {
    const { settings } = await start();
    const address = new URL(archiveAddressOf(hollinBank, { first: 2020, last: 2021 }, settings));
    const query = Object.fromEntries([...address.searchParams].filter(([name]) => name !== 'format'));
    const [reply] = await fetchWeatherApi(`${address.origin}${address.pathname}`, query);
    const sent = reply!.daily()!.variables(0)!.valuesArray()!;
    expect(sent).toHaveLength(731);
    expect(
      [...sent].every((value, day) => Math.abs(value - inventedDayC(Date.UTC(2020, 0, 1 + day) / 1000)) < 1e-4),
    ).toBe(true);
  });

  test.each<[ArchiveFailureName, string]>([
    ['page-404', 'FORECAST_REJECTED'],
    ['page-503', 'FORECAST_DOWN'],
    ['truncated', 'FORECAST_GARBLED'],
    ['wrong-place', 'FORECAST_WRONG_PLACE'],
    ['hourly', 'FORECAST_INCOMPLETE'],
    ['something-else', 'FORECAST_GARBLED'],
    ['wrong-unit', 'FORECAST_WRONG_UNIT'],
    ['no-winter', 'FORECAST_INCOMPLETE'],
    ['all-nan', 'FORECAST_INCOMPLETE'],
    ['half-a-year', 'FORECAST_INCOMPLETE'],
    ['reset', 'FORECAST_UNREACHABLE'],
    ['impossible-value', 'FORECAST_GARBLED'],
  ])('what fails is a coded answer, and the archive is left alone for an hour: %s', async (failure, code) => {
    const { time, settings, transport } = await start(failure);
    const ask = createArchiveAsker(settings, transport);
    expect(await ask(hollinBank)).toMatchObject({ error: { code } });
    expect(await ask(hollinBank)).toMatchObject({ error: { code: 'FORECAST_BUSY' } });
    expect(standIn.archiveQuestions).toHaveLength(1);
    time.now += 3601;
    standIn.control.archiveFailure = null;
    expect(await ask(hollinBank)).toMatchObject({ climatology: { years: 10 } });
  });

  test.each<[ArchiveFailureName, number]>([
    ['two-years', 2],
    ['nan-days', 10],
  ])('fewer years and missing days are told by what is there: %s', async (failure, years) => {
    const { settings, transport } = await start(failure);
    expect(await createArchiveAsker(settings, transport)(hollinBank)).toMatchObject({ climatology: { years } });
  });

  test('silence ends at the time limit of a try', async () => {
    const { time, settings, transport } = await start('silence');
    time.limitReached = async () => {};
    const answer = await createArchiveAsker(settings, transport)(hollinBank);
    expect(answer).toMatchObject({ error: { code: 'FORECAST_SLOW' } });
  });

  test('where it fails the forecast stands without it, and its note says so', async () => {
    const { settings, transport } = await start('page-503', { ensemble: false });
    const answer = await createForecastService({ settings, ...transport }).forecastFor(hollinBank);
    if (!('forecast' in answer)) throw new Error(answer.error.code);
    expect(answer.forecast.climatology).toBeUndefined();
    expect(answer.forecast.note).toContain(noArchiveNote({ code: 'FORECAST_DOWN' }));
  });

  test('past years that are not invented never stand beside an invented forecast', async () => {
    const { settings, transport } = await start();
    const plain: typeof fetch = async (input, init) => {
      const reply = await fetch(input, init);
      return String(input).includes('/v1/archive') ? new Response(await reply.arrayBuffer()) : reply;
    };
    const answer = await createForecastService({ settings, ...transport, fetch: plain }).forecastFor(hollinBank);
    if (!('forecast' in answer)) throw new Error(answer.error.code);
    expect(answer.forecast.climatology).toBeUndefined();
    expect(answer.forecast.note).toContain(noArchiveNote({ code: 'FORECAST_REJECTED' }));
  });

  test('is not asked for where it is switched off', async () => {
    const { forecast } = await gated(null, { archive: false });
    await forecast();
    expect(standIn.archiveQuestions).toHaveLength(0);
  });

  test.each([
    ['the public one beside the public service', {}, 'https://archive-api.open-meteo.com'],
    ['the same server beside any other', { baseUrl: 'http://forecast.example' }, 'http://forecast.example'],
    ['as set', { archiveUrl: 'http://archive.example' }, 'http://archive.example'],
  ])('its address: %s', async (_what, changes, expected) => {
    await start();
    expect(archiveBaseOf({ ...defaultSettings, ...changes })).toBe(expected);
  });

  test('bytes of no kind never throw', async () => {
    await start();
    for (const bytes of [new Uint8Array(), new Uint8Array(40), Uint8Array.from({ length: 300 }, (_, at) => at % 251)]) {
      expect(readArchive(bytes, false, hollinBank)).toHaveProperty('error');
    }
  });
});
