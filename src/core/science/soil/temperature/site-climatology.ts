import { dayOfYear } from './air.ts';
import { isPossibleAir } from './filter.ts';
import type { SiteClimatology } from './types.ts';

/** Days to either side of a day of the year over which its usual air is taken. */
const windowDays = 15;
/** Least days that must be known in the window of every day of the year: those of one year with a third missing. */
const leastInWindow = 20;
const daysOfYear = 366;

/** One day of an archive: its mean air temperature at 2 m, C; null where missing. */
export interface ArchiveDay {
  /** The day, YYYY-MM-DD. */
  readonly iso: string;
  readonly airC: number | null;
}

/**
 * Usual air of a place and the spread of single days about it, from daily means of past years in any order: the mean over 15
 * days to either side in all years. Values that cannot be count as missing; null where a part of the year is not covered.
 */
export function climatologyFrom(days: readonly ArchiveDay[], source: string): SiteClimatology | null {
  const known = days.flatMap(({ iso, airC }) => (airC !== null && isPossibleAir(airC) ? [{ iso, airC }] : []));
  const byDay = Array.from({ length: daysOfYear }, (): number[] => []);
  for (const { iso, airC } of known) byDay[dayOfYear(iso) - 1]?.push(airC);
  const means = byDay.map((_, day) => {
    const around = Array.from(
      { length: 2 * windowDays + 1 },
      (_, k) => (day + k - windowDays + daysOfYear) % daysOfYear,
    );
    const values = around.flatMap((one) => byDay[one]!);
    return values.length < leastInWindow ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
  });
  if (!means.every((mean) => mean !== null)) return null;
  const squares = known.reduce((sum, { iso, airC }) => sum + (airC - means[dayOfYear(iso) - 1]!) ** 2, 0);
  const years = new Set(known.map(({ iso }) => iso.slice(0, 4))).size;
  return { meanAirCByDayOfYear: means, spreadC: Math.sqrt(squares / known.length), years, source };
}
