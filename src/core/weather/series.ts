import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import type { Forecast, WeatherVariable } from './forecast.ts';
import { variableMeanings } from './variables.ts';

/** Seconds between two stamps of a forecast. */
export const hourSeconds = 3600;

/**
 * Value of a variable at a moment, in the column's unit: of an instant that of the nearest stamp, at most 30 min away; of a
 * preceding-hour variable that of the stamp that ends the hour (09:00 belongs to the hour stamped 10:00). Null where the forecast
 * has no column, a gap, or no such hour.
 */
export function valueAt(forecast: Forecast, variable: WeatherVariable, at: EpochSeconds): number | null {
  const hours = offsetHours(forecast, at);
  const ends = variableMeanings[variable].stamp === 'preceding-hour';
  return valueAtIndex(forecast, variable, ends ? Math.floor(hours) + 1 : Math.round(hours));
}

/** Value of a variable at a stamp index; null where missing. */
export function valueAtIndex(forecast: Forecast, variable: WeatherVariable, index: number): number | null {
  return forecast.values[variable]?.[index] ?? null;
}

/** Age of a forecast at a moment, hours, counted from when it was fetched; never below 0. */
export function ageHours(forecast: Forecast, at: EpochSeconds): number {
  return Math.max(0, (at - forecast.fetchedAt) / hourSeconds);
}

/** True for a forecast fetched more than a minute (for clocks that differ) after a moment. */
export function isFetchedLater(forecast: Forecast, at: EpochSeconds): boolean {
  return forecast.fetchedAt > at + 60;
}

/** Last stamp of a forecast; null for an empty one. */
export function lastStamp(forecast: Forecast): EpochSeconds | null {
  return forecast.times.at(-1) ?? null;
}

/** Stamp number `index` counted from the first one, which may lie outside the forecast. NaN for an empty forecast. */
export function stampTime(forecast: Forecast, index: number): EpochSeconds {
  return epochSeconds((forecast.times[0] ?? Number.NaN) + index * hourSeconds);
}

/** Hours from the first stamp to `at`, a fraction within an hour. NaN for an empty forecast. */
export function offsetHours(forecast: Forecast, at: EpochSeconds): number {
  return (at - (forecast.times[0] ?? Number.NaN)) / hourSeconds;
}
