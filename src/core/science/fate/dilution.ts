import { inRange } from '../../units/in-range.ts';
import { divide, multiply } from '../../units/round.ts';

/** Cubic metres of water in so many mm of rain or drainage on so many hectares: 1 mm on 1 ha is 10 m3. */
export function waterVolume(depthMm: number, areaHa: number): number {
  inRange('a depth of water', depthMm, 0, 1e5, 'mm');
  return multiply(multiply(depthMm, inRange('an area', areaHa, 0, 1e6, 'ha')), 10);
}

/**
 * Cubic metres of clean water that bring a mass (g) down to a limit (ug/L, above 0). An illustration of how little is too much: one
 * hectare's dose of 840 g needs 8.4 million m3 to meet 0.1 ug/L. It says nothing of what does reach the water.
 */
export function dilutionVolume(massG: number, limitUgPerL: number): number {
  return multiply(divide(inRange('a mass', massG, 0, 1e9, 'g'), limitUgPerL), 1000);
}

/** Milligrams that may run off in so many mm of drainage from so many hectares without passing a limit (ug/L). An illustration. */
export function allowedMass(drainageMm: number, areaHa: number, limitUgPerL: number): number {
  return multiply(waterVolume(drainageMm, areaHa), inRange('a limit', limitUgPerL, 0, 1e9, 'ug/L'));
}
