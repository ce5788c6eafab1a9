import { expect } from 'vitest';

/** One input of a formula: what a refusal says is taken, both ends of it, and the formula with all else ordinary. */
export type Taken = readonly [says: string, low: number, high: number, formula: (value: number) => unknown];

/** Title of a table test over inputs. */
export const takenTitle = '%s: both ends are taken, what lies beyond is refused in these words';

/** Fails unless both ends are taken, and a little beyond each (and no number) is refused, saying what is taken and what came. */
export function expectTaken([says, low, high, formula]: Taken): void {
  for (const end of [low, high]) if (Number.isFinite(end)) expect(formula(end)).toBeDefined();
  for (const beyond of [below(low), above(high), Number.NaN]) {
    expect(() => formula(beyond), String(beyond)).toThrow(refusal(says, String(beyond)));
  }
}

/** The refusal of something that a formula does not take: what it takes, and what came. */
export function refusal(expected: string, came: string): unknown {
  return expect.objectContaining({ code: 'SCIENCE_OUT_OF_RANGE', details: { expected, came } });
}

/** A little below a number; something far off where nothing lies below. */
function below(low: number): number {
  return low - Math.max(1e-9, Math.abs(low) * 1e-9);
}

function above(high: number): number {
  return high === Number.MAX_VALUE || high === Number.POSITIVE_INFINITY
    ? Number.POSITIVE_INFINITY
    : high + Math.max(1e-9, Math.abs(high) * 1e-9);
}
