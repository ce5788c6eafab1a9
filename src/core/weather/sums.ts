import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import type { Forecast, WeatherVariable } from './forecast.ts';
import { offsetHours, stampTime, valueAtIndex } from './series.ts';

/** Variables that may be summed over hours. */
export type SummedVariable = Extract<WeatherVariable, 'precipitationMm' | 'et0Mm'>;

/** A sum over hours ahead. */
export interface SumAhead {
  /** Sum of the hours that are known, in the column's unit. Where not `complete` it is a lower bound and no sum. */
  readonly total: number;
  /** Highest single hour known, in the column's unit per hour; null where no hour is known. */
  readonly maxPerHour: number | null;
  /** True where every hour asked for is known. */
  readonly complete: boolean;
  /** End of the last hour known without a gap from `from` on; `from` itself where the first hour is missing. */
  readonly reachesTo: EpochSeconds;
}

/**
 * Sum of a preceding-hour variable over `hours` hours from `from`. A sum from 09:00 over 2 h reads the stamps 10:00 and
 * 11:00. An hour that is only partly inside counts whole at either end, which is cautious for rain. An hour that is missing
 * or beyond the end makes it incomplete; it is never taken as zero.
 */
export function sumAhead(forecast: Forecast, variable: SummedVariable, from: EpochSeconds, hours: number): SumAhead {
  const first = Math.floor(offsetHours(forecast, from)) + 1;
  const last = Math.ceil(offsetHours(forecast, from) + hours);
  let total = 0;
  let maxPerHour: number | null = null;
  let complete = hours > 0 && last >= first;
  let reachesTo = from;
  for (let index = first; index <= last; index += 1) {
    const value = valueAtIndex(forecast, variable, index);
    if (value === null) {
      complete = false;
      continue;
    }
    total += value;
    maxPerHour = Math.max(maxPerHour ?? value, value);
    if (complete) reachesTo = stampTime(forecast, index);
  }
  return { total: withoutNoise(total), maxPerHour, complete, reachesTo: epochSeconds(reachesTo) };
}

/** Rounds a sum of decimals to 0.001, which removes the noise of binary addition. */
export function withoutNoise(sum: number): number {
  return Math.round(sum * 1000) / 1000;
}
