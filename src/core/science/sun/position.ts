import type { EpochSeconds } from '../../units/brands.ts';
import { inRange } from '../../units/in-range.ts';

/** A place on the earth, degrees; north and east are positive. */
export interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

/** Where the middle of the sun stands, degrees. */
export interface SunPosition {
  /** True height above the horizon, -90 to 90, without refraction. */
  readonly elevationDeg: number;
  /** Direction, clockwise from north, 0 to below 360. */
  readonly azimuthDeg: number;
  /** Degrees since the sun stood highest, -180 to below 180; 15 are one hour. */
  readonly hourAngleDeg: number;
}

const radians = Math.PI / 180;
/** 2000-01-01T12:00Z, the epoch J2000.0. */
const j2000 = 946_728_000;
const sin = (degrees: number) => Math.sin(degrees * radians);
const cos = (degrees: number) => Math.cos(degrees * radians);
const turn = (degrees: number) => ((degrees % 360) + 360) % 360;

/**
 * Position of the sun at a moment from 1900 to 2100, good to about 0.01 degrees: low-accuracy longitude of Meeus 1998,
 * Astronomical Algorithms, 2nd ed., eq. 25.2 to 25.8 (with the mean sidereal time of eq. 12.4 and eq. 13.5, 13.6).
 */
export function sunPosition({ latitude, longitude }: Place, at: EpochSeconds): SunPosition {
  inRange('a latitude', latitude, -90, 90, 'degrees');
  inRange('a longitude', longitude, -180, 180, 'degrees');
  const days = (inRange('a moment of 1900 to 2100', at, -2_208_988_800, 4_133_980_800, 's') - j2000) / 86_400;
  const { rightAscension, declination } = sunCoordinates(days / 36_525);
  const siderealTime = 280.46061837 + 360.98564736629 * days;
  const hourAngleDeg = turn(siderealTime + longitude - rightAscension + 180) - 180;
  const height = sin(latitude) * sin(declination) + cos(latitude) * cos(declination) * cos(hourAngleDeg);
  const east = -cos(declination) * sin(hourAngleDeg);
  const north = cos(latitude) * sin(declination) - sin(latitude) * cos(declination) * cos(hourAngleDeg);
  return {
    elevationDeg: Math.asin(Math.max(-1, Math.min(1, height))) / radians,
    azimuthDeg: turn(Math.atan2(east, north) / radians),
    hourAngleDeg,
  };
}

/** Apparent right ascension and declination of the sun in degrees, `centuries` Julian centuries after J2000.0. */
function sunCoordinates(centuries: number): { rightAscension: number; declination: number } {
  const meanLongitude = 280.46646 + centuries * (36_000.76983 + 0.0003032 * centuries);
  const anomaly = 357.52911 + centuries * (35_999.05029 - 0.0001537 * centuries);
  const centre =
    (1.914602 - centuries * (0.004817 + 0.000014 * centuries)) * sin(anomaly) +
    (0.019993 - 0.000101 * centuries) * sin(2 * anomaly) +
    0.000289 * sin(3 * anomaly);
  const node = 125.04 - 1934.136 * centuries;
  const longitude = meanLongitude + centre - 0.00569 - 0.00478 * sin(node);
  const obliquity = 23.4392911 - 0.0130042 * centuries + 0.00256 * cos(node);
  return {
    rightAscension: Math.atan2(cos(obliquity) * sin(longitude), cos(longitude)) / radians,
    declination: Math.asin(sin(obliquity) * sin(longitude)) / radians,
  };
}
