import { codedError } from '../../errors/coded-error.ts';
import type { Parameters } from '../../units/parameter.ts';
import type { SeasonDates } from './types.ts';

/** The season of a pack: its parameters `seasonOpens` and `seasonLastDay`. Throws PARAMETER_MISSING. */
export function seasonDatesOf(parameters: Parameters): SeasonDates {
  return { opens: monthDay(parameters, 'seasonOpens'), lastDay: monthDay(parameters, 'seasonLastDay') };
}

/** Year in which the season of a day (YYYY-MM-DD) opened; null for a day outside every season. */
export function seasonOf(iso: string, { opens, lastDay }: SeasonDates): number | null {
  const day = iso.slice(5);
  const year = Number(iso.slice(0, 4));
  if (opens <= lastDay) return day >= opens && day <= lastDay ? year : null;
  if (day >= opens) return year;
  return day <= lastDay ? year - 1 : null;
}

function monthDay(parameters: Parameters, id: string): string {
  const value = parameters.get(id)?.value;
  if (typeof value === 'string' && /^\d{2}-\d{2}$/.test(value)) return value;
  throw codedError('PARAMETER_MISSING', { expected: 'a month and day (MM-DD)', came: String(value), parameter: id });
}
