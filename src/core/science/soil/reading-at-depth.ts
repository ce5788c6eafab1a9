import { epochSeconds } from '../../units/brands.ts';
import { inRange } from '../../units/in-range.ts';
import { waveTemperature } from './heat-wave.ts';
import { errorVariance } from './temperature/readings.ts';

/** Depths in cm that a reading may be worked out from; nearer to the surface the air rules it, deeper the year does. */
export const servedDepthsCm: readonly [number, number] = [5, 100];

/** A common autumn day at the surface: half its span 3 C, coldest at 05:30 local time, in moist loam (common practice, no source). */
const autumnDay = { diffusivityM2PerS: 5e-7, periodS: 86_400, meanC: 0, amplitudeC: 3, coldestAtS: 5.5 * 3600 };

/** A temperature at 30 cm worked out from another depth, C, and half the band that holds 95 %, C. */
export interface WorkedOut {
  readonly valueC: number;
  readonly halfBandC: number;
}

/**
 * Temperature at 30 cm from one read at 5 to 100 cm at a local time (seconds of the day): the daily wave of the heat equation is
 * taken off at that depth and put on at 30 cm (Hillel 1982; Campbell & Norman 1998, ch. 2); the band holds the whole daily wave
 * between the depths and their difference over days. Throws SCIENCE_OUT_OF_RANGE.
 */
export function temperatureAt30cm(valueC: number, depthCm: number, secondOfDay: number): WorkedOut {
  inRange('a depth of a thermometer', depthCm, ...servedDepthsCm, 'cm');
  const depthM = depthCm / 100;
  const at = (metres: number) => waveTemperature(autumnDay, metres, secondOfDay);
  return {
    valueC: valueC + at(0.3) - at(depthM),
    halfBandC: 1.96 * Math.sqrt(errorVariance({ at: epochSeconds(0), valueC, sdC: 0, depthM })),
  };
}
