import { codedError, type ErrorReport, reportOf } from '../../core/errors/coded-error.ts';
import { type EpochSeconds, epochSeconds } from '../../core/units/brands.ts';
import { distanceKm } from '../../core/weather/distance.ts';
import type { Forecast, ForecastPlace, WeatherVariable } from '../../core/weather/forecast.ts';
import { reachesFrom } from '../../core/weather/quality.ts';
import { hourSeconds, lastStamp } from '../../core/weather/series.ts';
import { isoMinute } from '../../core/weather/show-time.ts';
import { requiredVariables } from '../../core/weather/variables.ts';
import type { Point } from './question.ts';

/** A cell further from the point asked for than this answers another question: coarse grids stay within 25 km, coasts add some. */
const furthestCellKm = 50;

/** A forecast that ends sooner than this after it was fetched is not the one asked for, hours. */
export const leastHorizonHours = 48;

/** A longitude of -360 to 360 degrees, as grids that begin at Greenwich may give it, as one of -180 to 180. */
function withinHalfTurn(longitude: number): number {
  if (Math.abs(longitude) <= 180) return longitude;
  return Math.round((longitude - 360 * Math.sign(longitude)) * 1e6) / 1e6;
}

/** The place of a reply, with its distance from the point asked for; longitudes from -180 to 180, as a conversation keeps them. */
export function placeOf(
  asked: Point,
  cell: Pick<ForecastPlace, 'latitude' | 'longitude' | 'elevationM'>,
): ForecastPlace {
  const { latitude, longitude, elevationM } = cell;
  const km = Math.round(distanceKm(asked, cell) * 10) / 10;
  return {
    askedLatitude: asked.latitude,
    askedLongitude: withinHalfTurn(asked.longitude),
    latitude,
    longitude: withinHalfTurn(longitude),
    elevationM,
    distanceKm: km,
  };
}

/** Checks that a reply is for the point asked for. Throws FORECAST_WRONG_PLACE. */
export function checkPlace(place: ForecastPlace): void {
  if (place.distanceKm <= furthestCellKm) return;
  throw codedError('FORECAST_WRONG_PLACE', {
    expected: `a grid cell within ${furthestCellKm} km of ${place.askedLatitude}, ${place.askedLongitude}`,
    came: `${place.latitude}, ${place.longitude}, ${place.distanceKm} km away`,
  });
}

/**
 * Checks a fresh reply against now. Throws FORECAST_TOO_OLD where all of it is past, FORECAST_OUT_OF_HORIZON where it begins
 * later or ends too soon, FORECAST_INCOMPLETE where no needed variable has a value from now on. Gaps in some of them are a
 * warning (`gapWarning`): the rest can still be used.
 */
export function checkReach(forecast: Forecast, now: EpochSeconds): void {
  const first = forecast.times[0];
  const last = lastStamp(forecast);
  const needed = `hours from ${isoMinute(now)} to ${leastHorizonHours} h later`;
  if (first === undefined || last === null) throw codedError('FORECAST_INCOMPLETE', { expected: needed, came: 'none' });
  const details = { expected: needed, came: `${isoMinute(first)} to ${isoMinute(last)}` };
  if (last < now) throw codedError('FORECAST_TOO_OLD', details);
  if (first > now || last < now + leastHorizonHours * hourSeconds) throw codedError('FORECAST_OUT_OF_HORIZON', details);
  if (requiredVariables.some((variable) => hasValueFrom(forecast, variable, now))) return;
  throw codedError('FORECAST_INCOMPLETE', { expected: `weather from ${isoMinute(now)} on`, came: 'no value' });
}

/** A warning where the needed variables do not reach 48 h ahead without a gap: what lies beyond stays unknown. */
export function gapWarning(forecast: Forecast, now: EpochSeconds): ErrorReport | null {
  const reached = reachesFrom(forecast, now);
  const wanted = epochSeconds(now + leastHorizonHours * hourSeconds);
  if (reached !== null && reached >= wanted) return null;
  return reportOf('FORECAST_INCOMPLETE', {
    expected: `every hour known up to ${isoMinute(wanted)}`,
    came: reached === null ? 'a gap already in this hour' : `a gap after ${isoMinute(reached)}`,
  });
}

function hasValueFrom(forecast: Forecast, variable: WeatherVariable, now: EpochSeconds): boolean {
  const column = forecast.values[variable] ?? [];
  return forecast.times.some((time, index) => time > now && (column[index] ?? null) !== null);
}
