import type { VariablesWithTime } from '@openmeteo/sdk/variables-with-time.js';
import { WeatherApiResponse } from '@openmeteo/sdk/weather-api-response.js';
import { ByteBuffer } from 'flatbuffers';
import { codedError, isLoamwardError } from '../../core/errors/coded-error.ts';
import { type EpochSeconds, epochSeconds } from '../../core/units/brands.ts';
import type { Forecast } from '../../core/weather/forecast.ts';
import { hourSeconds } from '../../core/weather/series.ts';
import { columnsOf } from './columns.ts';
import type { AskedVariable } from './variables.ts';

const elevationSlot = 8;
const mostHours = 24 * 130;

/** What one message says: the grid cell, the stamps, and the columns that the model has. */
export interface DecodedPlace {
  readonly latitude: number;
  readonly longitude: number;
  /** Height above sea level, m; null where none was sent. */
  readonly elevationM: number | null;
  readonly times: readonly EpochSeconds[];
  readonly values: Forecast['values'];
}

/**
 * Reads one size-prefixed FlatBuffers message of hourly values against what was asked. Throws FORECAST_GARBLED,
 * FORECAST_INCOMPLETE or FORECAST_WRONG_UNIT; whatever the bytes, nothing else and never without end.
 */
export function decodePlace(frame: Uint8Array, asked: readonly AskedVariable[]): DecodedPlace {
  return decodeWith(frame, (hourly, hours) => ({ values: columnsOf(hourly, hours, asked) }));
}

/** Reads the point and the stamps of a message, and of its hourly block what `read` makes of it. Throws as `decodePlace`. */
export function decodeWith<T extends object>(
  frame: Uint8Array,
  read: (hourly: VariablesWithTime, hours: number) => T,
): Omit<DecodedPlace, 'values'> & T {
  try {
    const buffer = new ByteBuffer(frame);
    const reply = WeatherApiResponse.getSizePrefixedRootAsWeatherApiResponse(buffer);
    const hourly = reply.hourly();
    if (!hourly) throw codedError('FORECAST_INCOMPLETE', { expected: 'hourly values', came: 'none' });
    const times = timesOf(hourly);
    return {
      ...pointOf(reply.latitude(), reply.longitude()),
      elevationM: buffer.__offset(reply.bb_pos, elevationSlot) === 0 ? null : finiteOrNull(reply.elevation()),
      times,
      ...read(hourly, times.length),
    };
  } catch (error) {
    if (isLoamwardError(error)) throw error;
    const came =
      error instanceof Error ? `bytes that break the reading (${error.name})` : 'bytes that break the reading';
    throw codedError('FORECAST_GARBLED', { expected: 'a message of hourly values', came });
  }
}

/** Stamps as epoch seconds UTC: the service counts from its first hour; its offset from UTC is for display and ignored. */
function timesOf(hourly: VariablesWithTime): EpochSeconds[] {
  const begin = Number(hourly.time());
  const end = Number(hourly.timeEnd());
  const interval = hourly.interval();
  const hours = (end - begin) / hourSeconds;
  if (interval !== hourSeconds || !(begin > 0) || !Number.isInteger(hours) || hours < 1 || hours > mostHours) {
    throw codedError('FORECAST_GARBLED', {
      expected: `up to ${mostHours} stamps an hour apart`,
      came: `from ${begin} to ${end} in steps of ${interval} s`,
    });
  }
  return Array.from({ length: hours }, (_, index) => epochSeconds(begin + index * hourSeconds));
}

function pointOf(latitude: number, longitude: number) {
  const point = { latitude: rounded(latitude), longitude: rounded(longitude) };
  if (Math.abs(point.latitude) <= 90 && Math.abs(point.longitude) <= 360) return point;
  throw codedError('FORECAST_GARBLED', {
    expected: 'a latitude and longitude',
    came: `${latitude}, ${longitude}`,
  });
}

/** Five decimals of a degree: about a metre, and all that a float32 holds. */
function rounded(degrees: number): number {
  return Math.round(degrees * 1e5) / 1e5;
}

function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? Math.round(value * 10) / 10 : null;
}
