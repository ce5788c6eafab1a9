import { sunriseAndSunset } from '../../science/sun/times.ts';
import { type EpochSeconds, epochSeconds } from '../../units/brands.ts';
import { hourSeconds } from '../../weather/series.ts';
import type { FactContext } from '../context.ts';
import { asNumber, earliest } from './derived.ts';

/** Where the sun is looked at from, degrees, and until when that is known. */
export interface SunPlace {
  readonly latitude: number;
  readonly longitude: number;
  readonly goodUntil: EpochSeconds | null;
}

/** The field's place, else the point for which the forecast was asked; null where neither is known. */
export function sunPlaceOf({ fact, trusted }: FactContext): SunPlace | null {
  const latitude = asNumber(fact('field.latitude'));
  const longitude = asNumber(fact('field.longitude'));
  if (latitude !== null && longitude !== null) {
    const goodUntil = earliest(latitude.goodUntil, longitude.goodUntil);
    return { latitude: latitude.value, longitude: longitude.value, goodUntil };
  }
  if (trusted === null) return null;
  const { askedLatitude, askedLongitude } = trusted.forecast.place;
  return { latitude: askedLatitude, longitude: askedLongitude, goodUntil: null };
}

/**
 * The next moment after `at` that lies so many hours before a sunset or after a sunrise; null where the sun neither rises
 * nor sets within a day.
 */
export function nextSunMark(
  place: SunPlace,
  at: EpochSeconds,
  hoursBeforeSunset: number,
  hoursAfterSunrise: number,
): EpochSeconds | null {
  const marksOf = (day: EpochSeconds) => {
    const { sunrise, sunset } = sunriseAndSunset(place, day);
    const marks = [
      sunrise === null ? null : epochSeconds(sunrise + hoursAfterSunrise * hourSeconds),
      sunset === null ? null : epochSeconds(sunset - hoursBeforeSunset * hourSeconds),
    ];
    return earliest(...marks.filter((mark) => mark !== null && mark > at));
  };
  return marksOf(at) ?? marksOf(epochSeconds(at + 24 * hourSeconds));
}
