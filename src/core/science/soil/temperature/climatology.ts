import { codedError } from '../../../errors/coded-error.ts';
import { inRange } from '../../../units/in-range.ts';
import type { SiteClimatology } from './types.ts';

/** Latitude taken where none is known, degrees. */
const usualLatitudeDeg = 52;

/** Spread of places of one latitude about its mean, C: height above the sea and distance from it. */
const latitudeSdC = 3.5;
/** Spread of fields about the archive of their place, C: height and shelter within its cell. Our choice. */
const archiveSdC = 0.7;
/** Free days in the window of an archive's year, of which a mean is taken: days hang together. */
const freeDaysAYear = 4;

/** Spread of single days about the mean of their season where no archive tells, C, and what of it stays to the next day. */
const weatherSdC = 4;
export const weatherKept = 0.75;

/** What the air usually is at a place. */
export interface UsualAir {
  /** Mean of a day of the year (1 to 366), C. */
  readonly airC: (dayOfYear: number) => number;
  /** Spread of single days about it, C. */
  readonly weatherSdC: number;
  /** How far the place's own mean may lie from it, C. */
  readonly placeSdC: number;
}

/** What the air usually is, by the archive of the place where given, else by latitude alone. Throws SCIENCE_OUT_OF_RANGE. */
export function usualAirOf({
  latitudeDeg,
  climatology,
}: {
  readonly latitudeDeg: number | null;
  readonly climatology?: SiteClimatology;
}): UsualAir {
  if (climatology === undefined) {
    return {
      airC: (dayOfYear) => latitudeAirC(latitudeDeg, dayOfYear),
      weatherSdC,
      placeSdC: latitudeDeg === null ? latitudeSdC * 1.5 : latitudeSdC,
    };
  }
  const { meanAirCByDayOfYear: means, spreadC, years } = climatology;
  const isWhole = means.length === 366 && means.every((mean) => Math.abs(mean) <= 60);
  if (!(isWhole && spreadC > 0 && spreadC <= 20 && years >= 1)) {
    const expected = '366 means of -60 to 60 C, a spread above 0 C and at least one year';
    throw codedError('SCIENCE_OUT_OF_RANGE', { expected, came: `${means.length} means, ${spreadC} C, ${years} years` });
  }
  return {
    airC: (dayOfYear) => means[dayOfYear - 1]!,
    weatherSdC: spreadC,
    placeSdC: Math.hypot(archiveSdC, spreadC / Math.sqrt(freeDaysAYear * years)),
  };
}

/**
 * Mean air temperature of a day of the year (1 to 366) by latitude alone, C: a yearly wave that is coldest three weeks after
 * the winter solstice. From memory of climate tables, good to about 3.5 C in the lowlands of the middle latitudes.
 */
function latitudeAirC(latitudeDeg: number | null, dayOfYear: number): number {
  const latitude = inRange('a latitude', latitudeDeg ?? usualLatitudeDeg, -90, 90, 'degrees');
  const height = Math.abs(latitude);
  const mean = 27 - 0.34 * height;
  const half = Math.min(14, 0.16 * height);
  const coldest = latitude < 0 ? 197 : 15;
  return mean - half * Math.cos((2 * Math.PI * (dayOfYear - coldest)) / 365.25);
}
