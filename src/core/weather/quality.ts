import type { EpochSeconds } from '../units/brands.ts';
import type { Forecast, WeatherVariable } from './forecast.ts';
import { offsetHours, stampTime, valueAtIndex } from './series.ts';
import { requiredVariables } from './variables.ts';

/** How whole a forecast is, judged hour by hour over the variables named. */
export interface ForecastQuality {
  /** Share of the hours in which every variable is known, 0 to 1; 0 for an empty forecast. */
  readonly coverage: number;
  /** Most hours in a row in which some variable is missing. */
  readonly longestGapHours: number;
  /** Last stamp at which every variable is known; null where there is none. */
  readonly lastGoodHour: EpochSeconds | null;
}

/** Coverage, longest gap and last good hour. An hour counts only if every variable of it is known. */
export function quality(
  forecast: Forecast,
  variables: readonly WeatherVariable[] = requiredVariables,
): ForecastQuality {
  let good = 0;
  let gap = 0;
  let longestGapHours = 0;
  let lastGoodHour: EpochSeconds | null = null;
  forecast.times.forEach((time, index) => {
    const known = isHourKnown(forecast, index, variables);
    gap = known ? 0 : gap + 1;
    longestGapHours = Math.max(longestGapHours, gap);
    if (!known) return;
    good += 1;
    lastGoodHour = time;
  });
  const coverage = forecast.times.length === 0 ? 0 : good / forecast.times.length;
  return { coverage, longestGapHours, lastGoodHour };
}

/**
 * Last stamp reached from `at` on without meeting a gap in any of the variables: windows never cross a gap, and this is how
 * far a verdict may look. Null where the hour holding `at` is itself missing or outside.
 */
export function reachesFrom(
  forecast: Forecast,
  at: EpochSeconds,
  variables: readonly WeatherVariable[] = requiredVariables,
): EpochSeconds | null {
  let index = Math.floor(offsetHours(forecast, at));
  let reached: EpochSeconds | null = null;
  while (index < forecast.times.length && isHourKnown(forecast, index, variables)) {
    reached = stampTime(forecast, index);
    index += 1;
  }
  return reached;
}

/** True where every variable is known at a stamp index. */
function isHourKnown(forecast: Forecast, index: number, variables: readonly WeatherVariable[]): boolean {
  return variables.every((variable) => valueAtIndex(forecast, variable, index) !== null);
}
