import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { forecastToJson } from '../../../src/adapters/openmeteo/json-own.ts';
import { noFetchTimeNote, parseForecastJson } from '../../../src/adapters/openmeteo/json-reply.ts';
import { readReply } from '../../../src/adapters/openmeteo/transport.ts';
import { isLoamwardError } from '../../../src/core/errors/coded-error.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { buildReply } from '../../../src/tools/stand-in/build-forecast.ts';
import { inventWeather } from '../../../src/tools/stand-in/invented-weather.ts';
import { hollinBank } from './means.ts';

/** A reply in the form that the service documents, its numbers invented. */
function reply(changes: Record<string, unknown> = {}, hourly: Record<string, unknown> = {}, units = {}) {
  return {
    latitude: 53.41,
    longitude: -1.93,
    elevation: 210,
    utc_offset_seconds: 0,
    timezone: 'GMT',
    hourly_units: { time: 'iso8601', temperature_2m: '°C', precipitation: 'mm', wind_speed_10m: 'km/h', ...units },
    hourly: {
      time: ['2026-11-06T00:00', '2026-11-06T01:00', '2026-11-06T02:00'],
      temperature_2m: [4.1, 4, 3.8],
      precipitation: [0.2, 0, 0],
      wind_speed_10m: [null, 11, 12],
      ...hourly,
    },
    ...changes,
  };
}

const parse = (value: unknown, options = {}) => parseForecastJson(JSON.stringify(value), options);
const seconds = (iso: string) => Date.parse(iso) / 1000;

describe("the service's JSON reply", () => {
  test('is read with its gaps', () => {
    const forecast = parse(reply({ fetchedAt: '2026-11-06T07:40Z' }));
    expect(forecast).toEqual({
      place: {
        askedLatitude: 53.41,
        askedLongitude: -1.93,
        latitude: 53.41,
        longitude: -1.93,
        elevationM: 210,
        distanceKm: 0,
      },
      fetchedAt: seconds('2026-11-06T07:40Z'),
      attribution: 'Weather data by Open-Meteo.com (CC BY 4.0)',
      times: [0, 1, 2].map((hour) => seconds('2026-11-06T00:00Z') + hour * 3600),
      values: {
        temperature2mC: [4.1, 4, 3.8],
        precipitationMm: [0.2, 0, 0],
        windSpeed10mKmh: [null, 11, 12],
      },
    });
  });

  test('without a time of fetching the first stamp counts, and the note says so', () => {
    const forecast = parse(reply());
    expect(forecast.fetchedAt).toBe(forecast.times[0]);
    expect(forecast.note).toBe(noFetchTimeNote);
    const told = parse(reply({ fetchedAt: '2026-11-06T07:40Z' }), { fetchedAt: epochSeconds(77) });
    expect([told.fetchedAt, told.note]).toEqual([77, undefined]);
  });

  test.each([
    ['temperature_2m', '°F', 50, 'temperature2mC', 10],
    ['temperature_2m', '°F', 32, 'temperature2mC', 0],
    ['wind_speed_10m', 'mp/h', 10, 'windSpeed10mKmh', 16.09],
    ['wind_speed_10m', 'm/s', 3, 'windSpeed10mKmh', 10.8],
    ['wind_speed_10m', 'kn', 10, 'windSpeed10mKmh', 18.52],
    ['precipitation', 'inch', 0.5, 'precipitationMm', 12.7],
  ] as const)('%s in %s: %d becomes %s %d', (name, unit, value, column, ours) => {
    const forecast = parse(reply({}, { [name]: [value, value, value] }, { [name]: unit }));
    expect(forecast.values[column]).toEqual([ours, ours, ours]);
  });

  test.each([
    ['Europe/London summer', 3600, '2026-10-24T23:00Z', '2026-10-25T00:00'],
    ['a half hour zone', 19_800, '2026-11-05T18:30Z', '2026-11-06T00:00'],
    ['west of Greenwich', -18_000, '2026-11-06T05:00Z', '2026-11-06T00:00'],
  ])('local stamps lose the offset of the reply: %s', (_, offset, utc, local) => {
    const day = local.slice(0, 10);
    const time = [local, `${day}T01:00`, `${day}T02:00`];
    expect(parse(reply({ utc_offset_seconds: offset }, { time })).times[0]).toBe(seconds(utc));
  });

  test('on a change day the one offset holds for the whole reply, the hour that no clock shows included', () => {
    const time = ['2026-03-29T00:00', '2026-03-29T01:00', '2026-03-29T02:00'];
    const { times } = parse(reply({ utc_offset_seconds: 0, timezone: 'Europe/London' }, { time }));
    expect(times).toEqual([0, 1, 2].map((hour) => seconds('2026-03-29T00:00Z') + hour * 3600));
  });

  test('unix stamps are UTC whatever the offset', () => {
    const time = [0, 1, 2].map((hour) => seconds('2026-11-06T00:00Z') + hour * 3600);
    expect(parse(reply({ utc_offset_seconds: 3600 }, { time })).times).toEqual(time);
  });

  test('a variable that the model lacks has no column', () => {
    const lacks = [null, null, null];
    const forecast = parse(reply({}, { cloud_cover: lacks, dew_point_2m: lacks }, { cloud_cover: 'undefined' }));
    expect(Object.keys(forecast.values).sort()).toEqual(['precipitationMm', 'temperature2mC', 'windSpeed10mKmh']);
  });

  test('names of older recordings are understood', () => {
    const forecast = parse(reply({}, { windgusts_10m: [1, 2, 3] }, { windgusts_10m: 'km/h' }));
    expect(forecast.values.windGusts10mKmh).toEqual([1, 2, 3]);
  });

  test('zeros of rain beside a gap are missing', () => {
    expect(parse(reply({}, { precipitation: [0, null, 0] })).values.precipitationMm).toEqual([null, null, null]);
    expect(parse(reply({}, { precipitation: [0, null, 0.4] })).values.precipitationMm).toEqual([null, null, 0.4]);
  });
});

describe('what cannot be used', () => {
  const broken: readonly (readonly [string, unknown, string])[] = [
    ['another form', { hello: 1 }, 'FORECAST_FILE_UNREADABLE'],
    ['a list', [reply(), reply()], 'FORECAST_FILE_UNREADABLE'],
    ['null', null, 'FORECAST_FILE_UNREADABLE'],
    ['daily values only', { ...reply(), hourly: undefined }, 'FORECAST_FILE_UNREADABLE'],
    ['no units', { ...reply(), hourly_units: undefined }, 'FORECAST_FILE_UNREADABLE'],
    ['no offset', { ...reply(), utc_offset_seconds: undefined }, 'FORECAST_FILE_UNREADABLE'],
    ['a refusal', { error: true, reason: 'No such place.' }, 'FORECAST_REJECTED'],
    ['a wrong time of fetching', reply({ fetchedAt: 'this morning' }), 'FORECAST_FILE_UNREADABLE'],
    ['a time of fetching that is no day', reply({ fetchedAt: '2026-02-30T07:40Z' }), 'FORECAST_FILE_UNREADABLE'],
    ['an unknown unit', reply({}, {}, { wind_speed_10m: 'furlongs' }), 'FORECAST_WRONG_UNIT'],
    ['a unit of Object', reply({}, {}, { wind_speed_10m: 'constructor' }), 'FORECAST_WRONG_UNIT'],
    ['a unit left out', reply({}, { cloud_cover: [1, 2, 3] }), 'FORECAST_WRONG_UNIT'],
    ['values of undefined unit', reply({}, {}, { precipitation: 'undefined' }), 'FORECAST_WRONG_UNIT'],
    ['text for a number', reply({}, { precipitation: ['0', 0, 0] }), 'FORECAST_GARBLED'],
    ['a column too short', reply({}, { precipitation: [0, 0] }), 'FORECAST_GARBLED'],
    ['a value that cannot be', reply({}, { precipitation: [0, 0, -4] }), 'FORECAST_GARBLED'],
    [
      'a day that is not',
      reply({}, { time: ['2026-02-30T00:00', '2026-02-30T01:00', '2026-02-30T02:00'] }),
      'FORECAST_GARBLED',
    ],
    [
      'a step of two hours',
      reply({}, { time: ['2026-11-06T00:00', '2026-11-06T02:00', '2026-11-06T04:00'] }),
      'FORECAST_GARBLED',
    ],
    [
      'falling stamps',
      reply({}, { time: ['2026-11-06T02:00', '2026-11-06T01:00', '2026-11-06T00:00'] }),
      'FORECAST_GARBLED',
    ],
    ['no stamps', reply({}, { time: [] }), 'FORECAST_INCOMPLETE'],
    ['nothing of ours', { ...reply(), hourly: { time: ['2026-11-06T00:00'], uv_index: [0] } }, 'FORECAST_INCOMPLETE'],
  ];

  test.each(broken)('%s', (_, value, code) => {
    expect(() => parse(value)).toThrow(new RegExp(`^${code}:`));
  });

  test.each(['', 'no JSON', '<html>', '{"latitude":'])('text %j', (text) => {
    expect(() => parseForecastJson(text)).toThrow(/^FORECAST_FILE_UNREADABLE/);
  });

  test('another place than the one asked for', () => {
    expect(() => parse(reply(), { asked: { latitude: 51.5, longitude: -0.1 } })).toThrow(/^FORECAST_WRONG_PLACE/);
    expect(parse(reply(), { asked: { latitude: 53.42, longitude: -1.93 } }).place).toMatchObject({
      askedLatitude: 53.42,
      distanceKm: 1.1,
    });
  });

  test('any JSON at all ends in a code or a forecast', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        try {
          parseForecastJson(text);
        } catch (error) {
          expect(isLoamwardError(error)).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('a saved forecast', () => {
  const start = seconds('2026-11-06T00:00Z');
  const read = readReply(
    buildReply(inventWeather('seasonal', { ...hollinBank, start, hours: 96 }, start)),
    true,
    { ...hollinBank, pastDays: 0, forecastDays: 4 },
    start,
  );
  if (!('forecast' in read)) throw read.error;
  const { forecast } = read;

  test('comes back as it was', () => {
    expect(parseForecastJson(forecastToJson(forecast))).toEqual(forecast);
    const noted = { ...forecast, note: 'by hand' };
    expect(parseForecastJson(forecastToJson(noted))).toEqual(noted);
  });

  test.each([
    ['a column too short', { ...forecast, values: { precipitationMm: [0] } }, 'FORECAST_GARBLED'],
    [
      'uneven stamps',
      { ...forecast, times: forecast.times.map((time, at) => epochSeconds(time + (at === 3 ? 1 : 0))) },
      'FORECAST_GARBLED',
    ],
    [
      'a column of another name',
      { ...forecast, values: { rain: forecast.times.map(() => 0) } },
      'FORECAST_FILE_UNREADABLE',
    ],
    ['a key too many', { ...forecast, issued: 1 }, 'FORECAST_FILE_UNREADABLE'],
    ['a cell far away', { ...forecast, place: { ...forecast.place, distanceKm: 300 } }, 'FORECAST_WRONG_PLACE'],
  ])('with %s is refused', (_, changed, code) => {
    expect(() => parseForecastJson(forecastToJson(changed as never))).toThrow(new RegExp(`^${code}:`));
  });
});

test('runs of an ensemble in a JSON reply are read by name: the control run, then the members by number', () => {
  const names = ['precipitation_member02', 'precipitation', 'precipitation_member01'];
  const reply = {
    latitude: 53.41,
    longitude: -1.93,
    utc_offset_seconds: 0,
    hourly_units: Object.fromEntries(names.map((name) => [name, name.endsWith('01') ? 'inch' : 'mm'])),
    hourly: {
      time: ['2026-11-06T00:00', '2026-11-06T01:00'],
      precipitation_member02: [2, 2.5],
      precipitation: [0.5, 1],
      precipitation_member01: [1, null],
    },
  };
  expect(parseForecastJson(JSON.stringify(reply)).precipitationMembersMm).toEqual([
    [0.5, 1],
    [25.4, null],
    [2, 2.5],
  ]);
  const { precipitation_member01: _, precipitation_member02: __, ...alone } = reply.hourly;
  expect(parseForecastJson(JSON.stringify({ ...reply, hourly: alone })).precipitationMembersMm).toBeUndefined();
});
