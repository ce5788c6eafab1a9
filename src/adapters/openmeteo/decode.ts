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

/** The block of a message that is read: its step and most stamps. */
export interface Block {
  readonly name: 'hourly' | 'daily';
  readonly stepSeconds: number;
  readonly most: number;
}

const hourlyBlock: Block = { name: 'hourly', stepSeconds: hourSeconds, most: 24 * 130 };
/** Days of an archive: at most thirty years. */
export const dailyBlock: Block = { name: 'daily', stepSeconds: 24 * hourSeconds, most: 366 * 30 };

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

/** Reads the point and the stamps of a message, and of its block (hourly where none is named) what `read` makes of it. Throws as `decodePlace`. */
export function decodeWith<T extends object>(
  frame: Uint8Array,
  read: (block: VariablesWithTime, stamps: number) => T,
  block: Block = hourlyBlock,
): Omit<DecodedPlace, 'values'> & T {
  try {
    const buffer = new ByteBuffer(frame);
    const reply = WeatherApiResponse.getSizePrefixedRootAsWeatherApiResponse(buffer);
    const values = reply[block.name]();
    if (!values) throw codedError('FORECAST_INCOMPLETE', { expected: `${block.name} values`, came: 'none' });
    const times = timesOf(values, block);
    return {
      ...pointOf(reply.latitude(), reply.longitude()),
      elevationM: buffer.__offset(reply.bb_pos, elevationSlot) === 0 ? null : finiteOrNull(reply.elevation()),
      times,
      ...read(values, times.length),
    };
  } catch (error) {
    if (isLoamwardError(error)) throw error;
    const came =
      error instanceof Error ? `bytes that break the reading (${error.name})` : 'bytes that break the reading';
    throw codedError('FORECAST_GARBLED', { expected: `a message of ${block.name} values`, came });
  }
}

/** Stamps as epoch seconds UTC: the service counts from its first hour; its offset from UTC is for display and ignored. */
function timesOf(values: VariablesWithTime, { stepSeconds, most }: Block): EpochSeconds[] {
  const begin = Number(values.time());
  const end = Number(values.timeEnd());
  const interval = values.interval();
  const stamps = (end - begin) / stepSeconds;
  if (interval !== stepSeconds || !(begin > 0) || !Number.isInteger(stamps) || stamps < 1 || stamps > most) {
    throw codedError('FORECAST_GARBLED', {
      expected: `up to ${most} stamps ${stepSeconds} s apart`,
      came: `from ${begin} to ${end} in steps of ${interval} s`,
    });
  }
  return Array.from({ length: stamps }, (_, index) => epochSeconds(begin + index * stepSeconds));
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
