import fc from 'fast-check';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { Question } from '../../../src/core/rules/pack-types.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { doesNotKnow, filled, pressed, type Told } from './talk.ts';

/** A made-up person: for any question, the same answer whenever it is put. `seed` per question decides. */
export interface Person {
  /** Share of questions answered by "don't know", 0 to 1. */
  readonly unsure: number;
  readonly seeds: readonly number[];
}

/** People of every kind, from those who know all to those who know nothing. */
export const people: fc.Arbitrary<Person> = fc.record({
  unsure: fc.constantFrom(0, 0.1, 0.3, 0.6, 1),
  seeds: fc.array(fc.integer({ min: 0, max: 9999 }), { minLength: 50, maxLength: 50 }),
});

/** What a person answers to a question: a choice, ticks, a number near the middle of what is usual, or "don't know". */
export function answerOf(person: Person, question: Question, index: number): Told {
  const seed = person.seeds[index % person.seeds.length] ?? 0;
  if ((seed % 100) / 100 < person.unsure) return doesNotKnow(question.id);
  const choices = question.choices ?? [];
  const spare = Math.floor(seed / 100);
  if (question.form === 'signs') {
    return pressed(question.id, ...choices.filter((_, at) => (spare >> at) % 4 === 1).map(({ id }) => id));
  }
  if (choices.length > 0) return pressed(question.id, choices[spare % choices.length]?.id ?? '');
  const numbers = question.facts.map((fact) => [fact, numberFor(fact, spare)] as const);
  return filled(question.id, Object.fromEntries(numbers));
}

function numberFor(fact: FactId, spare: number): number {
  if (fact === 'field.latitude') return 54;
  if (fact === 'field.longitude') return -2;
  const [low, high] = factDefinition(fact).plausible ?? factDefinition(fact).range ?? [0, 1];
  return Math.round((low + ((high - low) * spare) / 100) * 10) / 10;
}
