import type { EpochSeconds } from '../../units/brands.ts';
import { inRange } from '../../units/in-range.ts';
import type { Place } from '../sun/position.ts';
import { sunriseAndSunset } from '../sun/times.ts';

/** When a sign of a temperature inversion counts; a pack's parameters say the numbers. */
export interface InversionLimits {
  /** Nearly calm: wind at boom height below this, km/h. */
  readonly calmBelowKmh: number;
  /** Clear sky: cloud cover at most this, percent. */
  readonly clearAtMostPercent: number;
  /** The evening begins so many hours before sunset. */
  readonly hoursBeforeSunset: number;
  /** The morning ends so many hours after sunrise. */
  readonly hoursAfterSunrise: number;
}

/** The air at a place and moment; null where not known. */
export interface InversionAir {
  readonly place: Place;
  readonly at: EpochSeconds;
  /** Wind at boom height, km/h. */
  readonly windKmh: number | null;
  /** Share of the sky covered by cloud, percent. */
  readonly cloudPercent: number | null;
}

/** Whether a sign is there; null where it cannot be told. */
export interface InversionSigns {
  readonly calm: boolean | null;
  readonly clear: boolean | null;
  readonly eveningToMorning: boolean;
}

/** What the signs say together, and which they are. */
export interface InversionRisk {
  readonly risk: 'yes' | 'possible' | 'no';
  readonly signs: InversionSigns;
}

/**
 * Whether the signs of a temperature inversion are there: nearly calm, clear sky, and evening to morning. All three: yes. By
 * day, or neither calm nor clear: no. Else, and where calm or clear is unknown, possible: look for smoke that hangs, mist,
 * dew or frost. Signs as in the guidance of Canadian and Australian grower bodies (read); common practice, no equation.
 */
export function judgeInversion(air: InversionAir, limits: InversionLimits): InversionRisk {
  const signs: InversionSigns = {
    calm: air.windKmh === null ? null : wind(air.windKmh) < limits.calmBelowKmh,
    clear: air.cloudPercent === null ? null : cloud(air.cloudPercent) <= limits.clearAtMostPercent,
    eveningToMorning: isEveningToMorning(air, limits),
  };
  return { risk: riskOf(signs), signs };
}

function riskOf({ calm, clear, eveningToMorning }: InversionSigns): InversionRisk['risk'] {
  if (!eveningToMorning || (calm === false && clear === false)) return 'no';
  return calm && clear ? 'yes' : 'possible';
}

function isEveningToMorning({ place, at }: InversionAir, limits: InversionLimits): boolean {
  const { sunrise, sunset, upAtNoon } = sunriseAndSunset(place, at);
  if (sunrise === null && sunset === null) return !upAtNoon;
  const morning = sunrise !== null && at <= sunrise + limits.hoursAfterSunrise * 3600;
  return morning || (sunset !== null && at >= sunset - limits.hoursBeforeSunset * 3600);
}

function wind(kmh: number): number {
  return inRange('a wind at boom height', kmh, 0, 450, 'km/h');
}

function cloud(percent: number): number {
  return inRange('a cloud cover', percent, 0, 100, '%');
}
