import { describe, expect, test } from 'vitest';
import { openQuestion } from '../../../src/core/dialogue/open-question.ts';
import { questionText, questionView } from '../../../src/core/dialogue/view-question.ts';
import type { Question } from '../../../src/core/rules/pack-types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { fieldOf, filled, look, morning, pressed, said, started, type Told, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const asking = (...facts: Parameters<typeof fieldLess>[1][]) =>
  look(talk([started(pack, fieldLess(fitMorning, ...facts))], world), pack).question;
const change = (fact: string): Told => ({ kind: 'requested', request: 'change', fact });
const contextIn = (language: string) => ({ pack, now: morning, words: catalogueOf(language) });

describe('a question as shown', () => {
  test('has its sentences, its buttons, and what it settles now', () => {
    const question = asking('soil.feel');
    const { text, choices = [], picture } = pack.questions.find(({ id }) => id === 'soil-feel')!;
    expect(question).toMatchObject({
      id: 'soil-feel',
      ...text['en'],
      form: 'choice',
      boxes: [],
      hours: [],
      before: null,
    });
    expect(question?.picture).toBe(picture);
    expect(question?.choices.map(({ id, label }) => [id, label])).toEqual(
      choices.map(({ id, label }) => [id, label['en']]),
    );
    expect(question?.choices.map(({ help }) => help)).toEqual(choices.map(({ help }) => help?.['en'] ?? null));
    expect(question?.now).toBe('What hangs on it now: soil saturated and soil too dry.');
  });

  test('names the rules that hang on it; no last one alone is left to a count', () => {
    expect(asking('weed.present', 'crop.trueLeaves', 'crop.frostOnLeaves')?.now).toMatch(
      /^What hangs on it now: [^,]*\.$/,
    );
    expect(asking('soil.surface')?.now).toMatchInlineSnapshot(
      `"What hangs on it now: cracks in the soil, soil frozen or under snow, water standing or drains running and soil sticky."`,
    );
  });

  test('of signs says what was told of them, or who told one would seem not to have been heard', () => {
    const told = talk([started(pack, fieldLess(fitMorning, 'soil.surface')), said('crumbly')], world);
    const question = look(told, pack).question;
    expect(question).toMatchObject({ id: 'surface', before: null });
    expect(question?.now).toMatch(/^So far: crumbly, perhaps cracked, .*\. What hangs on it now: cracks in the soil/);
  });

  test.each<
    [
      string,
      Parameters<typeof asking>,
      string,
      readonly [string, string | null, number | null, number | null, number][],
    ]
  >([
    [
      'a number with its unit, range and step',
      ['soil.temperature30cmC'],
      'soil-temperature',
      [['soil.temperature30cmC', 'C', -20, 45, 0.1]],
    ],
    ['a whole number', ['crop.trueLeaves'], 'true-leaves', [['crop.trueLeaves', 'leaves', 0, 30, 1]]],
  ])('has boxes for numbers: %s', (_, facts, id, boxes) => {
    const question = asking(...facts);
    expect(question?.id).toBe(id);
    expect(question?.boxes.map(({ fact, unit, low, high, step }) => [fact, unit, low, high, step])).toEqual(boxes);
  });

  test('of the place has two boxes, to a ten thousandth of a degree', () => {
    const place = look(talk([started(pack, fieldLess(fitMorning, 'wind.boomKmh'))], world), pack).question;
    expect(place?.id).toBe('place');
    expect(place?.boxes).toEqual([
      { fact: 'field.latitude', label: 'latitude', unit: 'deg', low: -90, high: 90, step: 0.0001 },
      { fact: 'field.longitude', label: 'longitude', unit: 'deg', low: -180, high: 180, step: 0.0001 },
    ]);
  });

  test('of a value read back has a box only where a number can be given', () => {
    const begin = started(pack, fieldLess(fitMorning, 'soil.temperature30cmC'));
    const state = talk([begin, filled('soil-temperature', { 'soil.temperature30cmC': 31 })], world).state;
    const open = openQuestion(state, pack)!;
    expect(questionView(open, state, contextIn('en')).boxes.map(({ fact }) => fact)).toEqual(['soil.temperature30cmC']);
    const noOne = { ...pack, questions: pack.questions.filter(({ id }) => id !== 'soil-temperature') };
    expect(questionView(open, state, { ...contextIn('en'), pack: noOne }).boxes).toEqual([]);
  });

  test('that is changed tells the answer so far; of several facts each that is known', () => {
    const dry = [started(pack, fieldLess(fitMorning, 'soil.feel')), pressed('soil-feel', 'dry')];
    expect(look(talk([...dry, change('soil.feel')], world), pack).question).toMatchObject({
      id: 'soil-feel',
      before: 'So far: dry.',
      together: [],
    });
    const place = fieldOf({ 'field.latitude': 54, 'field.longitude': -2 });
    const changing = (field: typeof place) =>
      look(talk([started(pack, field), change('field.latitude')], world), pack).question;
    expect(changing(place)?.before).toBe('So far: 54.00 degrees; -2.00 degrees.');
    expect(changing(fieldOf({ 'field.latitude': 54 }))?.before).toBe('So far: 54.00 degrees.');
    expect(changing(fieldOf({}))?.before).toBeNull();
  });

  test('is said in the log with those beside it, and shown on its card without them', () => {
    const conversation = talk([started(pack, fieldLess(fitMorning, 'soil.feel', 'soil.surface'))], world);
    const { question, entries } = look(conversation, pack);
    expect(entries.at(-1)).toMatchObject({
      kind: 'question',
      text: 'What does the surface look like? How does the soil feel in the hand?',
    });
    expect(question?.ask).toBe('What does the surface look like?');
    expect(question?.together.map(({ ask, before, together }) => [ask, before, together])).toEqual([
      ['How does the soil feel in the hand?', null, []],
    ]);
  });
});

describe('a question in a language that its pack lacks', () => {
  const bare = (text: Question['text']): typeof pack => ({
    ...pack,
    questions: pack.questions.map((one) => (one.id === 'soil-feel' ? { ...one, text } : one)),
  });
  const put = { kind: 'pack', question: 'soil-feel', together: [], conflict: [] } as const;

  test.each<[string, Question['text'], string]>([
    ['is put in English', { en: { ask: 'Feel?', why: '', how: '' } }, 'Feel?'],
    ['is put by its id where there is no English either', {}, 'soil-feel'],
  ])('%s', (_, text, ask) => {
    expect(questionText(put, { ...contextIn('de'), pack: bare(text) })).toBe(ask);
  });

  test('has empty sentences where it has none', () => {
    const { state } = talk([started(pack, fieldLess(fitMorning, 'soil.feel'))], world);
    const view = questionView(openQuestion(state, bare({}))!, state, { ...contextIn('en'), pack: bare({}) });
    expect([view.ask, view.why, view.how]).toEqual(['soil-feel', '', '']);
  });

  test('that the pack no longer has is put by its id', () => {
    expect(questionText({ ...put, question: 'gone' }, contextIn('en'))).toBe('gone');
  });

  test('on which devices differ says so of each fact first', () => {
    const number = (value: number) => ({ type: 'number', value }) as const;
    const conflict = [
      { fact: 'wind.boomKmh', reading: number(5) },
      { fact: 'wind.gustKmh', reading: number(7) },
      { fact: 'wind.boomKmh', reading: number(9) },
    ] as const;
    const text = questionText({ ...put, together: ['surface'], conflict }, contextIn('en'));
    expect(text).toMatchInlineSnapshot(
      `"Two devices gave different answers for wind at boom height: 5 km/h and 9 km/h. Two devices gave different answers for gusts at boom height: 7 km/h. How does the soil feel in the hand? What does the surface look like?"`,
    );
  });
});
