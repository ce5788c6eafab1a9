import { type SeasonDates, seasonDatesOf } from '../outlook/replay/index.ts';
import type { Parameters } from '../units/parameter.ts';

/** A pack without a season has the whole year. */
const wholeYear: SeasonDates = { opens: '01-01', lastDay: '12-31' };

/** First and last day of a pack's season; the whole year where it has none. */
export function datesOf(parameters: Parameters): SeasonDates {
  return parameters.has('seasonOpens') && parameters.has('seasonLastDay') ? seasonDatesOf(parameters) : wholeYear;
}

/** The shortest stretch of the year that holds both seasons, over its turn where need be; the whole year where they fill it. */
export function bothSeasons(a: SeasonDates, b: SeasonDates): SeasonDates {
  const stretches = [a, b].flatMap(({ opens }) => {
    const after = (day: string) => (placeInYear(day) - placeInYear(opens) + daysCounted) % daysCounted;
    if ([a, b].some((one) => after(one.opens) > after(one.lastDay))) return [];
    const { lastDay } = after(a.lastDay) > after(b.lastDay) ? a : b;
    return [{ opens, lastDay, length: after(lastDay) }];
  });
  const [shortest] = stretches.toSorted((one, other) => one.length - other.length);
  return shortest === undefined ? wholeYear : { opens: shortest.opens, lastDay: shortest.lastDay };
}

/** Days of a year in which every month has 31. */
const daysCounted = 12 * 31;

function placeInYear(monthDay: string): number {
  return 31 * (Number(monthDay.slice(0, 2)) - 1) + Number(monthDay.slice(3, 5)) - 1;
}
