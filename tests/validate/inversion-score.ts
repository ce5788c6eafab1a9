import { type InversionLimits, judgeInversion } from '../../src/core/science/air/inversion.ts';
import { extraterrestrialRadiationOfHour, tellsCloud } from '../../src/core/science/evapotranspiration/hour-sky.ts';
import { clearSkyRadiation } from '../../src/core/science/evapotranspiration/radiation.ts';
import type { Place } from '../../src/core/science/sun/position.ts';
import { windAtBoom } from '../../src/core/science/wind/at-boom.ts';
import { kilometresPerHour } from '../../src/core/units/brands.ts';
import type { TwoHeights } from './two-height-rows.ts';

/** What the signs said beside what was measured. */
export interface InversionScore {
  readonly inversions: number;
  readonly others: number;
  /** Share of measured inversions for which the signs said yes, or at least possible. */
  readonly hitYes: number;
  readonly hitPossible: number;
  /** Share of the other moments for which they said so. */
  readonly falseYes: number;
  readonly falsePossible: number;
}

/** What the signs read beside the record. */
export interface SignsInput {
  readonly place: Place;
  readonly limits: InversionLimits;
  readonly boomHeightM: number;
  readonly canopyHeightM: number;
  /** Warmer at 10 m than at 2 m by more than this is an inversion, C. */
  readonly aboveC: number;
  /** By how much the upper thermometer is taken to read too warm, C. */
  readonly offsetC: number;
  /** Cloud from what the sun lacks of a clear sky, or not known. */
  readonly cloud: 'from-sun' | 'unknown';
}

/** Mean difference from 2 to 10 m in C while the sun is up for certain (over 100 W/m2), when no inversion can be; 0 without such rows. */
export function differenceByDay(rows: readonly TwoHeights[]): number {
  const day = rows.filter(({ solarWPerM2 }) => solarWPerM2 > 100);
  const sum = day.reduce((total, row) => total + row.temperature10mC - row.temperature2mC, 0);
  return day.length === 0 ? 0 : sum / day.length;
}

/** Scores the signs (calm, clear, evening to morning) against the difference of temperature from 2 to 10 m. */
export function scoreInversions(rows: readonly TwoHeights[], input: SignsInput): InversionScore {
  const { place, limits, boomHeightM, canopyHeightM, aboveC, offsetC } = input;
  const clouds = input.cloud === 'unknown' ? [] : cloudOf(rows, place);
  const judged = rows.map((row, index) => {
    const windKmh = windAtBoom(kilometresPerHour(row.wind10mMPerS * 3.6), { boomHeightM, canopyHeightM });
    const { risk } = judgeInversion({ place, at: row.at, windKmh, cloudPercent: clouds[index] ?? null }, limits);
    return { risk, isInversion: row.temperature10mC - row.temperature2mC - offsetC > aboveC };
  });
  const share = (isInversion: boolean, risks: readonly string[]) => {
    const of = judged.filter((one) => one.isInversion === isInversion);
    return of.filter(({ risk }) => risks.includes(risk)).length / of.length;
  };
  return {
    inversions: judged.filter(({ isInversion }) => isInversion).length,
    others: judged.filter(({ isInversion }) => !isInversion).length,
    hitYes: share(true, ['yes']),
    hitPossible: share(true, ['yes', 'possible']),
    falseYes: share(false, ['yes']),
    falsePossible: share(false, ['yes', 'possible']),
  };
}

/** Cloud in percent: what the sun lacks of a clear sky while it stands high; at night as the sun last or next told it. */
function cloudOf(rows: readonly TwoHeights[], { latitude, longitude }: Place): (number | null)[] {
  const told = rows.map(({ at, solarWPerM2 }) => {
    const date = new Date(at * 1000);
    const dayOfYear = Math.floor((date.getTime() - Date.UTC(date.getUTCFullYear(), 0, 1)) / 86_400_000) + 1;
    const sky = { latitude, longitude, dayOfYear, middleUtcH: (at / 3600) % 24 };
    const clear = clearSkyRadiation(0, extraterrestrialRadiationOfHour(sky));
    if (!tellsCloud(sky) || clear <= 0) return null;
    return Math.max(0, Math.min(100, 100 * (1 - (solarWPerM2 * 0.0036) / clear)));
  });
  const smooth = told.map((_, index) => {
    const around = told.slice(Math.max(0, index - 12), index + 13).filter((one) => one !== null);
    return around.length === 0 ? null : around.reduce((sum, one) => sum + one, 0) / around.length;
  });
  const first = smooth.find((one) => one !== null) ?? null;
  let last = first;
  return smooth.map((one) => {
    last = one ?? last;
    return last;
  });
}
