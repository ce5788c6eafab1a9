import { describe, expect, test } from 'vitest';
import { keptOnLookingAgain, spentQuestions } from '../../../src/core/dialogue/spent.ts';
import type { Resolved } from '../../../src/core/facts/types.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { choice, number } from '../../generators/small.ts';

const { pack } = shipped;
const unknown = (reason: Extract<Resolved, { known: false }>['reason']): Resolved => ({ known: false, reason });
const answered = (...questions: string[]) => questions.map((question) => ({ question, event: 'e' }));
const feelAnd = (feel: Resolved) => ({ 'soil.feel': feel, 'soil.fieldCapacityPercent': unknown('not-asked') });

describe('a question that was answered', () => {
  test.each<[string, Resolved, boolean]>([
    ['known', choice('moist'), true],
    ['too vague to settle anything', unknown('does-not-settle'), true],
    ['impossible', unknown('implausible'), true],
    ['too old', unknown('too-old'), false],
    ['contradicted by another device', unknown('in-conflict'), false],
  ])('what was said being %s, is not asked again: %s %s', (_, feel, isSpent) => {
    expect(spentQuestions(answered('soil-feel'), pack, feelAnd(feel)).has('soil-feel')).toBe(isSpent);
  });

  test('is asked again where one of its facts grew old, though the other has not', () => {
    const place = { 'field.latitude': number(54), 'field.longitude': unknown('too-old') };
    expect(spentQuestions(answered('place'), pack, place).has('place')).toBe(false);
    expect(spentQuestions(answered('place'), pack, { ...place, 'field.longitude': number(-2) }).has('place')).toBe(
      true,
    );
  });
});

describe('a question that was not answered', () => {
  const place = (latitude: Resolved, longitude: Resolved) => ({
    'field.latitude': latitude,
    'field.longitude': longitude,
  });
  const noIdea = unknown('person-does-not-know');

  test.each<[string, Resolved, Resolved, boolean]>([
    ['all that is not known of it the person does not know', noIdea, noIdea, true],
    ['the one thing that is not known of it the person does not know', number(54), noIdea, true],
    ['the person does not know one thing and was not asked the other', noIdea, unknown('not-asked'), false],
    ['all is known', number(54), number(-2), false],
  ])('where %s: is spent, %s %s', (_, latitude, longitude, isSpent) => {
    expect(spentQuestions([], pack, place(latitude, longitude)).has('place')).toBe(isSpent);
  });
});

describe('looking again', () => {
  test('keeps "don\'t know" for as long as it is fresh, and judges all else anew', () => {
    const facts = { 'soil.feel': choice('moist'), 'crop.trueLeaves': unknown('person-does-not-know') };
    const kept = keptOnLookingAgain(answered('soil-feel', 'true-leaves', 'no-such', 'country'), pack, facts);
    expect(kept.map(({ question }) => question)).toEqual(['true-leaves']);
    const older = { ...facts, 'crop.trueLeaves': unknown('too-old') };
    expect(keptOnLookingAgain(answered('true-leaves'), pack, older)).toEqual([]);
  });
});
