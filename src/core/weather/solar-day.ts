import { DateTime } from 'luxon';
import type { DailyHumidity } from '../science/air/daily-vapour-pressure.ts';
import { referenceEvapotranspirationOfDay } from '../science/evapotranspiration/day.ts';
import { extraterrestrialRadiationOfHour, type SkyHour } from '../science/evapotranspiration/hour-sky.ts';
import { extraterrestrialRadiation } from '../science/evapotranspiration/sky.ts';
import { metresPerSecond } from '../units/brands.ts';
import type { Forecast, WeatherVariable } from './forecast.ts';
import { hourSeconds, valueAtIndex } from './series.ts';

/** A day from midnight to midnight by the sun, of 24 stamps of a forecast; at its ends the nearest 24. */
export interface SolarDay {
  readonly first: number;
  readonly last: number;
  /** Lowest and highest air temperature, C; null where any hour's is missing. */
  readonly airC: { readonly lowestC: number; readonly highestC: number } | null;
}

const dayHours = 24;

/** The solar day of every stamp, by index; stamps of a forecast shorter than a day have none. */
export function solarDays(forecast: Forecast): ReadonlyMap<number, SolarDay> {
  const count = forecast.times.length;
  const found = new Map<number, SolarDay>();
  if (count < dayHours) return found;
  const offset = (forecast.place.longitude / 15) * hourSeconds;
  const dayOf = (index: number) =>
    Math.floor(((forecast.times[index] ?? Number.NaN) - hourSeconds / 2 + offset) / 86_400);
  for (let first = 0; first < count; ) {
    let end = first + 1;
    while (dayOf(end) === dayOf(first)) end += 1;
    const from = Math.min(first, count - dayHours);
    const hours = { first: from, last: from + dayHours - 1 };
    const day = { ...hours, airC: extremes(column(forecast, 'temperature2mC', hours)) };
    for (let index = first; index < end; index += 1) found.set(index, day);
    first = end;
  }
  return found;
}

/** Where and when in the day the hour before a stamp lies. */
export function skyHourOf({ place, times }: Forecast, index: number): SkyHour {
  const middle = DateTime.fromSeconds((times[index] ?? Number.NaN) - hourSeconds / 2, { zone: 'utc' });
  return {
    latitude: place.latitude,
    longitude: place.longitude,
    dayOfYear: middle.ordinal,
    middleUtcH: middle.hour + middle.minute / 60,
  };
}

/** Height above sea level in m; sea level where the service said none. */
export function elevationOf({ place }: Forecast): number {
  return place.elevationM ?? 0;
}

/**
 * The hour's part of the reference evapotranspiration of its day in mm, by the sun that meets the top of the air: for a day
 * without radiation, which FAO-56 eq. 50 takes from its range of temperature. Null where a temperature of the day is missing.
 */
export function spreadDay(forecast: Forecast, day: SolarDay, index: number): number | null {
  if (day.airC === null) return null;
  const sky = skyHourOf(forecast, index);
  const share = extraterrestrialRadiationOfHour(sky) / extraterrestrialRadiation(sky.latitude, sky.dayOfYear);
  const kmh = mean(column(forecast, 'windSpeed10mKmh', day));
  const mm = referenceEvapotranspirationOfDay({
    latitude: sky.latitude,
    elevationM: elevationOf(forecast),
    dayOfYear: sky.dayOfYear,
    ...day.airC,
    humidity: humidityOf(forecast, day),
    wind: kmh === null ? null : metresPerSecond(kmh / 3.6),
    windHeightM: 10,
    sun: { unknown: 'inland' },
  });
  return mm * share;
}

function humidityOf(forecast: Forecast, day: SolarDay): DailyHumidity {
  const dewPointC = mean(column(forecast, 'dewPoint2mC', day));
  if (dewPointC !== null) return { dewPointC };
  const percents = column(forecast, 'relativeHumidity2mPercent', day);
  if (percents === null) return { unknown: true };
  return { highestPercent: Math.max(...percents), lowestPercent: Math.min(...percents) };
}

function extremes(hours: readonly number[] | null): SolarDay['airC'] {
  return hours === null ? null : { lowestC: Math.min(...hours), highestC: Math.max(...hours) };
}

/** A variable over a day; null where any hour is missing. */
function column(
  forecast: Forecast,
  variable: WeatherVariable,
  { first, last }: Pick<SolarDay, 'first' | 'last'>,
): number[] | null {
  const hours: number[] = [];
  for (let index = first; index <= last; index += 1) {
    const value = valueAtIndex(forecast, variable, index);
    if (value === null) return null;
    hours.push(value);
  }
  return hours;
}

function mean(values: readonly number[] | null): number | null {
  return values === null ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
}
