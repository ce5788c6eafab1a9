import { type ErrorReport, reportOf } from '../errors/coded-error.ts';
import { definitionIn, type FactId, type FactRegistry } from '../facts/registry/index.ts';
import type { Reading } from '../facts/types.ts';
import type { AnswerChoice, Question } from '../rules/pack-types.ts';
import type { AnsweredEvent } from './events.ts';
import type { NotedReading } from './notes.ts';

type Signs = Extract<Reading, { type: 'signs' }>;

/** The readings that an answer gives, or why it cannot be taken. */
export function answerReadings(
  event: AnsweredEvent,
  question: Question | null,
  registry: FactRegistry,
): readonly NotedReading[] | ErrorReport {
  if (question === null) {
    return reportOf('QUESTION_UNKNOWN', { expected: 'a question of this conversation', came: event.question });
  }
  const offered = question.choices ?? [];
  const unknown = event.choices.find((id) => !offered.some((choice) => choice.id === id));
  if (unknown !== undefined) {
    return reportOf('ANSWER_MISFIT', {
      expected: offered.map(({ id }) => id).join(', ') || 'no choice',
      came: unknown,
    });
  }
  const foreign = Object.keys(event.numbers).find((fact) => !takesNumber(question, fact, registry));
  if (foreign !== undefined) {
    return reportOf('ANSWER_MISFIT', { expected: `a number for ${question.facts.join(' or ')}`, came: foreign });
  }
  if (event.choices.length === 0 && Object.keys(event.numbers).length === 0 && question.form !== 'signs') {
    return reportOf('ANSWER_MISFIT', { expected: 'a choice, a number or "don\'t know"', came: 'nothing' });
  }
  const chosen = offered.filter(({ id }) => event.choices.includes(id));
  const numbers = Object.entries(event.numbers).map(([fact, value]) => ({
    fact: fact as FactId,
    reading: { type: 'number', value } as const,
  }));
  return [...question.facts.flatMap((fact) => fromChoices(fact, chosen, question, registry)), ...numbers];
}

function takesNumber(question: Question, fact: string, registry: FactRegistry): boolean {
  return question.facts.some((id) => id === fact && definitionIn(registry, id).type === 'number');
}

function fromChoices(
  fact: FactId,
  chosen: readonly AnswerChoice[],
  question: Question,
  registry: FactRegistry,
): NotedReading[] {
  const definition = definitionIn(registry, fact);
  if (question.form === 'signs' && definition.type === 'signs') {
    return [{ fact, reading: checklist(fact, definition.choices ?? [], chosen, question) }];
  }
  const given = chosen.map(({ gives }) => gives[fact]).filter((reading) => reading !== undefined);
  const choices = given.flatMap((reading) => (reading.type === 'choice' ? reading.possible : []));
  if (choices.length > 0) {
    return [{ fact, reading: { type: 'choice', possible: [...new Set(choices)] } }];
  }
  return given.slice(0, 1).map((reading) => ({ fact, reading }));
}

/** A checklist gone through: what is ticked is there, what it offers and is not ticked is not. */
function checklist(fact: FactId, all: readonly string[], chosen: readonly AnswerChoice[], question: Question): Signs {
  const signsOf = (choices: readonly AnswerChoice[]) =>
    choices.flatMap(({ gives }) => {
      const reading = gives[fact];
      return reading?.type === 'signs' ? [reading] : [];
    });
  const present = new Set(signsOf(chosen).flatMap((reading) => reading.present));
  const offered = new Set(
    signsOf(question.choices ?? []).flatMap((reading) => [...reading.present, ...reading.absent]),
  );
  const absent = [...offered].filter((sign) => !present.has(sign));
  return { type: 'signs', present: [...present], absent, complete: all.every((sign) => offered.has(sign)) };
}
