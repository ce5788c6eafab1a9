import { isCalendarDay } from '../local-day.ts';
import type { Reading } from '../types.ts';
import { cameAs, type GivenFact, refuse } from './given.ts';
import { membersOf } from './value-object.ts';

/** Reads a date fact: a day that the calendar has, written YYYY-MM-DD (ISO 8601). */
export function parseDate(fact: GivenFact): Reading {
  const { value } = membersOf(fact, []);
  if (typeof value === 'string' && isCalendarDay(value)) return { type: 'date', iso: value };
  throw refuse(fact, 'FACT_WRONG_TYPE', { expected: 'a calendar day written YYYY-MM-DD', came: cameAs(value) });
}
