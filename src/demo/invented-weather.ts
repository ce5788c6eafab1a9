import { type EpochSeconds, epochSeconds } from '../core/units/brands.ts';
import { remember } from '../core/units/remember.ts';
import type { Forecast, WeatherVariable } from '../core/weather/forecast.ts';
import { weatherVariables } from '../core/weather/variables.ts';
import { inventedRainMm, novemberHour } from './invented-rain.ts';

/** Where the invented farm lies: a whole degree somewhere in the hills of northern England, and no real farm. */
export const inventedPlace = { latitude: 54, longitude: -2, elevationM: 120 } as const;

/** Hours of invented weather before and after the moment of asking: 7 days back, 8 ahead. */
const hoursBack = 168;
const hoursAhead = 192;

const hour = 3600;

/**
 * The invented weather as a forecast fetched at an invented moment: a pure function of that moment, hourly, whole, labelled
 * invented. No number of it was measured or forecast anywhere.
 */
export function inventedForecast(fetchedAt: EpochSeconds): Forecast {
  return {
    place: {
      askedLatitude: inventedPlace.latitude,
      askedLongitude: inventedPlace.longitude,
      latitude: inventedPlace.latitude,
      longitude: inventedPlace.longitude,
      elevationM: inventedPlace.elevationM,
      distanceKm: 0,
    },
    fetchedAt,
    attribution: 'Invented weather of Hollin Bank Farm: not a forecast of any place.',
    invented: true,
    ...inventedHours(Math.floor(fetchedAt / hour) * hour - hoursBack * hour),
  };
}

/** Stamps and columns from a first stamp on; conversations begun in the same hour share them. */
const inventedHours = remember((first: number): Pick<Forecast, 'times' | 'values'> => {
  const times = Array.from({ length: hoursBack + hoursAhead + 1 }, (_, index) => epochSeconds(first + index * hour));
  const values = weatherVariables.map((variable) => [variable, times.map((time) => inventedValue[variable](time))]);
  return { times, values: Object.fromEntries(values) };
});

/** Days since the invented November began. */
function day(time: EpochSeconds): number {
  return (time - novemberHour(1, 0)) / (24 * hour);
}

/** 1 at 14:00, -1 at 02:00. */
function warmth(time: EpochSeconds): number {
  return Math.cos(((((time / hour) % 24) - 14) / 24) * 2 * Math.PI);
}

/** Air that cools slowly through the month and swings by day, C. `lagDays` and `swing` make soil of it. */
function temperature(time: EpochSeconds, swing: number, lagDays: number): number {
  const season = 9.6 - 0.11 * Math.min(Math.max(day(time) - lagDays, -20), 60);
  return rounded(season + swing * warmth(epochSeconds(time - lagDays * 2 * hour)), 1);
}

/** Share of the brightest hour, 0 at night: bright from about 08:00 to 16:00. */
function light(time: EpochSeconds): number {
  return Math.max(0, Math.cos(((((time / hour) % 24) - 12) / 9) * Math.PI));
}

/** Freshening when rain is near, km/h at 10 m. */
function wind(time: EpochSeconds): number {
  const near = [-6, -3, 0, 3, 6].some((hours) => inventedRainMm(epochSeconds(time + hours * hour)) >= 1);
  return rounded((near ? 22 : 6.5) + 1.5 * warmth(time), 1);
}

const inventedValue: Readonly<Record<WeatherVariable, (time: EpochSeconds) => number>> = {
  temperature2mC: (time) => temperature(time, 2.2, 0),
  relativeHumidity2mPercent: (time) => rounded(84 - 7 * warmth(time), 0),
  dewPoint2mC: (time) => rounded(temperature(time, 0.6, 0) - 2.6, 1),
  precipitationMm: inventedRainMm,
  windSpeed10mKmh: wind,
  windGusts10mKmh: (time) => rounded(wind(time) * 1.5, 1),
  windDirection10mDeg: () => 250,
  cloudCoverPercent: (time) => rounded(86 - 4 * warmth(time), 0),
  shortwaveRadiationWPerM2: (time) => rounded(150 * light(epochSeconds(time - hour / 2)), 0),
  et0Mm: (time) => rounded(0.012 + 0.09 * light(epochSeconds(time - hour / 2)), 3),
  soilTemperature6cmC: (time) => temperature(time, 0.9, 1),
  soilTemperature18cmC: (time) => temperature(time, 0.3, 3),
  soilTemperature54cmC: (time) => temperature(time, 0, 9),
  soilMoisture3to9cmM3PerM3: () => 0.33,
  soilMoisture9to27cmM3PerM3: () => 0.34,
};

function rounded(value: number, decimals: number): number {
  const scale = 10 ** decimals;
  return Math.round(value * scale) / scale;
}
