import { inRange } from '../../../units/in-range.ts';

/** Latitude taken where none is known, degrees. */
const usualLatitudeDeg = 52;

/** Spread of places of one latitude about its mean, C: height above the sea and distance from it. */
export const climateSdC = 3.5;

/** Spread of single days about the mean of their season, C, and what of it stays to the next day. */
export const weatherSdC = 4;
export const weatherKept = 0.75;

/**
 * Mean air temperature of a day of the year (1 to 366) by latitude alone, C: a yearly wave that is coldest three weeks after
 * the winter solstice. From memory of climate tables, good to about `climateSdC` in the lowlands of the middle latitudes.
 */
export function usualAirC(latitudeDeg: number | null, dayOfYear: number): number {
  const latitude = inRange('a latitude', latitudeDeg ?? usualLatitudeDeg, -90, 90, 'degrees');
  const height = Math.abs(latitude);
  const mean = 27 - 0.34 * height;
  const half = Math.min(14, 0.16 * height);
  const coldest = latitude < 0 ? 197 : 15;
  return mean - half * Math.cos((2 * Math.PI * (dayOfYear - coldest)) / 365.25);
}
