import type { Reading } from '../types.ts';
import { oneChoice } from './choice.ts';
import type { GivenFact } from './given.ts';
import { memberStep, membersOf } from './value-object.ts';

type Listed = readonly (readonly [given: unknown, step: string | undefined])[];

function listOf(fact: GivenFact, members: Readonly<Record<string, unknown>>, member: string): Listed {
  const value = members[member];
  if (value === undefined) return [];
  if (!Array.isArray(value)) return [[value, memberStep(fact, member)]];
  return value.map((given, index) => [given, memberStep(fact, member, index)]);
}

/**
 * Reads a signs fact: one sign or a list of signs is the complete list (none of them: `[]`). With `possible`, those
 * signs may be there too, and only what neither names is absent.
 */
export function parseSigns(fact: GivenFact): Reading {
  const choices = fact.definition.choices ?? [];
  const members = membersOf(fact, ['possible']);
  const named = (member: string) =>
    new Set(listOf(fact, members, member).map(([given, step]) => oneChoice(fact, given, choices, step)));
  const present = choices.filter((sign) => named('value').has(sign));
  if (members['possible'] === undefined) return { type: 'signs', present, absent: [], complete: true };
  const possible = named('possible');
  const absent = choices.filter((sign) => !present.includes(sign) && !possible.has(sign));
  return { type: 'signs', present, absent, complete: false };
}
