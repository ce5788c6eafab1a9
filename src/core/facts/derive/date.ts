import type { FactSource } from '../context.ts';
import { localDate, nextMidnight } from '../local-day.ts';

/** The day at the field. */
export const deriveDate: FactSource = ({ at, zone }) => ({
  known: true,
  type: 'date',
  iso: localDate(at, zone),
  source: 'derived',
  at,
  goodUntil: nextMidnight(at, zone),
});
