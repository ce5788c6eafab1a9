import type { FactId } from '../../facts/registry/index.ts';
import type { Means, Row } from './lexicon-types.ts';

/** Words of one meaning, as the word lists give them. */
export interface WordRow extends Row {
  /** Patterns as in `phraseBook`. */
  readonly say: readonly string[];
}

type More = Partial<Pick<Row, 'strong' | 'doubtful' | 'unless'>>;

/** Words that mean one or several choices of a fact. */
export function choice(fact: FactId, choices: string, of: string, say: readonly string[], more: More = {}): WordRow {
  return { fact, means: { kind: 'choices', choices: choices.split('|') }, of: subjects(of), say, ...more };
}

/** Words that mean a sign of the soil surface. */
export function sign(name: string, of: string, say: readonly string[], more: More = {}): WordRow {
  return { fact: 'soil.surface', means: { kind: 'sign', sign: name }, of: subjects(of), say, ...more };
}

/** Words that mean that a sign of the soil surface is not there. */
export function noSign(name: string, of: string, say: readonly string[], more: More = {}): WordRow {
  return { fact: 'soil.surface', means: { kind: 'sign', sign: name, isAbsent: true }, of: subjects(of), say, ...more };
}

/** Words that mean an answer that the pack offers for the fact, by its id. */
export function answer(fact: FactId, id: string, of: string, say: readonly string[], more: More = {}): WordRow {
  return { fact, means: answerOf(id), of: subjects(of), say, ...more };
}

/** Words that mean a number of a fact, in its own unit. */
export function count(fact: FactId, value: number, of: string, say: readonly string[], more: More = {}): WordRow {
  return { fact, means: { kind: 'number', value }, of: subjects(of), say, ...more };
}

/** An answer of the pack by its id. */
export function answerOf(id: string): Means {
  return { kind: 'answer', id };
}

function subjects(of: string): Row['of'] {
  return of === '' ? [] : (of.split(' ') as unknown as Row['of']);
}
