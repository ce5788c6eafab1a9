import type { SiteClimatology } from '../science/soil/temperature/index.ts';
import type { EpochSeconds } from '../units/brands.ts';

/** Hourly variables that a forecast may hold, in our units. Sums and gusts belong to the hour before the stamp. */
export type WeatherVariable =
  | 'temperature2mC'
  | 'relativeHumidity2mPercent'
  | 'dewPoint2mC'
  | 'precipitationMm'
  | 'windSpeed10mKmh'
  | 'windGusts10mKmh'
  | 'windDirection10mDeg'
  | 'cloudCoverPercent'
  | 'shortwaveRadiationWPerM2'
  | 'et0Mm'
  | 'soilTemperature6cmC'
  | 'soilTemperature18cmC'
  | 'soilTemperature54cmC'
  | 'soilMoisture3to9cmM3PerM3'
  | 'soilMoisture9to27cmM3PerM3';

/** Where the forecast was asked for and which grid cell answered. */
export interface ForecastPlace {
  readonly askedLatitude: number;
  readonly askedLongitude: number;
  readonly latitude: number;
  readonly longitude: number;
  /** Height above sea level that the service used, m; null where it said none. */
  readonly elevationM: number | null;
  /** From the asked point to the cell, km. */
  readonly distanceKm: number;
}

/** An hourly forecast: evenly spaced stamps; null is missing and never zero. */
export interface Forecast {
  readonly place: ForecastPlace;
  /** When the reply came, epoch seconds UTC: the service gives no issue time, so age counts from here. */
  readonly fetchedAt: EpochSeconds;
  /** Name of the provider and licence line to show wherever its numbers show. */
  readonly attribution: string;
  /** True for invented weather: it is labelled so wherever it shows. */
  readonly invented?: true;
  /** What a reader should know about the numbers or their age, one sentence; absent where there is nothing to say. */
  readonly note?: string;
  /** Stamps, epoch seconds UTC, 3600 s apart, rising. */
  readonly times: readonly EpochSeconds[];
  /** One column a variable, as long as `times`; a variable that the model lacks has no column. */
  readonly values: Readonly<Partial<Record<WeatherVariable, readonly (number | null)[]>>>;
  /** What the air usually is at the place, from an archive of past years; absent where none was to be had. */
  readonly climatology?: SiteClimatology;
  /** Rain of each member of an ensemble, mm of the hour before the stamp, as long as `times`; absent where none was given. */
  readonly precipitationMembersMm?: readonly (readonly (number | null)[])[];
}
