import type { ErrorEntry } from '../entry.ts';

/** Failures of evaluation: no verdict is given. */
export const verdictErrors = {
  EVALUATORS_DISAGREE: {
    says: 'The two evaluators do not agree on a rule, so no verdict is given.',
    next: 'Report this with the facts; do not spray on this answer.',
  },
  EVALUATION_INCOMPLETE: {
    says: 'Not every rule was accounted for, so no verdict is given.',
    next: 'Report this with the facts; do not spray on this answer.',
  },
  FACT_MALFORMED: {
    says: 'A resolved fact is not well formed, so no verdict is given.',
    next: 'Report this with the facts; do not spray on this answer.',
  },
} as const satisfies Record<string, ErrorEntry>;
