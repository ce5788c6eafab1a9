import { type ErrorReport, reportOf } from '../errors/coded-error.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { Forecast } from './forecast.ts';
import { ageHours, lastStamp } from './series.ts';
import { isoMinute } from './show-time.ts';

/**
 * Why a forecast may not be decided on at a moment, or null where it may: older than `oldestHours` (FORECAST_TOO_OLD), or the
 * moment lies before its first or after its last stamp (FORECAST_OUT_OF_HORIZON).
 */
export function whyUnusableAt(forecast: Forecast, at: EpochSeconds, oldestHours: number): ErrorReport | null {
  const age = ageHours(forecast, at);
  const first = forecast.times[0];
  const last = lastStamp(forecast);
  if (first === undefined || last === null || at < first || at > last) {
    return reportOf('FORECAST_OUT_OF_HORIZON', {
      expected: `a forecast that covers ${isoMinute(at)}`,
      came: first === undefined || last === null ? 'no hours' : `${isoMinute(first)} to ${isoMinute(last)}`,
    });
  }
  if (age <= oldestHours) return null;
  return reportOf('FORECAST_TOO_OLD', {
    expected: `a forecast at most ${oldestHours} h old`,
    came: `one fetched at ${isoMinute(forecast.fetchedAt)}, ${Math.floor(age)} h old`,
  });
}
