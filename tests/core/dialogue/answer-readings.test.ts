import { describe, expect, test } from 'vitest';
import { answerReadings } from '../../../src/core/dialogue/answer-readings.ts';
import { askingOrder, questionsInOrder } from '../../../src/core/dialogue/asking-order.ts';
import type { AnsweredEvent } from '../../../src/core/dialogue/events.ts';
import { coreFacts, type FactId } from '../../../src/core/facts/registry/index.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import type { AnswerChoice, Question } from '../../../src/core/rules/pack-types.ts';
import { stamp } from './talk.ts';

const asked = (more: Partial<Question>): Question => ({
  id: 'asked',
  group: 'soil',
  facts: ['soil.feel'],
  form: 'choice',
  effortSeconds: 5,
  text: {},
  ...more,
});
const gives = (id: string, given: Readonly<Record<string, Reading>>): AnswerChoice => ({
  id,
  label: { en: id },
  gives: given,
});
const feels = (...possible: string[]): Reading => ({ type: 'choice', possible });
const sees = (present: string[], absent: string[] = []): Reading => ({
  type: 'signs',
  present,
  absent,
  complete: false,
});

const feel = asked({
  choices: [
    gives('dry', { 'soil.feel': feels('dry') }),
    gives('fit', { 'soil.feel': feels('moist', 'wet') }),
    gives('wet', { 'soil.feel': feels('wet', 'saturated') }),
    gives('silent', {}),
  ],
});
const temperature = asked({ form: 'number', facts: ['soil.temperature30cmC'] });
const mixed = asked({ form: 'number', facts: ['soil.feel', 'soil.temperature30cmC', 'field.slopePercent'] });

function answered(question: Question | null, choices: string[], numbers: Record<string, number> = {}) {
  const event: AnsweredEvent = {
    kind: 'answered',
    ...stamp(1),
    question: 'asked',
    choices,
    numbers,
    doesNotKnow: false,
  };
  return answerReadings(event, question, coreFacts);
}

describe('an answer that fits', () => {
  test('gives the reading of its choice', () => {
    expect(answered(feel, ['dry'])).toEqual([{ fact: 'soil.feel', reading: feels('dry') }]);
  });

  test('of two choices gives all that either allows, each once', () => {
    expect(answered(feel, ['wet', 'fit'])).toEqual([
      { fact: 'soil.feel', reading: feels('moist', 'wet', 'saturated') },
    ]);
  });

  test('of a choice that says nothing of the fact gives nothing', () => {
    expect(answered(feel, ['silent'])).toEqual([]);
    expect(answered(feel, ['silent', 'dry'])).toEqual([{ fact: 'soil.feel', reading: feels('dry') }]);
  });

  test('of two choices that give numbers takes the first', () => {
    const number = (value: number): Reading => ({ type: 'number', value });
    const slope = asked({
      facts: ['field.slopePercent'],
      choices: [gives('a', { 'field.slopePercent': number(1) }), gives('b', { 'field.slopePercent': number(4) })],
    });
    expect(answered(slope, ['b', 'a'])).toEqual([{ fact: 'field.slopePercent', reading: number(1) }]);
  });

  test('gives the number filled in, and a choice beside it', () => {
    expect(answered(temperature, [], { 'soil.temperature30cmC': 0 })).toEqual([
      { fact: 'soil.temperature30cmC', reading: { type: 'number', value: 0 } },
    ]);
    const both = { ...mixed, ...(feel.choices ? { choices: feel.choices } : {}) };
    expect(answered(both, ['dry'], { 'soil.temperature30cmC': 9 })).toEqual([
      { fact: 'soil.feel', reading: feels('dry') },
      { fact: 'soil.temperature30cmC', reading: { type: 'number', value: 9 } },
    ]);
  });
});

describe('a checklist', () => {
  const surface = (choices: AnswerChoice[]) => asked({ form: 'signs', facts: ['soil.surface'], choices });
  const every = (coreFacts['soil.surface']?.choices ?? []).map((sign) => gives(sign, { 'soil.surface': sees([sign]) }));

  test('gone through says of each sign that it offers whether it is there, and is complete where it offers all', () => {
    const all = coreFacts['soil.surface']?.choices ?? [];
    const [reading] = [answered(surface(every), ['cracked'])].flat();
    expect(reading).toEqual({
      fact: 'soil.surface',
      reading: { type: 'signs', present: ['cracked'], absent: all.filter((one) => one !== 'cracked'), complete: true },
    });
  });

  test('with nothing ticked denies all that it offers', () => {
    const some = surface([
      gives('c', { 'soil.surface': sees(['cracked']) }),
      gives('f', { 'soil.surface': sees(['friable']) }),
    ]);
    expect(answered(some, [])).toEqual([
      {
        fact: 'soil.surface',
        reading: { type: 'signs', present: [], absent: ['cracked', 'friable'], complete: false },
      },
    ]);
  });

  test('with a tick that denies a sign counts that sign among those that it offers', () => {
    const some = surface([
      gives('c', { 'soil.surface': sees(['cracked'], ['friable']) }),
      gives('other', { 'soil.feel': feels('dry') }),
    ]);
    expect(answered(some, ['c'])).toEqual([
      { fact: 'soil.surface', reading: { type: 'signs', present: ['cracked'], absent: ['friable'], complete: false } },
    ]);
  });

  test('reads only facts of signs by its ticks; another fact of it is given by the choice', () => {
    const both = asked({
      form: 'signs',
      facts: ['soil.surface', 'soil.feel'],
      choices: [gives('c', { 'soil.surface': sees(['cracked']), 'soil.feel': feels('dry') })],
    });
    expect(answered(both, ['c'])).toEqual([
      { fact: 'soil.surface', reading: { type: 'signs', present: ['cracked'], absent: [], complete: false } },
      { fact: 'soil.feel', reading: feels('dry') },
    ]);
    const signs = asked({ facts: ['soil.surface'], choices: [gives('c', { 'soil.surface': sees(['cracked']) })] });
    expect(answered(signs, ['c'])).toEqual([{ fact: 'soil.surface', reading: sees(['cracked']) }]);
  });
});

describe('an answer that does not fit is refused with what was expected and what came', () => {
  test.each<[string, Question | null, string[], Record<string, number>, string, string, string]>([
    ['no question', null, ['dry'], {}, 'QUESTION_UNKNOWN', 'a question of this conversation', 'asked'],
    ['another choice', feel, ['dry', 'purple'], {}, 'ANSWER_MISFIT', 'dry, fit, wet, silent', 'purple'],
    ['a choice where none is offered', temperature, ['dry'], {}, 'ANSWER_MISFIT', 'no choice', 'dry'],
    [
      'a number of another fact',
      mixed,
      [],
      { 'soil.temperature30cmC': 9, 'wind.boomKmh': 3 },
      'ANSWER_MISFIT',
      'a number for soil.feel or soil.temperature30cmC or field.slopePercent',
      'wind.boomKmh',
    ],
    [
      'a number of a fact that is none',
      feel,
      [],
      { 'soil.feel': 3 },
      'ANSWER_MISFIT',
      'a number for soil.feel',
      'soil.feel',
    ],
    ['nothing', feel, [], {}, 'ANSWER_MISFIT', 'a choice, a number or "don\'t know"', 'nothing'],
  ])('%s', (_, question, choices, numbers, code, expected, came) => {
    expect(answered(question, choices, numbers)).toMatchObject({ code, expected, came });
  });
});

describe('the order in which a pack asks', () => {
  const of = (id: string, effortSeconds: number, group: Question['group'], ...facts: FactId[]) =>
    asked({ id, effortSeconds, group, facts });

  test('is by effort, then by group from season to dose, then as written', () => {
    const questions = [
      of('dear', 9, 'season'),
      of('dose', 5, 'dose'),
      of('weather', 5, 'weather'),
      of('soil-2', 5, 'soil'),
      of('soil-1', 5, 'soil'),
      of('crop', 5, 'crop'),
      of('field', 5, 'field'),
      of('season', 5, 'season'),
      of('cheap', 1, 'dose'),
    ];
    const order = ['cheap', 'season', 'field', 'crop', 'soil-2', 'soil-1', 'weather', 'dose', 'dear'];
    expect(questionsInOrder({ questions }).map(({ id }) => id)).toEqual(order);
    expect(questions[0]?.id).toBe('dear');
  });

  test('gives the order of the facts, each once, those last that no question asks for', () => {
    const questions = [
      of('b', 9, 'soil', 'soil.feel', 'wind.boomKmh'),
      of('a', 1, 'soil', 'wind.gustKmh', 'soil.feel'),
    ];
    const order = askingOrder({ questions, facts: coreFacts });
    expect(order.slice(0, 3)).toEqual(['wind.gustKmh', 'soil.feel', 'wind.boomKmh']);
    expect(order.toSorted()).toEqual(Object.keys(coreFacts).toSorted());
  });
});
