import { DateTime } from 'luxon';
import { codedError } from '../errors/coded-error.ts';
import type { Forecast } from './forecast.ts';
import { hourSeconds } from './series.ts';
import { type SummedVariable, withoutNoise } from './sums.ts';

/** Sum of one local day. */
export interface DaySum {
  /** Local day, ISO date. */
  readonly date: string;
  /** Sum of the hours that are known, in the column's unit; a lower bound where not `complete`. */
  readonly total: number;
  /** Hours known. */
  readonly hours: number;
  /** True where every hour of the local day is known: 23, 24 or 25 of them where clocks change. */
  readonly complete: boolean;
}

/**
 * Sums of a preceding-hour variable by local day of an IANA zone, in order. An hour belongs to the day in which it begins, so
 * the sum stamped 00:00 is the last hour of the day before. Throws ZONE_UNKNOWN for a zone that is not known.
 */
export function dailySums(forecast: Forecast, variable: SummedVariable, zone: string): DaySum[] {
  const days = new Map<string, { total: number; hours: number; expected: number }>();
  forecast.times.forEach((time, index) => {
    const begin = DateTime.fromSeconds(time - hourSeconds, { zone });
    const date = begin.toISODate();
    if (date === null) {
      throw codedError('ZONE_UNKNOWN', { expected: 'an IANA time zone such as Europe/London', came: zone });
    }
    const day = days.get(date) ?? { total: 0, hours: 0, expected: hoursBeginningIn(begin) };
    const value = forecast.values[variable]?.[index] ?? null;
    days.set(date, value === null ? day : { ...day, total: day.total + value, hours: day.hours + 1 });
  });
  return [...days].map(([date, { total, hours, expected }]) => ({
    date,
    total: withoutNoise(total),
    hours,
    complete: hours === expected,
  }));
}

/** Hours on the grid of `begin` that begin within its local day. */
function hoursBeginningIn(begin: DateTime): number {
  const dayStart = begin.startOf('day').toSeconds();
  const dayEnd = begin.startOf('day').plus({ days: 1 }).toSeconds();
  const phase = begin.toSeconds();
  const first = Math.ceil((dayStart - phase) / hourSeconds);
  const end = Math.ceil((dayEnd - phase) / hourSeconds);
  return end - first;
}
