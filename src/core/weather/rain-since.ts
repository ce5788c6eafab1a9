import type { EpochSeconds } from '../units/brands.ts';
import type { Forecast } from './forecast.ts';
import { withoutNoise } from './sums.ts';

/**
 * The stamp by which `amountMm` of rain has fallen since a moment, past and coming hours alike; null where the known
 * hours never reach it. The hour that holds the moment counts whole; hours that are missing add nothing.
 */
export function rainReachedAt(forecast: Forecast, since: EpochSeconds, amountMm: number): EpochSeconds | null {
  let fallen = 0;
  for (const [index, time] of forecast.times.entries()) {
    if (time <= since) continue;
    fallen = withoutNoise(fallen + (forecast.values.precipitationMm?.[index] ?? 0));
    if (fallen >= amountMm) return time;
  }
  return null;
}
