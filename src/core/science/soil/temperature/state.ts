import type { SoilModelConstants } from './model-constants.ts';
import { chanceUnder } from './normal.ts';

/** Places in the state: site offset, passing deviation, corrections of the two shares, errors of the two memories, error of the air. */
export const place = { site: 0, passing: 1, quickShare: 2, slowShare: 3, quick: 4, slow: 5, air: 6 } as const;

/** Length of the state. */
export const size = 7;

/** Middle of the air temperatures at which corrections of the shares act as none, C. */
const pivotC = 8;

/** Day of the year about which the soil departs most from what the air explains: early June. */
const warmestNoiseDay = 155;

/** Slow memory of the air below which the ground may be frozen or under snow, C. */
const coldC = 3;

/** Mean (7) and covariance (7 x 7, by rows) of the hidden state of one soil. */
export interface SoilState {
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
}

/** State before any reading: spread over sites, and the errors of the two memories at the first day with the part they share, C2. */
export function startState(
  of: SoilModelConstants,
  memories: { readonly quickVariance: number; readonly slowVariance: number; readonly shared: number },
): SoilState {
  const covariance = new Float64Array(size * size);
  const set = (row: number, column: number, value: number) => {
    covariance[row * size + column] = value;
    covariance[column * size + row] = value;
  };
  set(place.site, place.site, of.siteSdC ** 2);
  set(place.passing, place.passing, of.passingNoiseC ** 2 / (1 - of.passingKept ** 2));
  set(place.quickShare, place.quickShare, of.quickShareSd ** 2);
  set(place.slowShare, place.slowShare, of.slowShareSd ** 2);
  set(place.quick, place.quick, memories.quickVariance);
  set(place.slow, place.slow, memories.slowVariance);
  set(place.quick, place.slow, memories.shared);
  return { mean: new Float64Array(size), covariance };
}

/** Copy of a state, to be carried on without touching the first. */
export function copyState({ mean, covariance }: SoilState): SoilState {
  return { mean: Float64Array.from(mean), covariance: Float64Array.from(covariance) };
}

/** How the air of one day was known: what of the error of the day before stays in it (0 to 1), and its own variance, C2. */
export interface AirError {
  readonly kept: number;
  readonly variance: number;
}

/** Air of one day as it moves a state. */
export interface MovingAir {
  readonly airC: number;
  /** 1 to 366, counted from midwinter's January. */
  readonly dayOfYear: number;
  readonly error: AirError;
}

/** Carries a state one day on, in place, to a day with that slow memory of the air, C. An error of the air enters both memories at their own step; of one in frost a share. */
export function advance(
  { mean, covariance: p }: SoilState,
  of: SoilModelConstants,
  air: MovingAir,
  slowC: number,
): void {
  const kept = [of.siteKept, of.passingKept, 1, 1, 1 - of.quickStep, 1 - of.slowStep, air.error.kept];
  for (let row = 0; row < size; row += 1) {
    const own = kept[row]!;
    mean[row]! *= own;
    for (let column = 0; column < size; column += 1) p[row * size + column]! *= own * kept[column]!;
  }
  const sun = noiseFactor(of, air.dayOfYear, slowC);
  const noise = [of.siteNoiseC, of.passingNoiseC, of.quickShareNoise, of.slowShareNoise];
  for (let row = 0; row < noise.length; row += 1) p[row * size + row]! += (noise[row]! * sun) ** 2;
  const airVariance = p[place.air * size + place.air]! + air.error.variance;
  p[place.air * size + place.air] = airVariance;
  if (airVariance === 0) return;
  const felt = errorFelt(of, air.airC, Math.sqrt(airVariance));
  addAir(mean, p, place.quick, of.quickStep * felt);
  addAir(mean, p, place.slow, of.slowStep * felt);
}

/** Noise of a day against that of a mild winter's: more the higher the sun stands, and where it has been cold for weeks (snow, frozen ground). */
export function noiseFactor({ summerNoise, frostNoise }: SoilModelConstants, dayOfYear: number, slowC: number): number {
  const sun = Math.max(0, Math.cos((2 * Math.PI * (dayOfYear - warmestNoiseDay)) / 365.25));
  return (1 + summerNoise * sun) * (1 + frostNoise * chanceUnder((coldC - slowC) / coldC));
}

/** Share of an error of the air that the ground feels: that of frost where the air is surely below 0 C, all where surely above. */
export function errorFelt({ frostShare }: SoilModelConstants, airC: number, sdC: number): number {
  return frostShare + (1 - frostShare) * chanceUnder(airC / sdC);
}

function addAir(mean: Float64Array, p: Float64Array, row: number, step: number): void {
  mean[row]! += step * mean[place.air]!;
  const own =
    p[row * size + row]! + 2 * step * p[row * size + place.air]! + step ** 2 * p[place.air * size + place.air]!;
  for (let column = 0; column < size; column += 1) {
    const moved = p[row * size + column]! + step * p[place.air * size + column]!;
    p[row * size + column] = moved;
    p[column * size + row] = moved;
  }
  p[row * size + row] = own;
}

/** What one day's soil temperature reads of the state, for the two memories of that day, C. */
export function loadings(of: SoilModelConstants, quickC: number, slowC: number): readonly number[] {
  return [1, 1, quickC - pivotC, slowC - pivotC, of.quickShare, of.slowShare, 0];
}

/** Loadings by which an error of the air counts at the site's own shares, where its readings show them to be larger; never less. */
export function withOwnShares(through: readonly number[], { mean }: SoilState): readonly number[] {
  const own = [...through];
  own[place.quick]! += Math.max(0, mean[place.quickShare]!);
  own[place.slow]! += Math.max(0, mean[place.slowShare]!);
  return own;
}

/** Departure from the model's middle and its variance, seen through loadings. */
export function seen(
  state: SoilState,
  through: readonly number[],
): { readonly mean: number; readonly variance: number } {
  let mean = 0;
  let variance = 0;
  for (let row = 0; row < size; row += 1) {
    mean += through[row]! * state.mean[row]!;
    for (let column = 0; column < size; column += 1) {
      variance += through[row]! * through[column]! * state.covariance[row * size + column]!;
    }
  }
  return { mean, variance: Math.max(0, variance) };
}

/** Takes in one observed departure with its error variance, in place (Kalman 1960, J. Basic Eng. 82:35-45). */
export function observe(state: SoilState, through: readonly number[], departureC: number, errorVariance: number): void {
  const { mean, covariance: p } = state;
  const cross = new Float64Array(size);
  let expected = 0;
  for (let row = 0; row < size; row += 1) {
    expected += through[row]! * mean[row]!;
    for (let column = 0; column < size; column += 1) cross[row]! += p[row * size + column]! * through[column]!;
  }
  let total = errorVariance;
  for (let row = 0; row < size; row += 1) total += through[row]! * cross[row]!;
  for (let row = 0; row < size; row += 1) {
    mean[row]! += (cross[row]! / total) * (departureC - expected);
    for (let column = 0; column < size; column += 1) {
      p[row * size + column]! -= (cross[row]! * cross[column]!) / total;
    }
  }
}
