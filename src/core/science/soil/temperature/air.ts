import { usualAirOf, weatherKept } from './climatology.ts';
import type { MovingAir } from './state.ts';
import type { SoilTemperatureInput } from './types.ts';

/** Air of one day as the model takes it. */
export interface AirOfDay extends MovingAir {
  /** Neither measured nor forecast. */
  readonly isUsual: boolean;
}

/** Variance of a mean over hanging-together days against that of free ones (a day keeps three quarters of the day before). */
export const hangingTogether = 7;

/** Error beyond which no forecast goes, C: that of the usual air. */
const mostForecastSdC = 4;

/** Error of a forecast of the day's mean air temperature by days ahead, C: standard error, from memory of published scores of weather models. */
export function airForecastSdC(daysAhead: number): number {
  return daysAhead <= 0 ? 0 : Math.min(mostForecastSdC, 0.6 + 0.3 * daysAhead);
}

/** What of the error of a forecast day stays in the next, and of a day for which the usual air stands in. */
const forecastErrorKept = 0.7;
const usualErrorKept = 0.9;

/** Days before each month of a common year. */
const daysBefore = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/** Day of the year (1 to 366) of a day written YYYY-MM-DD. */
export function dayOfYear(iso: string): number {
  const year = 100 * twoDigits(iso, 0) + twoDigits(iso, 2);
  const month = twoDigits(iso, 5);
  const isLeap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return daysBefore[month - 1]! + twoDigits(iso, 8) + (isLeap && month > 2 ? 1 : 0);
}

/** The number that two digits of a text make. */
function twoDigits(text: string, at: number): number {
  return 10 * text.charCodeAt(at) + text.charCodeAt(at + 1) - 11 * zeroCode;
}

const zeroCode = 48;

/** How far the place is from what its latitude or its archive tells, C, from the past days whose air is known, and what remains unsure. */
export interface PlaceShift {
  readonly shiftC: number;
  readonly variance: number;
}

/** Shrunken mean of the past days' departures from the usual air; none known gives none. */
export function placeShift(input: SoilTemperatureInput): PlaceShift {
  const usual = usualAirOf(input);
  const known = input.days.filter((day) => day.airC !== null && day.at <= input.at);
  const sum = known.reduce((total, { airC, iso }) => total + (airC ?? 0) - usual.airC(dayOfYear(iso)), 0);
  const worth = (hangingTogether * usual.weatherSdC ** 2) / usual.placeSdC ** 2;
  return { shiftC: sum / (known.length + worth), variance: (usual.placeSdC ** 2 * worth) / (known.length + worth) };
}

/**
 * Air of every day with its error. Where it is not known, the usual air of the place stands in, starting from the departure of
 * the last known day, which fades. Errors of forecast days grow with lead time and hang together from day to day.
 */
export function airOfDays(input: SoilTemperatureInput, shift: PlaceShift): readonly AirOfDay[] {
  const factor = input.airErrorFactor ?? 1;
  const knownUntil = input.airKnownUntil ?? input.at;
  const usually = usualAirOf(input);
  const usualVariance = usually.weatherSdC ** 2 + shift.variance;
  let departure = 0;
  let variance = 0;
  return input.days.map(({ at, iso, airC }) => {
    const ofYear = dayOfYear(iso);
    const usual = usually.airC(ofYear) + shift.shiftC;
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
    const error = { kept, variance: Math.max(0, wanted - kept ** 2 * variance) };
    variance = wanted;
    return { airC, dayOfYear: ofYear, error, isUsual: false };
  });
}
