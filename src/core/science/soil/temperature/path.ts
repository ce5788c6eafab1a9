import type { EpochSeconds } from '../../../units/brands.ts';
import { soilConstants30cm } from './constants.ts';
import { type Filtered, filterReadings, ownLoadings } from './filter.ts';
import { withLayers } from './layers.ts';
import type { SoilModelConstants } from './model-constants.ts';
import { chanceUnder } from './normal.ts';
import { advance, copyState, seen } from './state.ts';
import type { SoilTemperatureDay, SoilTemperatureInput } from './types.ts';

/** Middle and standard error of one day, C. */
export interface DayEstimate {
  readonly valueC: number;
  readonly sdC: number;
}

/**
 * Soil temperature at 30 cm on every day from that of `input.at` to the last one given, with the chance of being below
 * `limitC`. Readings of the field correct the site's own offset and response; the forecast's soil layers move the middle a
 * little and never narrow the band. Throws SCIENCE_OUT_OF_RANGE where days do not follow each other or a value cannot be.
 */
export function soilTemperaturePath(input: SoilTemperatureInput, limitC: number): readonly SoilTemperatureDay[] {
  const filtered = filterReadings(input, soilConstants30cm);
  const estimates = withLayers(input, filtered.today, estimateDays(filtered, soilConstants30cm));
  return estimates.map((estimate, ahead) => dayOf(input, filtered, filtered.today + ahead, estimate, limitC));
}

/** Soil temperature at one moment from that of `input.at` on, between the noons around it; null outside the days given. */
export function soilTemperatureAt(
  input: SoilTemperatureInput,
  at: EpochSeconds,
  limitC: number,
): SoilTemperatureDay | null {
  const path = soilTemperaturePath(input, limitC);
  const next = path.findIndex((day) => day.at >= at);
  const after = path[next];
  if (after === undefined || at < input.at - 60)
    return path.at(-1) && at - path.at(-1)!.at <= 43_200 ? path.at(-1)! : null;
  const before = path[next - 1] ?? after;
  const share = after.at === before.at ? 1 : (at - before.at) / (after.at - before.at);
  const between = (a: number, b: number) => a + (b - a) * share;
  const valueC = between(before.valueC, after.valueC);
  const sdC = Math.max(before.sdC, after.sdC);
  const beyondForecast = before.beyondForecast || after.beyondForecast;
  return {
    ...banded(valueC, sdC, limitC, soilConstants30cm),
    at,
    iso: share < 0.5 ? before.iso : after.iso,
    beyondForecast,
  };
}

/**
 * Middle and standard error of the day of asking and every day after it, before the layers are looked at. The error never
 * shrinks from one day to the next; that of the air counts at the site's own shares once ten readings have shown them.
 */
export function estimateDays(filtered: Filtered, of: SoilModelConstants): DayEstimate[] {
  const { air, memories, state, today } = filtered;
  const moving = copyState(state);
  let widest = 0;
  return memories.slice(today).map(({ quickC, slowC, middleC }, ahead) => {
    if (ahead > 0) advance(moving, of, air[today + ahead]!.error);
    const { mean, variance } = seen(moving, ownLoadings(filtered, of, quickC, slowC));
    widest = Math.max(widest, Math.sqrt(variance));
    return { valueC: middleC + mean, sdC: widest };
  });
}

function dayOf(
  { days }: SoilTemperatureInput,
  { air }: Filtered,
  index: number,
  { valueC, sdC }: DayEstimate,
  limitC: number,
): SoilTemperatureDay {
  const { at, iso } = days[index]!;
  return { at, iso, ...banded(valueC, sdC, limitC, soilConstants30cm), beyondForecast: air[index]!.isUsual };
}

function banded(valueC: number, sdC: number, limitC: number, { reach80, reach95 }: SoilModelConstants) {
  return {
    valueC,
    sdC,
    low80C: valueC - reach80 * sdC,
    high80C: valueC + reach80 * sdC,
    low95C: valueC - reach95 * sdC,
    high95C: valueC + reach95 * sdC,
    chanceBelow: chanceUnder(((limitC - valueC) / sdC) * (1.2816 / reach80)),
  };
}
