import type { EpochSeconds } from '../units/brands.ts';
import type { Forecast } from './forecast.ts';
import { offsetHours } from './series.ts';
import { withoutNoise } from './sums.ts';

/** Rain over hours to come in one member of an ensemble. */
export interface MemberRain {
  readonly totalMm: number;
  readonly maxMmPerH: number;
}

/**
 * Rain over the `hours` hourly sums after a moment in each ensemble member that knows them all; empty where the forecast has no
 * members or none reaches so far. Hours count as in `sumAhead`.
 */
export function rainMembers(forecast: Forecast, at: EpochSeconds, hours: number): MemberRain[] {
  const first = Math.floor(offsetHours(forecast, at)) + 1;
  const last = Math.ceil(offsetHours(forecast, at) + hours);
  return (forecast.precipitationMembersMm ?? []).flatMap((member) => {
    let totalMm = 0;
    let maxMmPerH = 0;
    for (let index = first; index <= last; index += 1) {
      const mm = member[index] ?? null;
      if (mm === null) return [];
      totalMm += mm;
      if (mm > maxMmPerH) maxMmPerH = mm;
    }
    return [{ totalMm: withoutNoise(totalMm), maxMmPerH }];
  });
}
