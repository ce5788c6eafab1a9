import { fetchWeatherApi } from 'openmeteo';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { createForecastService } from '../../../src/adapters/openmeteo/forecast-service.ts';
import { addressOf } from '../../../src/adapters/openmeteo/question.ts';
import { defaultSettings } from '../../../src/adapters/openmeteo/settings.ts';
import { askedVariables } from '../../../src/adapters/openmeteo/variables.ts';
import { type StandIn, startStandIn } from '../../../src/tools/stand-in/server.ts';
import { fakeTime } from './means.ts';

let standIn: StandIn;

beforeAll(async () => {
  standIn = await startStandIn({ clock: () => Date.UTC(2026, 10, 6, 9) / 1000, scenario: 'seasonal' });
});

afterAll(() => standIn.close());

// Reference: the service's own client library, openmeteo from the npm registry, on the same bytes over HTTP.
test('our reading of a reply agrees with the service’s own client: place, stamps and every value', async () => {
  const settings = { ...defaultSettings, baseUrl: standIn.url };
  const { means } = fakeTime();
  const point = { latitude: 54, longitude: -2 };
  const answer = await createForecastService({ ...means, settings, fetch }).forecastFor(point);
  if (!('forecast' in answer)) throw answer.error;
  const { forecast } = answer;

  const asked = new URL(
    addressOf({ ...point, pastDays: settings.pastDays, forecastDays: settings.forecastDays }, settings),
  );
  const [theirs] = await fetchWeatherApi(`${standIn.url}/v1/forecast`, Object.fromEntries(asked.searchParams));
  const hourly = theirs!.hourly()!;

  expect(theirs!.latitude()).toBeCloseTo(forecast.place.latitude, 3);
  expect(theirs!.longitude()).toBeCloseTo(forecast.place.longitude, 3);
  expect(Number(hourly.time())).toBe(forecast.times[0]);
  expect(Number(hourly.timeEnd()) - hourly.interval()).toBe(forecast.times.at(-1));
  let compared = 0;
  for (const [index, { column: variable }] of askedVariables.entries()) {
    const ours = forecast.values[variable];
    const values = [...(hourly.variables(index)?.valuesArray() ?? [])];
    if (!ours) continue;
    expect(ours.length).toBe(values.length);
    for (const [hour, value] of values.entries()) {
      if (Number.isNaN(value)) expect(ours[hour]).toBeNull();
      else expect(Math.abs((ours[hour] ?? Number.NaN) - value), `${variable} ${hour}`).toBeLessThanOrEqual(0.0051);
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(1000);
});
