import { expect, test } from 'vitest';
import { forecastToJson } from '../../../src/adapters/openmeteo/json-own.ts';
import { parseForecastJson } from '../../../src/adapters/openmeteo/json-reply.ts';
import { forecastSchema } from '../../../src/core/protocol/events/forecast-schema.ts';

/** An invented reply of a place. */
const reply = (longitude: number) =>
  JSON.stringify({
    fetchedAt: '2026-11-06T00:40Z',
    ...{ latitude: 53.41, longitude, elevation: 210, utc_offset_seconds: 0, timezone: 'GMT' },
    hourly_units: { time: 'iso8601', temperature_2m: '°C' },
    hourly: { time: ['2026-11-06T00:00', '2026-11-06T01:00'], temperature_2m: [4.1, 4] },
  });

test.each([
  [359.93, -0.07],
  [-359.93, 0.07],
  [181, -179],
  [180, 180],
  [-180, -180],
  [360, 0],
])('a reply of a grid that tells a longitude as %d has it as %d, which a conversation can keep', (longitude, kept) => {
  const forecast = parseForecastJson(reply(longitude), {});
  expect(forecast.place).toMatchObject({ askedLongitude: kept, longitude: kept, distanceKm: 0 });
  expect(forecastSchema.safeParse(forecast).success).toBe(true);
  expect(parseForecastJson(forecastToJson(forecast), {})).toEqual(forecast);
  const near = parseForecastJson(reply(longitude), { asked: { latitude: 53.41, longitude: kept } });
  expect(near.place).toMatchObject({ longitude: kept, distanceKm: 0 });
});
