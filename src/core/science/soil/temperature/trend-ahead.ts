import { soilConstants30cm } from './constants.ts';
import { type Filtered, filterReadings } from './filter.ts';
import { withLayers } from './layers.ts';
import { type DayEstimate, dayOf, estimateDays } from './path.ts';
import { reachOf } from './reach.ts';
import { loadings, observe, seen } from './state.ts';
import type { SoilTemperatureDay, SoilTemperatureInput } from './types.ts';

/** A change per day with the band that holds 95 %, C/day. */
export interface TrendAhead {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Share of the error of today's temperature that a change over the days to come may carry, at most. */
const shareOfToday = 0.3;

/**
 * Mean change per day at 30 cm from the day of asking over the `aheadDays` (1 or more) that follow, C/day; null where fewer days
 * are given. The level of today is common to both ends, so that its error hardly counts.
 */
export function soilTrendAhead(input: SoilTemperatureInput, aheadDays: number): TrendAhead | null {
  return soilTodayAndAhead(input, aheadDays).ahead;
}

/**
 * The soil temperature of the day of asking, as `soilTemperaturePath` has it without a limit (0 C stands in), with the change
 * ahead, from one run of the model.
 */
export function soilTodayAndAhead(
  input: SoilTemperatureInput,
  aheadDays: number,
): { readonly today: SoilTemperatureDay; readonly ahead: TrendAhead | null } {
  const filtered = filterReadings(input, soilConstants30cm);
  const estimates = withLayers(input, filtered.today, estimateDays(filtered, soilConstants30cm));
  const today = dayOf(input, filtered, filtered.today, estimates[0]!, 0);
  return { today, ahead: trendOf(filtered, estimates, aheadDays) };
}

function trendOf(filtered: Filtered, estimates: readonly DayEstimate[], aheadDays: number): TrendAhead | null {
  const [first, last] = [estimates[0], estimates[aheadDays]];
  if (first === undefined || last === undefined || aheadDays < 1) return null;
  const { quickC, slowC } = filtered.memories[filtered.today]!;
  const through = loadings(soilConstants30cm, quickC, slowC);
  const { state } = filtered.tracked;
  observe(state, through, seen(state, through).mean, 1e-6);
  const fromHere = estimateDays(filtered, soilConstants30cm)[aheadDays]!;
  const value = (last.valueC - first.valueC) / aheadDays;
  const reach =
    (reachOf(soilConstants30cm, last.freedom).at95 * Math.hypot(fromHere.sdC, shareOfToday * first.sdC)) / aheadDays;
  return { value, low: value - reach, high: value + reach };
}
