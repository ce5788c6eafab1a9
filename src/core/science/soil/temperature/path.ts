import type { EpochSeconds } from '../../../units/brands.ts';
import { airErrorsAlone } from './air-errors.ts';
import { soilConstants30cm } from './constants.ts';
import { scaleAt } from './error-scale.ts';
import { type Filtered, filterReadings, ownLoadings } from './filter.ts';
import { withLayers } from './layers.ts';
import type { SoilModelConstants } from './model-constants.ts';
import { chanceUnder } from './normal.ts';
import { normalReach, reachOf } from './reach.ts';
import { advance, copyState, seen } from './state.ts';
import type { SoilTemperatureDay, SoilTemperatureInput } from './types.ts';

/** Middle and standard error of one day, C. */
export interface DayEstimate {
  readonly valueC: number;
  readonly sdC: number;
  /** How many errors the width of the band rests on: the fewer, the further it reaches. */
  readonly freedom: number;
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

/**
 * Soil temperature at one moment from that of `input.at` on (a minute for clocks that differ), between the noons around it;
 * null before it and outside the days given.
 */
export function soilTemperatureAt(
  input: SoilTemperatureInput,
  at: EpochSeconds,
  limitC: number,
): SoilTemperatureDay | null {
  if (at < input.at - 60) return null;
  const path = soilTemperaturePath(input, limitC);
  const next = path.findIndex((day) => day.at >= at);
  const after = path[next];
  if (after === undefined) return path.find((day) => at - day.at <= 43_200) ?? null;
  const before = path[next - 1] ?? after;
  const share = before === after ? 1 : (at - before.at) / (after.at - before.at);
  const between = (a: number, b: number) => a + (b - a) * share;
  const valueC = between(before.valueC, after.valueC);
  const { sdC, valueC: of, low80C, low95C } = before.sdC > after.sdC ? before : after;
  const beyondForecast = before.beyondForecast || after.beyondForecast;
  return {
    ...banded(valueC, { sdC, half80C: of - low80C, half95C: of - low95C }, limitC),
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
  const { air, memories, tracked, today } = filtered;
  const moving = copyState(tracked.state);
  const ofAir = airErrorsAlone();
  let widest = 0;
  return memories.slice(today).map(({ quickC, slowC, middleC }, ahead) => {
    if (ahead > 0) {
      advance(moving, of, air[today + ahead]!, slowC);
      ofAir.advance(of, air[today + ahead]!);
    }
    const through = ownLoadings(filtered, of, quickC, slowC);
    const { mean, variance } = seen(moving, through);
    const airVariance = ofAir.variance(through);
    const own = Math.max(0, variance - airVariance);
    const { factor, freedom } = scaleAt(tracked.scale, of, tracked.sinceReading + ahead);
    const total = own * factor + airVariance;
    widest = Math.max(widest, Math.sqrt(total));
    return { valueC: middleC + mean, sdC: widest, freedom: freedom * (total / (own * factor)) ** 2 };
  });
}

/** One day with its bands and the chance of being below `limitC`. */
export function dayOf(
  { days }: SoilTemperatureInput,
  { air }: Filtered,
  index: number,
  estimate: DayEstimate,
  limitC: number,
): SoilTemperatureDay {
  const { at, iso } = days[index]!;
  return { at, iso, ...banded(estimate.valueC, widthOf(estimate), limitC), beyondForecast: air[index]!.isUsual };
}

interface Width {
  readonly sdC: number;
  readonly half80C: number;
  readonly half95C: number;
}

function widthOf({ sdC, freedom }: DayEstimate): Width {
  const { at80, at95 } = reachOf(soilConstants30cm, freedom);
  return { sdC, half80C: at80 * sdC, half95C: at95 * sdC };
}

function banded(valueC: number, { sdC, half80C, half95C }: Width, limitC: number) {
  return {
    valueC,
    sdC,
    low80C: valueC - half80C,
    high80C: valueC + half80C,
    low95C: valueC - half95C,
    high95C: valueC + half95C,
    chanceBelow: chanceUnder(((limitC - valueC) / half80C) * normalReach.at80),
  };
}
