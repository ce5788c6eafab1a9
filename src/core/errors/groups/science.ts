import type { ErrorEntry } from '../entry.ts';

/** Failures of units and formulas. */
export const scienceErrors = {
  UNIT_INCOMPATIBLE: {
    says: 'These two units do not measure the same thing.',
    next: 'Give the value in a unit of the right kind.',
  },
  SCIENCE_OUT_OF_RANGE: {
    says: 'A value lies outside the range in which the formula holds.',
    next: 'Check the value and its unit.',
  },
} as const satisfies Record<string, ErrorEntry>;
