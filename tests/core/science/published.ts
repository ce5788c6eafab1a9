import fc from 'fast-check';
import { expect } from 'vitest';

/** One published check: id, inputs, expected value, tolerance, source (and how it is known, where not read). */
export type Published<Inputs> = readonly [
  id: string,
  inputs: Inputs,
  expected: number,
  tolerance: number,
  source: string,
];

/** Title of a table test over published rows. */
export const publishedTitle = '%s: %j gives %d within %d (%s)';

/** One published check whose inputs stand in a call. */
export type PublishedCall = readonly [
  id: string,
  expected: number,
  tolerance: number,
  source: string,
  value: () => number,
];

/** Title of a table test over calls. */
export const publishedCallTitle = '%s gives %d within %d (%s)';

/** Fails unless the value lies within the tolerance of what is published. */
export function expectWithin(value: number, expected: number, tolerance: number): void {
  expect(Math.abs(value - expected), `${value} for ${expected}`).toBeLessThanOrEqual(tolerance);
}

/** The matcher of a refusal of inputs outside the range of a formula. */
export const outOfRange = expect.objectContaining({ code: 'SCIENCE_OUT_OF_RANGE' });

/** FAO Irrigation and Drainage Paper 56 at a place in it. */
export function fao56(where: string): string {
  return `Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56, ${where}`;
}

/** Numbers spread evenly over a range, to a thousandth of it (a plain double is nearly always next to 0). */
export function between(low: number, high: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 1000 }).map((part) => low + ((high - low) * part) / 1000);
}
