import type { SoilModelConstants } from './model-constants.ts';

/** Days after which what was seen of a site's errors counts half. */
const halfLifeDays = 180;
const keptADay = 0.5 ** (1 / halfLifeDays);
/** No single error counts for more than so many standard errors, squared. */
const mostSquare = 9;
/** Lead time, days, up to which an error is of the coming day alone, and days more after which it is all of the coming week. */
const nearDays = 1;
const farAfterDays = 6;

interface Evidence {
  squares: number;
  weight: number;
}

/** Squared errors of a site's own past readings in standard errors of the model, of a day ahead and of a week ahead. */
export interface ErrorScale {
  readonly near: Evidence;
  readonly far: Evidence;
}

/** Nothing seen yet: the model's own error size. */
export function unknownScale(): ErrorScale {
  return { near: { squares: 0, weight: 0 }, far: { squares: 0, weight: 0 } };
}

/** Lets a day pass: older errors count less. In place. */
export function fade({ near, far }: ErrorScale): void {
  for (const part of [near, far]) {
    part.squares *= keptADay;
    part.weight *= keptADay;
  }
}

/** An error seen: what came less what was expected, C, the variance expected of the soil and of the thermometer, C2, and the days ahead it was expected from. */
export interface SeenError {
  readonly errorC: number;
  readonly soilVariance: number;
  readonly readingVariance: number;
  readonly leadDays: number;
  /** How many errors it counts for. */
  readonly worth: number;
}

/** Takes in an error, in place: the less, the more of it may be the thermometer's. */
export function learn({ near, far }: ErrorScale, seen: SeenError): void {
  const { errorC, soilVariance, readingVariance, leadDays } = seen;
  const total = soilVariance + readingVariance;
  const own = (seen.worth * soilVariance) / total;
  const square = Math.min(mostSquare, errorC ** 2 / total);
  const farShare = farShareOf(leadDays);
  add(near, square, own * (1 - farShare));
  add(far, square, own * farShare);
}

function add(part: Evidence, square: number, weight: number): void {
  part.squares += weight * square;
  part.weight += weight;
}

/** How large a site's errors are: factor on the model's variance, and how many errors it rests on (degrees of freedom). */
export interface ScaleAt {
  readonly factor: number;
  readonly freedom: number;
}

/**
 * Scale at a lead time in days: the mean square of the site's own errors, drawn towards 1 as by `scaleWorth` errors of the
 * model's own size (inverse-gamma belief about a variance, so that what is yet to be read follows Student's t).
 */
export function scaleAt({ near, far }: ErrorScale, { scaleWorth }: SoilModelConstants, leadDays: number): ScaleAt {
  const all = (scaleWorth + near.squares + far.squares) / (scaleWorth + near.weight + far.weight);
  const of = ({ squares, weight }: Evidence) => (scaleWorth * all + squares) / (scaleWorth + weight);
  const farShare = farShareOf(leadDays);
  return {
    factor: (1 - farShare) * of(near) + farShare * of(far),
    freedom: scaleWorth + (1 - farShare) * near.weight + farShare * far.weight,
  };
}

function farShareOf(leadDays: number): number {
  return Math.min(1, Math.max(0, (leadDays - nearDays) / farAfterDays));
}
