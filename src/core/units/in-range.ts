import { codedError } from '../errors/coded-error.ts';

/**
 * The value, where it is a finite number from `low` to `high` (both included). Throws SCIENCE_OUT_OF_RANGE otherwise, so
 * that no formula ever gives NaN. `what` names the value and `unit` its unit in the message; `Number.MAX_VALUE` is no upper end.
 */
export function inRange(what: string, value: number, low: number, high: number, unit: string): number {
  if (Number.isFinite(value) && value >= low && value <= high) return value;
  const range = high === Number.MAX_VALUE ? `${low} or more` : `${low} to ${high}`;
  throw codedError('SCIENCE_OUT_OF_RANGE', { expected: `${what} of ${range} ${unit}`.trimEnd(), came: String(value) });
}

/** The value, where it is finite and above 0. Throws SCIENCE_OUT_OF_RANGE otherwise. */
export function aboveZero(what: string, value: number, unit: string): number {
  if (Number.isFinite(value) && value > 0) return value;
  throw codedError('SCIENCE_OUT_OF_RANGE', { expected: `${what} above 0 ${unit}`.trimEnd(), came: String(value) });
}
