import { nearestName } from '../../errors/nearest.ts';
import { countryCodes, isCountryCode, nationCodes } from '../country-codes.ts';
import type { Reading } from '../types.ts';
import { cameAs, type GivenFact, refuse } from './given.ts';
import { memberStep, membersOf } from './value-object.ts';

const expected = `${nationCodes.join(', ')} (ISO 3166-2), or another country's ISO 3166-1 alpha-2 code in capitals`;

function oneCode(fact: GivenFact, given: unknown, within?: string): string {
  if (typeof given !== 'string') throw refuse(fact, 'FACT_WRONG_TYPE', { expected, came: cameAs(given) }, within);
  if (isCountryCode(given)) return given;
  const nearest = nearestCode(given);
  const near = nearest === undefined ? {} : { nearest };
  throw refuse(fact, 'FACT_CHOICE_UNKNOWN', { expected, came: cameAs(given), ...near }, within);
}

/** Reads a country fact: a code, or a list of which one is true. GB (or UK) is taken; it settles no nation. */
export function parseCountry(fact: GivenFact): Reading {
  const { value } = membersOf(fact, []);
  if (!Array.isArray(value)) return { type: 'choice', possible: [oneCode(fact, value, memberStep(fact, 'value'))] };
  if (value.length === 0) throw refuse(fact, 'FACT_WRONG_TYPE', { expected, came: '[]' });
  const named = value.map((given, index) => oneCode(fact, given, memberStep(fact, 'value', index)));
  return { type: 'choice', possible: [...new Set(named)] };
}

/** Two letters are near to too many codes to guess: only their capitals are tried. */
function nearestCode(given: string): string | undefined {
  if (given.length > 2) return nearestName(given, nationCodes);
  return countryCodes.find((code) => code === given.toUpperCase());
}
