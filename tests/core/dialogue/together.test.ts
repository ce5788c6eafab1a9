import { describe, expect, test } from 'vitest';
import { openQuestion } from '../../../src/core/dialogue/open-question.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';
import { askFor } from '../../bench/asking-bench.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { doesNotKnow, look, pressed, said, started, type Told, talk } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const begin = started(pack, fieldLess(fitMorning, 'soil.feel', 'soil.surface'));
const both = (also: Told): Told => {
  const { kind: _, ...given } = also as Extract<Told, { kind: 'answered' }>;
  return { ...pressed('surface'), also: [given] } as Told;
};

describe('two questions that go together', () => {
  test('stand on one card, each with what it settles now', () => {
    const { question } = look(talk([begin], world), pack);
    expect([question?.id, question?.together.map(({ id }) => id)]).toEqual(['surface', ['soil-feel']]);
    expect(question?.now).toMatch(/^What hangs on it now: /);
    expect(question?.together[0]?.now).toMatch(/^What hangs on it now: /);
  });

  test('are answered in one go, each in its own right', () => {
    const { state } = talk([begin, both(pressed('soil-feel', 'moist'))], world);
    expect(openQuestion(state, pack)).toBeNull();
    expect(state.verdicts.at(-1)?.decision.verdict).toBe('spray-today');
  });

  test('a "don\'t know" to one leaves the other answered', () => {
    const { state } = talk([begin, both(doesNotKnow('soil-feel'))], world);
    expect(openQuestion(state, pack)).toBeNull();
    expect(state.verdicts.at(-1)?.decision).toMatchObject({
      verdict: 'wait',
      missing: ['soil.feel', 'soil.fieldCapacityPercent'],
    });
  });

  test('an answer that does not fit is refused, and the other taken', () => {
    const { state } = talk([begin, both(pressed('soil-feel', 'no-such'))], world);
    expect(openQuestion(state, pack)).toMatchObject({ id: 'soil-feel', together: [] });
  });

  test('are taken back together', () => {
    const told = both(pressed('soil-feel', 'moist'));
    const { state } = talk([begin, told, { kind: 'undone', of: 'phone-1' }], world);
    expect(openQuestion(state, pack)).toMatchObject({ id: 'surface', together: [{ id: 'soil-feel' }] });
  });

  test('one sentence may answer both', () => {
    const { state } = talk([begin, said('moist, friable, none of the rest', 'surface')], world);
    expect(openQuestion(state, pack)?.id).not.toBe('soil-feel');
  });
});

describe('over made-up farms', () => {
  const apart: Pack = { ...pack, questions: pack.questions.map(({ with: _, ...question }) => question) };
  const seeds = Array.from({ length: 24 }, (_, index) => index + 1);

  const usualDays = Array.from({ length: 300 }, (_, index) => askFor(pack, index + 1, true).cards);

  test('a usual day takes three turns at most on each of the farms that the bench counts', () => {
    expect(Math.max(...usualDays.map((cards) => cards.length))).toBe(3);
  });

  test('the gusts, once the wind is known, are asked with what else takes a while at the field', () => {
    const gusts = usualDays.flat().filter(([first]) => first === 'gusts');
    expect(gusts.length).toBeGreaterThan(0);
    expect(gusts.filter((card) => card.length === 1)).toEqual([]);
  });

  test.each([
    ['a usual day', true, 3],
    ['a first day', false, 12],
  ] as const)('%s takes no more turns than its goal, and never more than one by one', (_, isKnown, goal) => {
    for (const seed of seeds) {
      const cards = askFor(pack, seed, isKnown).cards.length;
      expect(cards, `farm ${seed}`).toBeLessThanOrEqual(goal);
      expect(cards, `farm ${seed}`).toBeLessThanOrEqual(askFor(apart, seed, isKnown).cards.length);
    }
  });
});
