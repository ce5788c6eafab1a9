import { codedError } from '../../../errors/coded-error.ts';
import { dampingDepth, waveShare } from '../heat-wave.ts';
import type { SoilReading, SoilTemperatureInput } from './types.ts';

/** Readings nearer to each other in time than this are of one visit, s. */
const visitSeconds = 3600;
/** Equal readings in a row from which on a sensor counts as standing still, and the days that they must span. */
const stuckReadings = 5;
const stuckSeconds = 4 * 86_400;
/** Least standard error of a reading, C. */
const leastSdC = 0.05;
const depthModel = { depthM: 0.3, diffusivityM2PerS: 5e-7 };
const dailyWave = { diffusivityM2PerS: depthModel.diffusivityM2PerS, periodS: 86_400 };
/** Half the daily span of the surface in autumn, and the difference between depths over days, C per damping depth of the day. */
const surfaceHalfSpanC = 4;
const depthDifferenceC = 0.8;
/** What the soil below 30 cm keeps of the season, C for the root of each m below: fitted on even years of Reynolds Creek 057x96 (docs/science.md). */
const keptBelowC = 6.8;

/** A reading as the model takes it: on the day of that index, with its error variance in C2. */
export interface TakenReading {
  readonly index: number;
  readonly valueC: number;
  readonly variance: number;
}

/**
 * Readings up to the moment of asking, by day and in order of time. Left out: values that soil at 30 cm cannot have (outside
 * -20 to 45 C, so a typed 85), readings outside the days, and all but the first of a sensor that shows one value for four days
 * and five readings. Readings of one visit are joined; where they disagree, their spread widens the error.
 */
export function takeReadings({ readings, days, at }: SoilTemperatureInput): readonly TakenReading[] {
  const usable = readings
    .filter((one) => one.at <= at + 60 && one.valueC >= -20 && one.valueC <= 45)
    .toSorted((a, b) => a.at - b.at);
  const joined = visits(withoutStuck(usable)).flatMap((visit) => {
    const newest = visit.at(-1)!;
    const index = dayIndex(days, newest.at);
    if (index === null) return [];
    const parts = visit.map((one) => ({ valueC: one.valueC, variance: errorVariance(one) }));
    const valueC = parts.reduce((sum, one) => sum + one.valueC, 0) / parts.length;
    const spread = parts.reduce((most, one) => Math.max(most, (one.valueC - valueC) ** 2), 0);
    return [{ index, valueC, variance: Math.max(...parts.map(({ variance }) => variance)) + spread }];
  });
  return joined;
}

/** Error variance of a reading in C2, wider where it was taken at another depth than 30 cm by the damping of the daily wave (Hillel 1982), and more so below. */
export function errorVariance({ sdC, depthM = depthModel.depthM }: SoilReading): number {
  if (!(sdC >= 0 && depthM >= 0.05 && depthM <= 1)) {
    throw codedError('SCIENCE_OUT_OF_RANGE', {
      expected: 'a standard error of 0 C or more and a depth of 0.05 to 1 m',
      came: `${sdC} C at ${depthM} m`,
    });
  }
  const own = Math.max(leastSdC, sdC) ** 2;
  const apart = Math.abs(depthM - depthModel.depthM);
  if (apart === 0) return own;
  const daily = surfaceHalfSpanC * Math.abs(waveShare(dailyWave, depthM) - waveShare(dailyWave, depthModel.depthM));
  const overDays = (depthDifferenceC * apart) / dampingDepth(dailyWave);
  const below = Math.max(0, depthM - depthModel.depthM);
  return own + daily ** 2 + overDays ** 2 + keptBelowC ** 2 * below;
}

function dayIndex(days: SoilTemperatureInput['days'], at: number): number | null {
  const index = days.findIndex((day) => Math.abs(day.at - at) <= 43_200 + 3600);
  return index < 0 ? null : index;
}

function visits(readings: readonly SoilReading[]): SoilReading[][] {
  const groups: SoilReading[][] = [];
  for (const reading of readings) {
    const group = groups.at(-1);
    const first = group?.[0];
    if (group && first && reading.at - first.at <= visitSeconds) group.push(reading);
    else groups.push([reading]);
  }
  return groups;
}

/** True where readings, oldest first, end in one value shown for four days and five readings, as by a sensor that stands still. */
export function isStuckAtEnd(readings: readonly Pick<SoilReading, 'at' | 'valueC'>[]): boolean {
  const last = readings.at(-1)?.valueC;
  return isStuck(readings.slice(readings.findLastIndex(({ valueC }) => valueC !== last) + 1));
}

function isStuck(row: readonly Pick<SoilReading, 'at' | 'valueC'>[]): boolean {
  return row.length >= stuckReadings && row.at(-1)!.at - row[0]!.at >= stuckSeconds;
}

function withoutStuck(readings: readonly SoilReading[]): SoilReading[] {
  const kept: SoilReading[] = [];
  for (let start = 0; start < readings.length; ) {
    let end = start + 1;
    while (end < readings.length && readings[end]!.valueC === readings[start]!.valueC) end += 1;
    kept.push(...readings.slice(start, isStuck(readings.slice(start, end)) ? start + 1 : end));
    start = end;
  }
  return kept;
}
