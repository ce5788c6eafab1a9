import { climateSdC, usualAirC, weatherKept, weatherSdC } from './climatology.ts';
import type { AirError } from './state.ts';
import type { SoilTemperatureInput } from './types.ts';

/** Air of one day as the model takes it. */
export interface AirOfDay {
  readonly airC: number;
  readonly dayOfYear: number;
  readonly error: AirError;
  /** Neither measured nor forecast. */
  readonly isUsual: boolean;
}

/** Days over which passing weather averages out about as well as places of one latitude differ. */
const weatherDays = 8;

/** Error of a forecast of the day's mean air temperature by days ahead, C: standard error, from memory of published scores of weather models. */
export function airForecastSdC(daysAhead: number): number {
  return daysAhead <= 0 ? 0 : Math.min(weatherSdC, 0.6 + 0.3 * daysAhead);
}

/** What of the error of a forecast day stays in the next, and of a day for which the usual air stands in. */
const forecastErrorKept = 0.7;
const usualErrorKept = 0.9;

/** Day of the year (1 to 366) of a day written YYYY-MM-DD. */
export function dayOfYear(iso: string): number {
  const [year, month, day] = iso.split('-').map(Number) as [number, number, number];
  return Math.round((Date.UTC(year, month - 1, day) - Date.UTC(year, 0, 1)) / 86_400_000) + 1;
}

/** How far the place is from what its latitude tells, C, from the past days whose air is known, and what remains unsure. */
export interface PlaceShift {
  readonly shiftC: number;
  readonly variance: number;
}

/** Shrunken mean of the past days' departures from the usual air; none known gives none. */
export function placeShift({ days, latitudeDeg, at }: SoilTemperatureInput): PlaceShift {
  const known = days.filter((day) => day.airC !== null && day.at <= at);
  const sum = known.reduce((total, { airC, iso }) => total + (airC ?? 0) - usualAirC(latitudeDeg, dayOfYear(iso)), 0);
  const count = known.length;
  const spread = latitudeDeg === null ? climateSdC * 1.5 : climateSdC;
  return { shiftC: sum / (count + weatherDays), variance: (spread ** 2 * weatherDays) / (count + weatherDays) };
}

/**
 * Air of every day with its error. Where it is not known, the usual air of the place stands in, starting from the departure of
 * the last known day, which fades. Errors of forecast days grow with lead time and hang together from day to day.
 */
export function airOfDays(input: SoilTemperatureInput, shift: PlaceShift): readonly AirOfDay[] {
  const factor = input.airErrorFactor ?? 1;
  const knownUntil = input.airKnownUntil ?? input.at;
  const usualVariance = weatherSdC ** 2 + shift.variance;
  let departure = 0;
  let variance = 0;
  return input.days.map(({ at, iso, airC }) => {
    const ofYear = dayOfYear(iso);
    const usual = usualAirC(input.latitudeDeg, ofYear) + shift.shiftC;
    if (airC === null) {
      departure *= weatherKept;
      const own = usualVariance * (1 - usualErrorKept ** 2);
      variance = own + usualErrorKept ** 2 * variance;
      const error = { kept: usualErrorKept, variance: own };
      return { airC: usual + departure, dayOfYear: ofYear, error, isUsual: true };
    }
    departure = airC - usual;
    const wanted = (factor * airForecastSdC((at - knownUntil) / 86_400)) ** 2;
    const kept = wanted === 0 ? 0 : Math.min(forecastErrorKept, variance === 0 ? 1 : Math.sqrt(wanted / variance));
    const error = { kept, variance: wanted - kept ** 2 * variance };
    variance = wanted;
    return { airC, dayOfYear: ofYear, error, isUsual: false };
  });
}
