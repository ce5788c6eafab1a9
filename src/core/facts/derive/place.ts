import type { EpochSeconds } from '../../units/brands.ts';
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
