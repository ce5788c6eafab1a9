import { inRange } from '../../units/in-range.ts';

const radians = Math.PI / 180;
/** Solar constant, MJ/m2/min (FAO-56 eq. 21). */
const solarConstant = 0.082;

/** Inverse relative distance from earth to sun on a day of the year, 1 to 366 (FAO-56 eq. 23). */
export function inverseSunDistance(dayOfYear: number): number {
  return 1 + 0.033 * Math.cos(yearAngle(dayOfYear));
}

/** Declination of the sun in radians on a day of the year, 1 to 366 (FAO-56 eq. 24). */
export function declination(dayOfYear: number): number {
  return 0.409 * Math.sin(yearAngle(dayOfYear) - 1.39);
}

/** Hour angle of sunset in radians at a latitude in degrees (FAO-56 eq. 25): 0 where the sun stays down, pi where it stays up. */
export function sunsetHourAngle(latitude: number, dayOfYear: number): number {
  const phi = inRange('a latitude', latitude, -90, 90, 'degrees') * radians;
  const cosine = -Math.tan(phi) * Math.tan(declination(dayOfYear));
  return Math.acos(Math.max(-1, Math.min(1, cosine)));
}

/** Possible hours of daylight, 0 to 24 (FAO-56 eq. 34); the sun as a point without refraction. */
export function daylightHours(latitude: number, dayOfYear: number): number {
  return (24 / Math.PI) * sunsetHourAngle(latitude, dayOfYear);
}

/** Radiation that meets the top of the air in MJ/m2/day at a latitude in degrees (FAO-56 eq. 21). */
export function extraterrestrialRadiation(latitude: number, dayOfYear: number): number {
  const angle = sunsetHourAngle(latitude, dayOfYear);
  const phi = latitude * radians;
  const delta = declination(dayOfYear);
  const height = angle * Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.sin(angle);
  return Math.max(0, ((24 * 60) / Math.PI) * solarConstant * inverseSunDistance(dayOfYear) * height);
}

function yearAngle(dayOfYear: number): number {
  return (2 * Math.PI * inRange('a day of the year', dayOfYear, 1, 366, '')) / 365;
}
