import { describe, expect, test } from 'vitest';
import { forecastToJson } from '../../src/adapters/openmeteo/json-own.ts';
import { runCommandLine } from '../../src/cli/main.ts';
import type { KnownNumber } from '../../src/core/facts/types.ts';
import type { Forecast } from '../../src/core/weather/forecast.ts';
import { hoursAfter } from '../core/facts/moments.ts';
import { fakeIo } from './fake-io.ts';
import {
  type Answer,
  at,
  build,
  clearAt,
  decide,
  decided,
  expectNoSurer,
  fair,
  fit,
  iso,
  readings,
  soil,
} from './weather-answers.ts';

/** As the service writes a model without soil layers: the unit is "undefined", every value null. */
function withoutLayers(forecast: Forecast): string {
  const names = {
    temperature_2m: ['temperature2mC', '°C'],
    relative_humidity_2m: ['relativeHumidity2mPercent', '%'],
    precipitation: ['precipitationMm', 'mm'],
    wind_speed_10m: ['windSpeed10mKmh', 'km/h'],
    wind_gusts_10m: ['windGusts10mKmh', 'km/h'],
    cloud_cover: ['cloudCoverPercent', '%'],
  } as const;
  const nothing = forecast.times.map(() => null);
  const layers = ['soil_temperature_6cm', 'soil_temperature_18cm', 'soil_temperature_54cm'];
  return JSON.stringify({
    latitude: 53,
    longitude: -1,
    elevation: 60,
    utc_offset_seconds: 0,
    hourly_units: Object.fromEntries([
      ...Object.entries(names).map(([name, [, unit]]) => [name, unit]),
      ...layers.map((name) => [name, 'undefined']),
    ]),
    hourly: {
      time: forecast.times.map((time) => new Date(time * 1000).toISOString().slice(0, 16)),
      ...Object.fromEntries(Object.entries(names).map(([name, [column]]) => [name, forecast.values[column]])),
      ...Object.fromEntries(layers.map((name) => [name, nothing])),
    },
  });
}

describe('the clean input', () => {
  test('comes to spray today on a reading carried forward, with clear hours', async () => {
    const clean = await decided({});
    expect(clean.verdict).toBe('spray-today');
    expect(soil(clean).source).toBe('derived');
    expect(clearAt(clean).size).toBeGreaterThan(0);
  });
});

describe('bad weather', () => {
  const air = fair.temperature2mC as (time: Forecast['fetchedAt'], hour: number) => number;
  const airGap = (time: Forecast['fetchedAt'], hour: number) => (hour >= 190 && hour < 235 ? null : air(time, hour));
  test.each<[string, Forecast | string, string]>([
    [
      'a gap in the rain ahead',
      build({ columns: { precipitationMm: (_, hour) => (hour === 270 ? null : 0) } }),
      'rain.next48hMm',
    ],
    ['a forecast that ends in 30 hours', build({ hours: 271 }), 'rain.next48hMm'],
    [
      'a gap in the wind now',
      build({ columns: { windSpeed10mKmh: (_, hour) => (hour === 240 ? null : 10) } }),
      'wind.boomKmh',
    ],
  ])('%s is told as a gap of the forecast, and nothing is approved', async (_, forecast, fact) => {
    const bad = await decided({}, forecast);
    expect(bad.facts[fact as 'rain.next48hMm']).toMatchObject({ known: false, reason: 'forecast-gap' });
    expect(bad.verdict).toBe('wait');
    expectNoSurer(bad, await decided({}));
  });

  test.each<[string, Forecast | string]>([
    ['gaps in the air since the reading', build({ columns: { temperature2mC: airGap } })],
    ['a model without soil layers', withoutLayers(build())],
  ])('%s: a band at least as wide', async (_, forecast) => {
    expectNoSurer(await decided({}, forecast), await decided({}));
  });

  test('no ensemble: rain at least as high as with one that agrees', async () => {
    const rain = build({ columns: { precipitationMm: 0.05 } });
    const members = Array.from({ length: 20 }, () => rain.values.precipitationMm ?? []);
    const clean = await decided({}, { ...rain, precipitationMembersMm: members });
    const bad = await decided({}, rain);
    const high = ({ facts }: Answer) => (facts['rain.next48hMm'] as KnownNumber).high;
    expect(high(bad)).toBeGreaterThan(high(clean));
    expectNoSurer(bad, clean);
  });

  test('fetched after the moment asked about: new then, said with its code in JSON and text, and no surer', async () => {
    const later = { ...build(), fetchedAt: hoursAfter(at, 30) };
    const io = fakeIo({ 'facts.json': JSON.stringify(fit), 'forecast.json': forecastToJson(later) });
    const options = ['decide', '--facts', 'facts.json', '--forecast', 'forecast.json', '--at', iso(0)];
    expect(await runCommandLine(options, io)).toBe(0);
    expect(io.out()).toContain('FORECAST_FETCHED_LATER');
    const json = fakeIo({ 'facts.json': JSON.stringify(fit), 'forecast.json': forecastToJson(later) });
    await runCommandLine([...options, '--outlook', '--json'], json);
    const bad = JSON.parse(json.out()) as Answer;
    expect(bad.forecast).toMatchObject({ ageHours: 0, note: expect.stringContaining('FORECAST_FETCHED_LATER') });
    expectNoSurer(bad, await decided({}));
  });
});

describe('bad readings', () => {
  test('in the wrong order are the same as in the right one', async () => {
    const { facts } = await decided({ 'soil.temperature30cmC': readings.toReversed() });
    expect(facts).toEqual((await decided({})).facts);
  });

  test('a typing error is refused with its code', async () => {
    for (const given of [85, { value: 85, readAt: iso(-24) }, [...readings, { value: 85, readAt: iso(-24) }]]) {
      expect(await decide({ 'soil.temperature30cmC': given }, build())).toEqual({ code: 'FACT_OUT_OF_RANGE' });
    }
  });

  test('two a minute apart that disagree: a band over both, also when it is carried forward', async () => {
    const twice = (hours: number) => [
      { value: 7.4, readAt: iso(hours) },
      { value: 11, readAt: iso(hours + 1 / 60) },
    ];
    const now = await decided({ 'soil.temperature30cmC': twice(-1) });
    expect(soil(now)).toMatchObject({ low: 7.4, high: 11 });
    expect(now.verdict).not.toBe('spray-today');
    expectNoSurer(
      await decided({ 'soil.temperature30cmC': [...readings, ...twice(-47)] }),
      await decided({ 'soil.temperature30cmC': [...readings, { value: 9.2, readAt: iso(-47) }] }),
    );
  });

  test('a sensor stuck at one value for a week: its code, and no surer than its first reading alone', async () => {
    const stuck = Array.from({ length: 8 }, (_, day) => ({ value: 9.1, readAt: iso(-169 + day * 24) }));
    const bad = await decided({ 'soil.temperature30cmC': stuck });
    expect(soil(bad).note).toContain('READING_STUCK');
    expectNoSurer(bad, await decided({ 'soil.temperature30cmC': stuck[0] }));
  });
});
