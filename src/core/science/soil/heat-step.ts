import { inRange } from '../../units/in-range.ts';

/** A day's step of soil temperature. */
export interface SoilDay {
  /** Temperature at the depth on the day before, C. */
  readonly previousC: number;
  /** Mean air temperature of the day, C. */
  readonly airC: number;
  /** Depth, 0 to 100 cm. */
  readonly depthCm: number;
  /** Leaf area index, 0 to 12. */
  readonly leafAreaIndex: number;
  /** Green area index, 0 to 12. */
  readonly greenAreaIndex: number;
}

/**
 * Temperature of the soil surface in C from mean air temperature and leaf area index: `T (0.95 + 0.05 exp(-0.4 (LAI - 3)))`,
 * in frost `0.20 T` (Katterer & Andren 2009, Acta Agric. Scand. B 59:77-86).
 */
export function soilSurfaceTemperature(airC: number, leafAreaIndex: number): number {
  inRange('an air temperature', airC, -50, 60, 'C');
  inRange('a leaf area index', leafAreaIndex, 0, 12, '');
  return airC < 0 ? 0.2 * airC : airC * (0.95 + 0.05 * Math.exp(-0.4 * (leafAreaIndex - 3)));
}

/**
 * Temperature at a depth in C a day later: a step of `0.24 exp(-0.017 z) exp(-0.15 GAI)` towards the surface temperature
 * (Katterer & Andren 2009, z in cm). Air alone carries 1 to 2 C of error: give a band with it.
 */
export function stepSoilTemperature(day: SoilDay): number {
  inRange('a soil temperature', day.previousC, -50, 60, 'C');
  inRange('a depth', day.depthCm, 0, 100, 'cm');
  inRange('a green area index', day.greenAreaIndex, 0, 12, '');
  const share = 0.24 * Math.exp(-0.017 * day.depthCm) * Math.exp(-0.15 * day.greenAreaIndex);
  return day.previousC + (soilSurfaceTemperature(day.airC, day.leafAreaIndex) - day.previousC) * share;
}
