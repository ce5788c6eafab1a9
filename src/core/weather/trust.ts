import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import { numberParameter, type Parameters } from '../units/parameter.ts';
import { distanceKm } from './distance.ts';
import type { Forecast } from './forecast.ts';
import { ageHours, hourSeconds } from './series.ts';
import { isoMinute } from './show-time.ts';

/** Whether a forecast may be used at a moment, how much wider its bands stand for its age, and until when at most. */
export type ForecastTrust =
  | {
      readonly usable: true;
      /** Factor on every band: 1 while fresh, then growing with age. */
      readonly growth: number;
      /** The moment from which it is too old for anything. */
      readonly oldestAt: EpochSeconds;
    }
  | { readonly usable: false; readonly reason: 'too-old' | 'forecast-gap'; readonly note: string };

/**
 * Factor on the bands of a forecast for a moment ahead of `now`, from that for its age: wider by
 * `forecastLeadGrowthSharePerDay` with each day ahead.
 */
export function growthAhead(growth: number, now: EpochSeconds, at: EpochSeconds, parameters: Parameters): number {
  const days = Math.max(0, at - now) / (24 * hourSeconds);
  return growth * (1 + numberParameter(parameters, 'forecastLeadGrowthSharePerDay') * days);
}

/**
 * Judges a forecast by its age and by the distance from its grid cell to the field (or, where the field's place is not
 * known, to the point asked for). Too old is from `forecastOldestHours` on; bands grow after `forecastFreshHours`.
 */
export function trustIn(
  forecast: Forecast,
  at: EpochSeconds,
  field: { readonly latitude: number; readonly longitude: number } | null,
  parameters: Parameters,
): ForecastTrust {
  const furthest = numberParameter(parameters, 'forecastCellFurthestKm');
  const away = Math.max(forecast.place.distanceKm, field === null ? 0 : distanceKm(field, forecast.place));
  if (!(away <= furthest)) {
    const note = `the forecast's grid cell is ${away.toFixed(1)} km from the field, further than ${furthest} km`;
    return { usable: false, reason: 'forecast-gap', note };
  }
  const age = ageHours(forecast, at);
  const oldest = numberParameter(parameters, 'forecastOldestHours');
  if (age >= oldest) {
    const note = `forecast fetched ${isoMinute(forecast.fetchedAt)}, ${Math.floor(age)} h before`;
    return { usable: false, reason: 'too-old', note };
  }
  const hoursStale = Math.max(0, age - numberParameter(parameters, 'forecastFreshHours'));
  return {
    usable: true,
    growth: 1 + hoursStale * numberParameter(parameters, 'forecastBandGrowthSharePerHour'),
    oldestAt: epochSeconds(Math.min(at, forecast.fetchedAt) + oldest * hourSeconds),
  };
}
