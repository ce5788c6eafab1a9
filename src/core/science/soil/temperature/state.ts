import type { SoilModelConstants } from './model-constants.ts';

/** Places in the state: site offset, passing deviation, corrections of the two shares, errors of the two memories, error of the air. */
export const place = { site: 0, passing: 1, quickShare: 2, slowShare: 3, quick: 4, slow: 5, air: 6 } as const;

/** Length of the state. */
export const size = 7;

/** Middle of the air temperatures at which corrections of the shares act as none, C. */
const pivotC = 8;

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

/** Carries a state one day on, in place. An error of the air enters both memories at their own step. */
export function advance({ mean, covariance: p }: SoilState, of: SoilModelConstants, air: AirError): void {
  const kept = [of.siteKept, of.passingKept, 1, 1, 1 - of.quickStep, 1 - of.slowStep, air.kept];
  for (let row = 0; row < size; row += 1) {
    mean[row]! *= kept[row]!;
    for (let column = 0; column < size; column += 1) p[row * size + column]! *= kept[row]! * kept[column]!;
  }
  const noise = [of.siteNoiseC, of.passingNoiseC, of.quickShareNoise, of.slowShareNoise];
  noise.forEach((sd, index) => {
    p[index * size + index]! += sd ** 2;
  });
  p[place.air * size + place.air]! += air.variance;
  addAir(mean, p, place.quick, of.quickStep);
  addAir(mean, p, place.slow, of.slowStep);
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
