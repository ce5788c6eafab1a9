import type { SoilModelConstants } from './model-constants.ts';

/** Standard errors to either side that hold 80 % and 95 % of a normal error. */
export const normalReach = { at80: 1.2816, at95: 1.96 };
/** Least degrees of freedom told apart: with fewer the series no longer holds. */
const leastFreedom = 3;

/** Standard errors to either side that hold 80 % and 95 %. */
export interface Reach {
  readonly at80: number;
  readonly at95: number;
}

/** Reach of a band whose width rests on so many errors: as fitted for many, wider by Student's t for few. */
export function reachOf({ reach80, reach95 }: SoilModelConstants, freedom: number): Reach {
  return {
    at80: (reach80 / normalReach.at80) * studentReach(normalReach.at80, freedom),
    at95: (reach95 / normalReach.at95) * studentReach(normalReach.at95, freedom),
  };
}

/** Reach by Student's t that holds what `z` holds by the normal (Abramowitz & Stegun 1964, eq. 26.7.5, three terms). */
export function studentReach(z: number, freedom: number): number {
  const n = Math.max(leastFreedom, freedom);
  const first = (z ** 3 + z) / 4;
  const second = (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96;
  const third = (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384;
  return z + first / n + second / n ** 2 + third / n ** 3;
}
