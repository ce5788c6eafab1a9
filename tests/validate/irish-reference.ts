import type { IrishDay, IrishStation } from '../../src/adapters/weather-records/irish-days.ts';
import { isLoamwardError } from '../../src/core/errors/coded-error.ts';
import { referenceEvapotranspirationOfDay, type StationDay } from '../../src/core/science/evapotranspiration/day.ts';
import { daylightHours } from '../../src/core/science/evapotranspiration/sky.ts';
import { metresPerSecond } from '../../src/core/units/brands.ts';

/** What the estimate may see: all that was measured, or without radiation and sunshine, or without wind too. */
export type Seen = 'all' | 'no-radiation' | 'temperature-only';

/** Our reference evapotranspiration of a day in mm from what was measured; null where temperature is missing or nothing fits. */
export function irishReference({ latitude, elevationM }: IrishStation, day: IrishDay, seen: Seen): number | null {
  const { highestC, lowestC, windMPerS, dayOfYear } = day;
  if (highestC === null || lowestC === null || highestC < lowestC) return null;
  try {
    return referenceEvapotranspirationOfDay({
      latitude,
      elevationM,
      dayOfYear,
      highestC,
      lowestC,
      humidity: { unknown: true },
      wind: seen === 'temperature-only' || windMPerS === null ? null : metresPerSecond(windMPerS),
      windHeightM: 10,
      sun: sunOf(day, latitude, seen),
    });
  } catch (error) {
    if (isLoamwardError(error)) return null;
    throw error;
  }
}

function sunOf({ radiation, sunshineH, dayOfYear }: IrishDay, latitude: number, seen: Seen): StationDay['sun'] {
  if (seen !== 'all') return { unknown: 'coast' };
  if (radiation !== null) return { solarRadiation: radiation };
  return sunshineH === null
    ? { unknown: 'coast' }
    : { sunshineH: Math.min(sunshineH, daylightHours(latitude, dayOfYear)) };
}
