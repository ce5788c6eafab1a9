import { nearestName } from '../../errors/nearest.ts';
import type { Reading } from '../types.ts';
import { cameAs, type GivenFact, refuse } from './given.ts';
import { memberStep, membersOf } from './value-object.ts';

/** Yes and no may also stand as true and false where a fact has just these two choices. */
function asChoice(given: unknown, choices: readonly string[]): unknown {
  const isYesNo = choices.length === 2 && choices.includes('yes') && choices.includes('no');
  if (isYesNo && typeof given === 'boolean') return given ? 'yes' : 'no';
  return given;
}

/** One choice of a list, or a coded error with the nearest right one. */
export function oneChoice(fact: GivenFact, given: unknown, choices: readonly string[], within?: string): string {
  const choice = asChoice(given, choices);
  if (typeof choice !== 'string') {
    throw refuse(fact, 'FACT_WRONG_TYPE', { expected: `one of ${choices.join(', ')}`, came: cameAs(given) }, within);
  }
  if (choices.includes(choice)) return choice;
  const nearest = nearestName(choice, choices);
  throw refuse(
    fact,
    'FACT_CHOICE_UNKNOWN',
    { expected: `one of ${choices.join(', ')}`, came: cameAs(choice), ...(nearest === undefined ? {} : { nearest }) },
    within,
  );
}

/** Reads a choice fact: one choice, or a list of which one is true, in registry order without repeats. */
export function parseChoice(fact: GivenFact): Reading {
  const { value } = membersOf(fact, []);
  const choices = fact.definition.choices ?? [];
  if (!Array.isArray(value)) {
    return { type: 'choice', possible: [oneChoice(fact, value, choices, memberStep(fact, 'value'))] };
  }
  if (value.length === 0) {
    throw refuse(fact, 'FACT_WRONG_TYPE', { expected: `at least one of ${choices.join(', ')}`, came: '[]' });
  }
  const named = new Set(value.map((given, index) => oneChoice(fact, given, choices, memberStep(fact, 'value', index))));
  return { type: 'choice', possible: choices.filter((choice) => named.has(choice)) };
}
