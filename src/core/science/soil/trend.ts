import { codedError } from '../../errors/coded-error.ts';
import type { EpochSeconds } from '../../units/brands.ts';

/** A reading at a moment, with the ends between which the true value lies. */
export interface DatedBand {
  readonly at: EpochSeconds;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A slope per day, with the flattest and steepest that the bands allow. */
export interface SlopePerDay {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Ordinary least-squares slope through readings, per day (C readings give C/day). Low and high are the least and greatest slope
 * if every reading were off by its own band. Throws SCIENCE_OUT_OF_RANGE unless at least two readings are of different moments
 * and all are finite. It says what was, not what comes: a line through recent days forecasts worse than no change.
 */
export function slopePerDay(readings: readonly DatedBand[]): SlopePerDay {
  const mean = readings.reduce((sum, { at }) => sum + at, 0) / readings.length;
  const days = readings.map(({ at }) => (at - mean) / 86_400);
  const squares = days.reduce((sum, day) => sum + day * day, 0);
  const slope = { value: 0, low: 0, high: 0 };
  readings.forEach(({ value, low, high }, index) => {
    const weight = days[index]! / squares;
    slope.value += weight * value;
    slope.low += weight * (weight < 0 ? high : low);
    slope.high += weight * (weight < 0 ? low : high);
  });
  if (squares > 0 && Object.values(slope).every(Number.isFinite)) return slope;
  throw codedError('SCIENCE_OUT_OF_RANGE', {
    expected: 'readings of at least two different moments',
    came: `${readings.length} of which no slope can be taken`,
  });
}
