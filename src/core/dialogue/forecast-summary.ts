import type { EpochSeconds } from '../units/brands.ts';
import type { Forecast } from '../weather/forecast.ts';
import { reachesFrom } from '../weather/quality.ts';
import { ageHours } from '../weather/series.ts';
import type { ForecastSummary } from './decision-types.ts';
import { instantText } from './moment.ts';

/** Source, age and reach of a forecast at a moment. */
export function summariseForecast(forecast: Forecast, at: EpochSeconds): ForecastSummary {
  const { place, attribution, fetchedAt } = forecast;
  return {
    attribution,
    invented: forecast.invented === true,
    fetchedAt: instantText(fetchedAt),
    ageHours: Math.round(ageHours(forecast, at) * 100) / 100,
    reachesTo: instantText(reachesFrom(forecast, at) ?? fetchedAt),
    latitude: place.latitude,
    longitude: place.longitude,
    distanceKm: Math.round(place.distanceKm * 100) / 100,
  };
}
