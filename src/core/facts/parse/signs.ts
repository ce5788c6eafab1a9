import type { Reading } from '../types.ts';
import { oneChoice } from './choice.ts';
import type { GivenFact } from './given.ts';
import { membersOf } from './value-object.ts';

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [value];
}

/**
 * Reads a signs fact: one sign or a list of signs is the complete list (none of them: `[]`). With `possible`, those
 * signs may be there too, and only what neither names is absent.
 */
export function parseSigns(fact: GivenFact): Reading {
  const choices = fact.definition.choices ?? [];
  const members = membersOf(fact, ['possible']);
  const named = (member: string) =>
    new Set(listOf(members[member] ?? []).map((given) => oneChoice(fact, given, choices, member)));
  const present = choices.filter((sign) => named('value').has(sign));
  if (members['possible'] === undefined) return { type: 'signs', present, absent: [], complete: true };
  const possible = named('possible');
  const absent = choices.filter((sign) => !present.includes(sign) && !possible.has(sign));
  return { type: 'signs', present, absent, complete: false };
}
