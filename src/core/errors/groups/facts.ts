import type { ErrorEntry } from '../entry.ts';

/** Failures of facts that were given. */
export const factErrors = {
  FACT_UNKNOWN_ID: { says: 'There is no fact of this name.', next: 'Use an id from docs/facts.md.' },
  FACT_WRONG_TYPE: {
    says: 'The value is not of the kind that this fact takes.',
    next: 'See the fact in docs/facts.md.',
  },
  FACT_OUT_OF_RANGE: { says: 'The value cannot be.', next: 'Check the number and its unit, and give it again.' },
  FACT_BAND_WRONG: { says: 'The band does not enclose the value.', next: 'Give low, value and high in rising order.' },
  FACT_CHOICE_UNKNOWN: { says: 'This choice does not exist for the fact.', next: 'Use one of the choices listed.' },
  FACT_DATE_OTHER_DAY: {
    says: 'The date given is not the day of the moment asked about.',
    next: 'Leave one of the two out, or make them agree.',
  },
  FACTS_NOT_AN_OBJECT: {
    says: 'Facts are one flat JSON object of fact ids and values.',
    next: 'See docs/facts.md for an example.',
  },
  ZONE_UNKNOWN: {
    says: 'There is no such time zone.',
    next: 'Give the IANA name of the zone in which the field lies.',
  },
} as const satisfies Record<string, ErrorEntry>;
