import { describe, expect, test } from 'vitest';
import { definitionsOf } from '../../../src/core/facts/registry/index.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import type { Pack, Question } from '../../../src/core/rules/pack-types.ts';
import { answersOf } from '../../../src/core/tour/answers.ts';
import { fieldCard } from '../../../src/core/tour/field-card.ts';
import { ruleGraph } from '../../../src/core/tour/graph.ts';
import { makeTour, tourMoment } from '../../../src/core/tour/make-tour.ts';
import { openCard, openTour } from '../../../src/core/tour/open-tour.ts';
import type { AnswerShape, RuleAfter } from '../../../src/core/tour/types.ts';
import { parametersWith, smallPack } from '../compare/small-pack.ts';
import { utc } from '../facts/moments.ts';

const now = utc('2026-11-06T09:00Z');
const text = { en: { ask: 'A?', why: 'W.', how: 'H.' } };
/** Questions beside those of the small pack: two with numbers, one for the dose, one that offers classes of the soil. */
const more: readonly Question[] = [
  { id: 'soil-warmth', facts: ['soil.temperature30cmC'], form: 'number', effortSeconds: 20, group: 'soil', text },
  {
    id: 'strength',
    facts: ['product.activeGPerL'],
    form: 'number',
    effortSeconds: 5,
    group: 'dose',
    forDose: true,
    text,
  },
  {
    id: 'feel',
    facts: ['soil.feel'],
    form: 'choice',
    effortSeconds: 25,
    group: 'soil',
    choices: ['dry', 'moist'].map((id) => {
      return { id, label: { en: id }, gives: { 'soil.feel': { type: 'choice', possible: [id] } } };
    }),
    text,
  },
];
const pack = (): Pack => ({ ...smallPack(), questions: [...smallPack().questions, ...more] });

const shapeText = (shape: AnswerShape) =>
  shape.kind === 'choice'
    ? shape.choice
    : `${shape.withFrom ? '[' : '('}${shape.from} ${shape.to}${shape.withTo ? ']' : ')'}`;
const ruleText = ({ rule, outcome, waitsFor }: RuleAfter) =>
  `${rule} ${outcome}${waitsFor.length === 0 ? '' : ` (${waitsFor.join(', ')})`}`;

describe('the tour of a small pack', () => {
  const tour = (change: Partial<Pack> = {}) => openTour({ ...pack(), ...change }, now).tour;

  test('asks in order of effort, what is for the dose last, and tells which rules read each', () => {
    expect(
      tour().steps.map(({ number, question, rules, forDose }) => [number, question, rules.join(), forDose]),
    ).toEqual([
      [1, 'wind', 'too-windy', false],
      [2, 'soil-warmth', 'warm-and-dry', false],
      [3, 'feel', 'too-dry,warm-and-dry', false],
      [4, 'surface', 'warm-and-dry', false],
      [5, 'strength', '', true],
    ]);
  });

  test('names what rules read and nobody is asked for, with those rules', () => {
    expect(tour().unasked).toEqual([
      { fact: 'field.country', rules: ['elsewhere'] },
      { fact: 'date', rules: ['late'] },
      { fact: 'soil.fieldCapacityPercent', rules: ['too-dry', 'warm-and-dry'] },
    ]);
  });

  test('tells of each answer what it settles, what stays open on what, and what it closes', () => {
    const lines = tour().steps.flatMap(({ question, answers }) =>
      answers.map(
        ({ shape, after, rules, closes }) =>
          `${question} ${shapeText(shape)}: ${after}; ${rules.map(ruleText).join('; ')}${closes.map((one) => `; closes ${one}`).join('')}`,
      ),
    );
    expect(lines).toMatchInlineSnapshot(`
      [
        "wind calm: asks-on; too-windy not-met",
        "wind unsure: asks-on; too-windy unknown (wind.boomKmh)",
        "soil-warmth (null 10]: asks-on; warm-and-dry not-met; closes surface",
        "soil-warmth (10 null): asks-on; warm-and-dry unknown (soil.feel, soil.fieldCapacityPercent, soil.surface)",
        "feel dry: ends; too-dry met; warm-and-dry unknown (soil.temperature30cmC)",
        "feel moist: asks-on; too-dry not-met; warm-and-dry unknown (soil.temperature30cmC, soil.surface)",
        "surface cracked: asks-on; warm-and-dry unknown (soil.temperature30cmC)",
      ]
    `);
  });
});

describe('the answers of a question', () => {
  const shapes = (question: Partial<Question>, change: Partial<Pack> = {}, range?: readonly [number, number]) => {
    const one = { ...pack(), ...change };
    const definitions = definitionsOf(one.facts);
    const definitionOf: typeof definitions = (fact) => {
      const { range: usual, ...rest } = definitions(fact);
      return { ...rest, ...((range ?? usual) ? { range: range ?? usual! } : {}) };
    };
    return answersOf({ ...more[0]!, ...question }, compileRules(one, '2026-11-06'), definitionOf);
  };
  const told = (...args: Parameters<typeof shapes>) => shapes(...args).map(({ shape }) => shapeText(shape));

  test('are its buttons, where it has some', () => {
    expect(told(more[2]!)).toEqual(['dry', 'moist']);
  });

  test('are none where no rule reads its number, or it asks for nothing', () => {
    expect(told({ facts: ['product.activeGPerL'] })).toEqual([]);
    expect(told({ facts: [] })).toEqual([]);
    expect(told({ facts: ['date'] })).toEqual([]);
  });

  const rule = (id: string, when: Pack['rules'][number]['when']) => ({ ...smallPack().rules[0]!, id, when });
  const two = (...whens: Pack['rules'][number]['when'][]) => ({
    rules: whens.map((when, at) => rule(`r${at}`, when)),
    parameters: [
      ...smallPack().parameters,
      { ...parametersWith('soilWarmC', { value: 6 }).find(({ id }) => id === 'soilWarmC')!, id: 'soilColdC' },
    ],
  });
  const fact = 'soil.temperature30cmC' as const;
  test.each([
    ['above one limit', two({ fact, above: 'soilWarmC' }), ['(null 10]', '(10 null)']],
    ['at least one limit', two({ fact, atLeast: 'soilWarmC' }), ['(null 10)', '[10 null)']],
    [
      'below one and above another',
      two({ fact, above: 'soilWarmC' }, { fact, below: 'soilColdC' }),
      ['(null 6)', '[6 10]', '(10 null)'],
    ],
    [
      'from one on and up to another, given the greater first',
      two({ fact, atLeast: 'soilWarmC' }, { fact, atMost: 'soilColdC' }),
      ['(null 6]', '(6 10)', '[10 null)'],
    ],
    [
      'below and above the same',
      two({ fact, above: 'soilWarmC' }, { fact, below: 'soilWarmC' }),
      ['(null 10)', '[10 10]', '(10 null)'],
    ],
  ])('that compare it %s are cut there', (_, change, expected) => {
    expect(told({}, change)).toEqual(expected);
  });

  test('end where the range of the number ends', () => {
    const one = two({ fact, above: 'soilWarmC' }, { fact, below: 'soilColdC' });
    expect(told({}, one, [6, 10])).toEqual(['[6 10]']);
    expect(told({}, one, [5, 10])).toEqual(['(null 6)', '[6 10]']);
    expect(told({}, one, [6, 12])).toEqual(['[6 10]', '(10 null)']);
    const values = shapes({}, one, [4, 14]).map(({ gives }) => gives[fact]);
    expect(values).toEqual([5, 6, 12].map((value) => ({ type: 'number', value })));
  });
});

describe('the picture of a small pack', () => {
  test('has its columns, in the order of the tour, with every link', () => {
    const opened = openTour(pack(), now);
    const nodes = [...ruleGraph(opened.pack, opened.compiled, opened.tour).values()];
    expect(nodes.map(({ id, back, on }) => `${back.join(' ')} > ${id} > ${on.join(' ')}`)).toMatchInlineSnapshot(`
      [
        " > question:wind > fact:wind.boomKmh",
        " > question:soil-warmth > fact:soil.temperature30cmC",
        " > question:feel > fact:soil.feel",
        " > question:surface > fact:soil.surface",
        " > question:strength > fact:product.activeGPerL",
        "question:wind > fact:wind.boomKmh > rule:too-windy",
        "question:soil-warmth > fact:soil.temperature30cmC > rule:warm-and-dry",
        "question:feel > fact:soil.feel > rule:warm-and-dry rule:too-dry",
        "question:surface > fact:soil.surface > rule:warm-and-dry",
        "question:strength > fact:product.activeGPerL > ",
        " > fact:field.country > rule:elsewhere",
        " > fact:date > rule:late",
        " > fact:soil.fieldCapacityPercent > rule:warm-and-dry rule:too-dry",
        "fact:wind.boomKmh > rule:too-windy > effect:hold",
        "fact:soil.temperature30cmC fact:soil.feel fact:soil.surface fact:soil.fieldCapacityPercent > rule:warm-and-dry > effect:stop",
        "fact:soil.feel fact:soil.fieldCapacityPercent > rule:too-dry > effect:hold",
        "fact:field.country > rule:elsewhere > effect:stop",
        "fact:date > rule:late > effect:advise",
        "rule:warm-and-dry rule:elsewhere > effect:stop > ",
        "rule:too-windy rule:too-dry > effect:hold > ",
        "rule:late > effect:advise > ",
      ]
    `);
  });
});

describe('the moment at which the logic is told', () => {
  const moment = (plainDay: Pack['plainDay']) => tourMoment({ ...smallPack(), ...(plainDay ? { plainDay } : {}) }, now);
  test.each([
    ['of a plain day that has one', { facts: {}, at: '2026-10-03T08:00:00Z' }, utc('2026-10-03T08:00Z')],
    ['of its date, at noon by the clock of the field', { facts: { date: '2026-07-03' } }, utc('2026-07-03T11:00Z')],
    ['of now, where it has neither', { facts: {} }, now],
  ])('is that %s', (_, plainDay, at) => {
    expect(moment(plainDay)).toBe(at);
  });

  test('is now where there is no plain day', () => {
    const { plainDay: _, ...rest } = smallPack();
    expect(tourMoment(rest, now)).toBe(now);
  });
});

test('a pack opened has its rules, its tour and its card', () => {
  const opened = openTour(pack(), now);
  expect(opened.tour).toEqual(
    makeTour({ pack: opened.pack, compiled: opened.compiled, at: tourMoment(opened.pack, now) }),
  );
  expect(opened.compiled.rules.map(({ rule }) => rule.id)).toEqual(
    pack()
      .rules.map(({ id }) => id)
      .toSorted(),
  );
  const card = openCard(opened);
  expect(card).toEqual(fieldCard(opened.pack, opened.compiled, opened.tour));
  expect(
    card.parts.map(({ part, rules }) => `${part}: ${rules.map(({ rule }) => rule.id).join()}`),
  ).toMatchInlineSnapshot(`
    [
      "season: late",
      "soil: warm-and-dry,too-dry",
      "weather: elsewhere,too-windy",
    ]
  `);
});
