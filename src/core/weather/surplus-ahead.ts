import type { EpochSeconds } from '../units/brands.ts';
import { withoutBinaryNoise } from './banded.ts';
import type { Forecast } from './forecast.ts';
import { hourSeconds } from './series.ts';

/** What the balance needs beside the forecast. */
export interface SurplusInput {
  /** When the soil was as the deficit says; the balance starts here. */
  readonly since: EpochSeconds;
  /** Now: an hour missing before it adds nothing, an hour missing after it ends what is known. */
  readonly at: EpochSeconds;
  readonly until: EpochSeconds;
  /** Share by which forecast rain may be off either way. */
  readonly rainBandShare: number;
  /** Crop coefficient on reference evapotranspiration (FAO-56 eq. 56). */
  readonly cropCoefficient: number;
}

/** The greatest excess of rain over evapotranspiration reached by the end of any hour, mm. */
export interface SurplusAhead {
  readonly lowMm: number;
  readonly highMm: number;
  /** True where every hour after now is known in rain and evapotranspiration. */
  readonly complete: boolean;
}

/** Rain less crop evapotranspiration summed from `since`, the greatest sum on the way to `until`, with rain's band. */
export function surplusAhead(forecast: Forecast, input: SurplusInput): SurplusAhead {
  const total = { low: 0, high: 0 };
  const greatest = { low: 0, high: 0 };
  let reached = input.at as number;
  for (const [index, time] of forecast.times.entries()) {
    if (time <= input.since || time - hourSeconds >= input.until) continue;
    const rain = forecast.values.precipitationMm?.[index] ?? null;
    const reference = forecast.values.et0Mm?.[index] ?? null;
    if (rain === null || reference === null) {
      if (time <= input.at) continue;
      break;
    }
    if (time - hourSeconds > reached) break;
    reached = Math.max(reached, time);
    const used = reference * input.cropCoefficient;
    total.low += rain * Math.max(0, 1 - input.rainBandShare) - used;
    total.high += rain * (1 + input.rainBandShare) - used;
    greatest.low = Math.max(greatest.low, total.low);
    greatest.high = Math.max(greatest.high, total.high);
  }
  return {
    lowMm: withoutBinaryNoise(greatest.low),
    highMm: withoutBinaryNoise(greatest.high),
    complete: reached >= input.until,
  };
}
