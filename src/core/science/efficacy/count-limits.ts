import { inRange } from '../../units/in-range.ts';

/**
 * Exact limits within which the true mean lies for a count (whole, 0 to 10,000) with a confidence of 0.5 to 0.999, if counts are
 * Poisson (Garwood 1936, Biometrika 28:437-442): the means for which so many or more, so many or fewer, has half the rest of the
 * probability. Weeds stand in patches: the truth is less certain than this.
 */
export function countLimits(count: number, confidence: number): readonly [number, number] {
  inRange('a whole count', Number.isInteger(count) ? count : Number.NaN, 0, 10_000, '');
  const tail = (1 - inRange('a confidence', confidence, 0.5, 0.999, '')) / 2;
  const highest = count + 20 * Math.sqrt(count + 1) + 20;
  const low = count === 0 ? 0 : meanWhere((mean) => 1 - chanceOfAtMost(count - 1, mean) < tail, highest);
  return [low, meanWhere((mean) => chanceOfAtMost(count, mean) > tail, highest)];
}

/** The mean from 0 to `highest` up to which a condition holds, by halving. */
function meanWhere(holds: (mean: number) => boolean, highest: number): number {
  let low = 0;
  let high = highest;
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (holds(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Chance of at most so many events of a Poisson mean, summed from the likeliest term so that nothing underflows. */
function chanceOfAtMost(count: number, mean: number): number {
  let logTerm = -mean;
  let highestLog = logTerm;
  const logs = [logTerm];
  for (let n = 1; n <= count; n++) {
    logTerm += Math.log(mean / n);
    highestLog = Math.max(highestLog, logTerm);
    logs.push(logTerm);
  }
  const sum = logs.reduce((total, log) => total + Math.exp(log - highestLog), 0);
  return Math.min(1, sum * Math.exp(highestLog));
}
