import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import type { Forecast } from './forecast.ts';
import { referenceEvapotranspirationHours } from './reference-evapotranspiration.ts';
import { hourSeconds } from './series.ts';
import { variableMeanings } from './variables.ts';

/** Rain and reference evapotranspiration of one hour, mm, named by the moment at which it begins. */
export interface WaterHour {
  readonly begin: EpochSeconds;
  readonly rainMm: number;
  readonly referenceMm: number;
}

/** The hours known of a stretch. */
export interface WaterHours {
  readonly hours: readonly WaterHour[];
  /** True where every hour after now is known in rain and evapotranspiration. */
  readonly complete: boolean;
  /** True where every hour from `since` to now is. */
  readonly completeBefore: boolean;
  /** End of the last hour known without a gap. */
  readonly reachesTo: EpochSeconds;
}

/**
 * Rain and reference evapotranspiration hour by hour from `since` to `until`. An hour missing before `at` (now) adds nothing;
 * one missing after it ends what is known. A value that cannot be counts as missing. The hour that holds `since` or `until` counts whole, which is cautious for rain.
 */
export function waterHours(
  forecast: Forecast,
  { since, at, until }: { readonly since: EpochSeconds; readonly at: EpochSeconds; readonly until: EpochSeconds },
): WaterHours {
  const references = referenceEvapotranspirationHours(forecast);
  const hours: WaterHour[] = [];
  let reached = at as number;
  let completeBefore = (forecast.times[0] ?? Number.POSITIVE_INFINITY) - hourSeconds <= since;
  for (const [index, time] of forecast.times.entries()) {
    if (time <= since || time - hourSeconds >= until) continue;
    const rainMm = possible('precipitationMm', forecast.values.precipitationMm?.[index]);
    const referenceMm = possible('et0Mm', references[index]?.mm);
    if (rainMm === null || referenceMm === null) {
      if (time > at) break;
      completeBefore = false;
      continue;
    }
    if (time - hourSeconds > reached) break;
    reached = Math.max(reached, time);
    hours.push({ begin: epochSeconds(time - hourSeconds), rainMm, referenceMm });
  }
  return { hours, complete: reached >= until, completeBefore, reachesTo: epochSeconds(reached) };
}

function possible(variable: 'precipitationMm' | 'et0Mm', value: number | null | undefined): number | null {
  const [lowest, highest] = variableMeanings[variable].range;
  return value != null && value >= lowest && value <= highest ? value : null;
}
