import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type PartEnd, shareOut } from '../../../../src/core/rules/overlay/share-out.ts';
import { bandOf } from '../../../../src/core/rules/pack/parse-reading.ts';
import type { NumberLimit } from '../../../../src/core/rules/pack/straddle.ts';
import type { AnswerChoice, Question } from '../../../../src/core/rules/pack-types.ts';
import { roundTo } from '../../../../src/core/units/round.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';

const [sum, rate] = ['rain.next48hMm', 'rain.next48hMaxMmPerH'] as const;
const limit = (op: NumberLimit['op'], value: number): NumberLimit => ({ op, parameter: 'some', value });
const answer = (id: string, low: number, high: number, more: AnswerChoice['gives'] = {}): AnswerChoice => ({
  id,
  label: { en: id, de: id },
  gives: { [sum]: { type: 'number', value: low, low, high }, ...more },
});
const question = (...choices: readonly AnswerChoice[]): Question => ({
  ...{ id: 'q', facts: [sum, rate], form: 'choice', effortSeconds: 5, group: 'weather', text: {} },
  choices,
});
const sayEnds = (_language: string, label: string, ends: readonly PartEnd[]) =>
  [label, ...ends.map(({ fact, is, value }) => `${fact === sum ? '' : 'rate '}${is} ${value}`)].join(', ');
const sharedBy = (one: Question, limits: Readonly<Record<string, readonly NumberLimit[]>>) =>
  shareOut([one], (fact) => limits[fact] ?? [], factDefinition, sayEnds);

/** Answers as `id "words" low..value..high`, a second number behind a bar. */
const told = (choices: readonly AnswerChoice[] = []) =>
  choices.map(({ id, label, gives }) => {
    const numbers = Object.values(gives).map((one) =>
      one?.type === 'number' ? `${bandOf(one)[0]}..${one.value}..${bandOf(one)[1]}` : '?',
    );
    return `${id} "${label['en']}" ${numbers.join(' | ')}`;
  });

test.each<readonly [string, readonly NumberLimit[], readonly string[] | null]>([
  [
    'a limit at which a number is still below',
    [limit('atMost', 6)],
    ['wet-1 "wet, up-to 6" 4..4..6', 'wet-2 "wet, over 6" 6.01..8..9.99'],
  ],
  [
    'a limit at which a number is already above',
    [limit('atLeast', 6)],
    ['wet-1 "wet, under 6" 4..4..5.99', 'wet-2 "wet, from 6" 6..8..9.99'],
  ],
  [
    'two limits, in whatever order they stand',
    [limit('above', 8), limit('below', 6)],
    ['wet-1 "wet, under 6" 4..4..5.99', 'wet-2 "wet, from 6, up-to 8" 6..7..8', 'wet-3 "wet, over 8" 8.01..9..9.99'],
  ],
  [
    'two limits of both kinds at one number',
    [limit('above', 6), limit('atLeast', 6)],
    ['wet-1 "wet, under 6" 4..4..5.99', 'wet-2 "wet, from 6, up-to 6" 6..6..6', 'wet-3 "wet, over 6" 6.01..8..9.99'],
  ],
  ['a limit at its lower end that it does not cross', [limit('atLeast', 4)], null],
  ['a limit at its upper end that it does not cross', [limit('atMost', 9.99)], null],
  ['no limit', [], null],
])('an answer is shared out at %s', (_name, limits, parts) => {
  const [shared] = sharedBy(question(answer('dry', 0, 3.99), answer('wet', 4, 9.99)), { [sum]: limits });
  expect(shared === undefined ? null : told(shared.question.choices).slice(1)).toEqual(parts);
  if (shared) expect(shared.question.choices?.[0]).toEqual(answer('dry', 0, 3.99));
});

test('an answer that tells two numbers becomes one for each pair of parts, under names that are free', () => {
  const burst = answer('burst', 4, 9.99, { [rate]: { type: 'number', value: 6, low: 4, high: 9.99 } });
  const taken = answer('burst-1', 0, 1);
  const [shared] = sharedBy(question(taken, burst), { [sum]: [limit('below', 8)], [rate]: [limit('below', 5)] });
  expect(told(shared?.shared[0]?.parts)).toEqual([
    'burst-2 "burst, under 8, rate under 5" 4..4..7.99 | 4..4.5..4.99',
    'burst-3 "burst, under 8, rate from 5" 4..4..7.99 | 5..6..9.99',
    'burst-4 "burst, from 8, rate under 5" 8..9..9.99 | 4..4.5..4.99',
    'burst-5 "burst, from 8, rate from 5" 8..9..9.99 | 5..6..9.99',
  ]);
  expect(shared?.shared.map(({ whole }) => whole)).toEqual([burst]);
});

test('what cannot be cut stays whole: a choice, a fact without a stated precision, a number without a band, a question without answers', () => {
  const limits = { [sum]: [limit('atMost', 6)], 'soil.feel': [limit('atMost', 6)] };
  const feel = { type: 'choice', possible: ['moist'] } as const;
  const [shared] = sharedBy(question(answer('wet', 4, 9.99, { 'soil.feel': feel })), limits);
  expect(shared?.question.choices?.map(({ gives }) => gives['soil.feel'])).toEqual([feel, feel]);
  const coarse = (fact: Parameters<typeof factDefinition>[0]) => {
    const { precision: _none, ...definition } = factDefinition(fact);
    return definition;
  };
  const asked = [question(answer('wet', 4, 9.99))];
  expect(shareOut(asked, (fact) => (fact === sum ? limits[sum] : []), coarse, sayEnds)).toEqual([]);
  expect(sharedBy(question(answer('six', 6, 6)), limits)).toEqual([]);
  const { choices: _none, ...unanswered } = question();
  expect(sharedBy(unanswered, limits)).toEqual([]);
});

test('the value of an answer stays where it is the highest of a part', () => {
  const whole: AnswerChoice = {
    ...answer('wet', 4, 9.99),
    gives: { [sum]: { type: 'number', value: 6, low: 4, high: 9.99 } },
  };
  const [shared] = sharedBy(question(whole), { [sum]: [limit('atMost', 6)] });
  expect(told(shared?.question.choices)).toEqual(['wet-1 "wet, up-to 6" 4..6..6', 'wet-2 "wet, over 6" 6.01..8..9.99']);
});

test('whatever the band and the limits: each number of the band lies in just one part, and no part lies on both sides of a limit', () => {
  const step = factDefinition(sum).precision ?? Number.NaN;
  const number = fc.integer({ min: 0, max: 400 }).map((steps) => roundTo(steps * step, step));
  const anyLimit = fc.record({ op: fc.constantFrom('below', 'above', 'atLeast', 'atMost'), value: number });
  fc.assert(
    fc.property(number, number, fc.array(anyLimit, { maxLength: 4 }), (one, other, drawn) => {
      const [low, high] = [Math.min(one, other), Math.max(one, other)];
      const limits = drawn.map(({ op, value }) => limit(op, value));
      const whole = answer('wet', low, high);
      const [shared] = sharedBy(question(whole), { [sum]: limits });
      const bands = (shared?.question.choices ?? [whole]).map(({ gives }) => {
        const reading = gives[sum];
        return reading?.type === 'number' ? bandOf(reading) : ([Number.NaN, Number.NaN] as const);
      });
      for (let steps = 0; roundTo(low + steps * step, step) <= high; steps += 1) {
        const value = roundTo(low + steps * step, step);
        expect(bands.filter(([from, to]) => from <= value && value <= to)).toHaveLength(1);
      }
      const isMet = ({ op, value }: NumberLimit, number: number) =>
        ({ below: number < value, above: number > value, atLeast: number >= value, atMost: number <= value })[op];
      for (const [from, to] of bands) {
        expect(from).toBeLessThanOrEqual(to);
        expect(limits.filter((each) => isMet(each, from) !== isMet(each, to))).toEqual([]);
      }
    }),
  );
});
