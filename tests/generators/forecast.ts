import { type EpochSeconds, epochSeconds } from '../../src/core/units/brands.ts';
import type { Forecast, ForecastPlace, WeatherVariable } from '../../src/core/weather/forecast.ts';

/** One column: the same number every hour, or a number (null = missing) by stamp and index. */
export type Column = number | ((time: EpochSeconds, index: number) => number | null);

/** What an invented forecast is built from; all but `from` has a calm, dry, mild default. */
export interface ForecastPlan {
  readonly from: EpochSeconds;
  readonly hours?: number;
  readonly fetchedAt?: EpochSeconds;
  readonly place?: Partial<ForecastPlace>;
  /** Null leaves the column out. */
  readonly columns?: Readonly<Partial<Record<WeatherVariable, Column | null>>>;
}

const defaults: Readonly<Partial<Record<WeatherVariable, Column>>> = {
  temperature2mC: 8,
  relativeHumidity2mPercent: 80,
  precipitationMm: 0,
  windSpeed10mKmh: 10,
  windGusts10mKmh: 16,
  cloudCoverPercent: 100,
  et0Mm: 0.02,
};

const defaultPlace: ForecastPlace = {
  askedLatitude: 53,
  askedLongitude: -1,
  latitude: 53,
  longitude: -1,
  elevationM: 60,
  distanceKm: 0,
};

/** An invented forecast: stamps from `from` on, default 8 days of them, fetched at `from` unless said otherwise. */
export function buildForecast({
  from,
  hours = 192,
  fetchedAt = from,
  place = {},
  columns = {},
}: ForecastPlan): Forecast {
  const times = Array.from({ length: hours }, (_, index) => epochSeconds(from + index * 3600));
  const values: Partial<Record<WeatherVariable, readonly (number | null)[]>> = {};
  for (const [variable, column] of Object.entries({ ...defaults, ...columns }) as [WeatherVariable, Column | null][]) {
    if (column === null) continue;
    values[variable] = times.map((time, index) => (typeof column === 'number' ? column : column(time, index)));
  }
  return { place: { ...defaultPlace, ...place }, fetchedAt, attribution: 'invented', invented: true, times, values };
}
