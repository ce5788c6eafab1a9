import { DateTime } from 'luxon';
import { epochSeconds } from '../../../units/brands.ts';
import { soilConstants30cm } from './constants.ts';
import { possibleCourses } from './courses.ts';
import { filterReadings } from './filter.ts';
import { withLayers } from './layers.ts';
import { estimateDays } from './path.ts';
import { normalReach, reachOf } from './reach.ts';
import type { SoilAirDay, SoilFallThrough, SoilTemperatureInput } from './types.ts';

/** Days past the last one given for which the soil must stay below to have fallen for good. */
const settledDays = 21;
/** Possible courses looked at: a chance of one half is then known to about 3 %. */
const courseCount = 400;

/**
 * Days by which the soil at 30 cm has fallen below `limitC` for good, with their chances, from possible courses of soil and
 * weather: below on that day and on every day after it, to three weeks past the last day given, for which the usual air of the
 * season stands in. Warming back counts within the days given, over the courses that fall below at all (0 where none does).
 */
export function fallThroughOf(input: SoilTemperatureInput, limitC: number): SoilFallThrough {
  const longer = { ...input, days: [...input.days, ...usualDaysAfter(input.days)] };
  const filtered = filterReadings(longer, soilConstants30cm);
  const estimates = withLayers(longer, filtered.today, estimateDays(filtered, soilConstants30cm));
  const ahead = input.days.slice(filtered.today);
  const spreads = estimates.map(
    ({ sdC, freedom }) => (sdC * reachOf(soilConstants30cm, freedom).at80) / normalReach.at80,
  );
  let fallen = 0;
  let rewarmed = 0;
  const settledOn = new Float64Array(estimates.length + 1);
  for (const course of possibleCourses(filtered, soilConstants30cm, courseCount)) {
    const isBelow = estimates.map(({ valueC }, day) => valueC + course[day]! * spreads[day]! < limitC);
    const firstBelow = isBelow.indexOf(true);
    const lastAbove = isBelow.lastIndexOf(false);
    if (firstBelow >= 0 && firstBelow < ahead.length) {
      fallen += 1;
      if (isBelow.slice(firstBelow, ahead.length).includes(false)) rewarmed += 1;
    }
    settledOn[lastAbove + 1]! += 1;
  }
  const dayOfChance = (chance: number) => {
    let sum = 0;
    const day = settledOn.findIndex((count) => {
      sum += count;
      return sum >= chance * courseCount;
    });
    return ahead[day]?.iso ?? null;
  };
  return {
    limitC,
    day10: dayOfChance(0.1),
    day50: dayOfChance(0.5),
    day90: dayOfChance(0.9),
    chanceOfWarmingBack: fallen === 0 ? 0 : rewarmed / fallen,
  };
}

function usualDaysAfter(days: readonly SoilAirDay[]): SoilAirDay[] {
  const last = days.at(-1);
  if (last === undefined) return [];
  const lastDay = DateTime.fromISO(last.iso, { zone: 'utc' });
  return Array.from({ length: settledDays }, (_, index) => {
    const at = epochSeconds(last.at + (index + 1) * 86_400);
    return { at, iso: lastDay.plus({ days: index + 1 }).toFormat('yyyy-MM-dd'), airC: null };
  });
}
