import type { ErrorEntry } from '../entry.ts';

/** Failures of pack files. */
export const ruleErrors = {
  RULES_FILE_UNREADABLE: {
    says: 'A pack file could not be read.',
    next: 'Check that the file is there and may be read.',
  },
  RULES_NOT_JSON: { says: 'A pack file is not JSON.', next: 'Mend the place named.' },
  PARAMETER_MISSING: {
    says: 'A parameter that is needed has no value on this day.',
    next: 'Add it to parameters.json with value, unit, source, why and validFrom.',
  },
} as const satisfies Record<string, ErrorEntry>;
