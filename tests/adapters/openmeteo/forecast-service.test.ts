import { afterEach, describe, expect, test } from 'vitest';
import { createForecastService } from '../../../src/adapters/openmeteo/forecast-service.ts';
import type { ForecastSettings } from '../../../src/adapters/openmeteo/settings.ts';
import { type StandIn, startStandIn } from '../../../src/tools/stand-in/server.ts';
import { fakeTime, hollinBank, settingsFor } from './means.ts';

const hour = 3600;
let standIn: StandIn;

afterEach(() => standIn.close());

async function service(changes: Partial<ForecastSettings> = {}) {
  const { time, means } = fakeTime();
  standIn = await startStandIn({ clock: means.clock, scenario: 'fit' });
  const { forecastFor } = createForecastService({ settings: settingsFor(standIn.url, changes), fetch, ...means });
  return { forecastFor, time, control: standIn.control, questions: standIn.questions };
}

describe('asking as little as can be', () => {
  test('many who ask for one place at once make one question', async () => {
    const { forecastFor, questions } = await service();
    const answers = await Promise.all(Array.from({ length: 50 }, () => forecastFor(hollinBank)));
    expect(answers.every((answer) => 'forecast' in answer)).toBe(true);
    expect(questions).toHaveLength(1);
  });

  test('a forecast is served again for 30 minutes and then asked for anew', async () => {
    const { forecastFor, questions, time } = await service();
    await forecastFor(hollinBank);
    time.now += 30 * 60 - 1;
    await forecastFor(hollinBank);
    expect(questions).toHaveLength(1);
    time.now += 1;
    await forecastFor(hollinBank);
    expect(questions).toHaveLength(2);
  });

  test('points that round to the same 0.01 degree share a forecast, each with its own distance', async () => {
    const { forecastFor, questions } = await service();
    const near = await forecastFor({ latitude: 53.4141, longitude: -1.9349 });
    const exact = await forecastFor(hollinBank);
    expect(questions).toHaveLength(1);
    expect(near).toMatchObject({ forecast: { place: { askedLatitude: 53.4141, latitude: 53.41, distanceKm: 0.6 } } });
    expect(exact).toMatchObject({ forecast: { place: { askedLatitude: 53.41, distanceKm: 0 } } });
    await forecastFor({ latitude: 53.42, longitude: -1.93 });
    expect(questions).toHaveLength(2);
  });

  test('places are asked for one after the other, and past twenty waiting the rest are told so', async () => {
    const { forecastFor, questions } = await service();
    const points = Array.from({ length: 30 }, (_, index) => ({ latitude: 50 + index / 10, longitude: 0 }));
    const answers = await Promise.all(points.map(forecastFor));
    const refused = answers.filter((answer) => 'error' in answer && answer.error.code === 'FORECAST_BUSY');
    expect([questions.length, refused.length]).toEqual([21, 9]);
  });
});

describe('when fetching fails', () => {
  test('the last good forecast serves up to 48 h with its age, then only to be shown', async () => {
    const { forecastFor, time, control } = await service();
    await forecastFor(hollinBank);
    control.failure = 'page-503';
    time.now += 47 * hour;
    const old = await forecastFor(hollinBank);
    expect(old).toMatchObject({ forecast: { invented: true }, warning: { code: 'FORECAST_DOWN' } });
    expect(JSON.stringify(old)).toContain('fetched at 2026-11-06T09:10Z, is 47 h old');
    time.now += 2 * hour;
    expect(await forecastFor(hollinBank)).toMatchObject({ error: { code: 'FORECAST_DOWN' }, lastGood: {} });
    control.failure = null;
    expect(await forecastFor(hollinBank)).not.toHaveProperty('warning');
  });

  test('another place gets no forecast that is not its own', async () => {
    const { forecastFor, control } = await service();
    await forecastFor(hollinBank);
    control.failure = 'page-503';
    const other = await forecastFor({ latitude: 53.6, longitude: -1.93 });
    expect(other).toMatchObject({ error: { code: 'FORECAST_DOWN' } });
    expect(other).not.toHaveProperty('lastGood');
  });

  test('a service that asks to wait is left alone until then', async () => {
    const { forecastFor, time, control, questions } = await service();
    control.next.push('busy-429-long');
    expect(await forecastFor(hollinBank)).toMatchObject({ error: { code: 'FORECAST_BUSY' } });
    time.now += 3599;
    expect(await forecastFor({ latitude: 10, longitude: 10 })).toMatchObject({ error: { code: 'FORECAST_BUSY' } });
    expect(questions).toHaveLength(1);
    time.now += 2;
    expect(await forecastFor(hollinBank)).toHaveProperty('forecast');
  });

  test('a 429 without a time is answered by a minute of quiet', async () => {
    const { forecastFor, time, control, questions } = await service();
    control.next.push('busy-429', 'busy-429', 'busy-429');
    await forecastFor(hollinBank);
    time.now += 59;
    await forecastFor(hollinBank);
    expect(questions).toHaveLength(3);
    time.now += 2;
    expect(await forecastFor(hollinBank)).toHaveProperty('forecast');
  });

  test('a failure is not remembered: the next who asks tries anew', async () => {
    const { forecastFor, control } = await service();
    control.failure = 'truncated';
    expect(await forecastFor(hollinBank)).toMatchObject({ error: { code: 'FORECAST_GARBLED' } });
    control.failure = null;
    expect(await forecastFor(hollinBank)).toHaveProperty('forecast');
  });
});

describe('what is not asked at all', () => {
  test('switched off', async () => {
    const { forecastFor, questions } = await service({ off: true });
    expect(await forecastFor(hollinBank)).toMatchObject({ error: { code: 'FORECAST_OFF' } });
    expect(questions).toEqual([]);
  });

  test.each([
    [91, 0],
    [0, 181],
    [Number.NaN, 0],
    [0, Number.POSITIVE_INFINITY],
  ])('%d, %d, which is nowhere', async (latitude, longitude) => {
    const { forecastFor, questions } = await service();
    expect(await forecastFor({ latitude, longitude })).toMatchObject({ error: { code: 'FORECAST_WRONG_PLACE' } });
    expect(questions).toEqual([]);
  });
});
