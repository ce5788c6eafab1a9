import { inRange } from '../../units/in-range.ts';
import { declination, inverseSunDistance, sunsetHourAngle } from './sky.ts';

const radians = Math.PI / 180;
/** Solar constant, MJ/m2/min (FAO-56 eq. 28). */
const solarConstant = 0.082;

/** A place and an hour of the day there. */
export interface SkyHour {
  /** Degrees, north and east positive. */
  readonly latitude: number;
  readonly longitude: number;
  /** 1 to 366. */
  readonly dayOfYear: number;
  /** Middle of the hour, hours after midnight UTC, 0 to 24. */
  readonly middleUtcH: number;
}

/** Seasonal correction of solar time in hours on a day of the year, 1 to 366 (FAO-56 eq. 32 and 33). */
export function seasonalCorrection(dayOfYear: number): number {
  const b = (2 * Math.PI * (inRange('a day of the year', dayOfYear, 1, 366, '') - 81)) / 364;
  return 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b);
}

/** Hour angle of the sun in radians at the middle of an hour, -pi to pi, 0 at solar noon (FAO-56 eq. 31, zone taken as UTC). */
export function solarHourAngle({ longitude, dayOfYear, middleUtcH }: SkyHour): number {
  inRange('a longitude', longitude, -180, 180, 'degrees');
  inRange('an hour of the day', middleUtcH, 0, 24, 'h');
  const solarTime = middleUtcH + longitude / 15 + seasonalCorrection(dayOfYear);
  const angle = (Math.PI / 12) * (solarTime - 12);
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

/** Radiation that meets the top of the air in that hour, MJ/m2/h (FAO-56 eq. 28 to 30); only while the sun is up. */
export function extraterrestrialRadiationOfHour(hour: SkyHour): number {
  const sunset = sunsetHourAngle(hour.latitude, hour.dayOfYear);
  const middle = solarHourAngle(hour);
  const first = Math.max(-sunset, middle - Math.PI / 24);
  const last = Math.min(sunset, middle + Math.PI / 24);
  if (last <= first) return 0;
  const phi = hour.latitude * radians;
  const delta = declination(hour.dayOfYear);
  const height =
    (last - first) * Math.sin(phi) * Math.sin(delta) +
    Math.cos(phi) * Math.cos(delta) * (Math.sin(last) - Math.sin(first));
  return Math.max(0, ((12 * 60) / Math.PI) * solarConstant * inverseSunDistance(hour.dayOfYear) * height);
}

/** True where the sun stands so that its radiation tells the cloud of the coming night: not later than 0.52 rad before sunset. */
export function tellsCloud(hour: SkyHour): boolean {
  return Math.abs(solarHourAngle(hour)) <= sunsetHourAngle(hour.latitude, hour.dayOfYear) - 0.52;
}
