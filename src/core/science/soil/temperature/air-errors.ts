import type { SoilModelConstants } from './model-constants.ts';
import { errorFelt, type MovingAir, place } from './state.ts';

/** What errors of the air ahead alone do to the soil: variance of what is read of it through loadings, C2. */
export interface AirErrors {
  readonly advance: (of: SoilModelConstants, air: MovingAir) => void;
  readonly variance: (through: readonly number[]) => number;
}

/** Follows the covariance of both memories with the air's error from a day on at which the air was known. */
export function airErrorsAlone(): AirErrors {
  let [air, quickAir, slowAir, quick, slow, both] = [0, 0, 0, 0, 0, 0];
  return {
    advance: (of, { airC, error }) => {
      const [keptQuick, keptSlow] = [1 - of.quickStep, 1 - of.slowStep];
      air = Math.max(0, air * error.kept ** 2 + error.variance);
      const felt = air === 0 ? 0 : errorFelt(of, airC, Math.sqrt(air));
      const [a, b] = [of.quickStep * felt, of.slowStep * felt];
      const [oldQuick, oldSlow] = [quickAir * keptQuick * error.kept, slowAir * keptSlow * error.kept];
      quick = quick * keptQuick ** 2 + 2 * a * oldQuick + a ** 2 * air;
      slow = slow * keptSlow ** 2 + 2 * b * oldSlow + b ** 2 * air;
      both = both * keptQuick * keptSlow + a * oldSlow + b * oldQuick + a * b * air;
      quickAir = oldQuick + a * air;
      slowAir = oldSlow + b * air;
    },
    variance: (through) => {
      const [a, b] = [through[place.quick]!, through[place.slow]!];
      return a ** 2 * quick + 2 * a * b * both + b ** 2 * slow;
    },
  };
}
