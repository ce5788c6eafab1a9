import { describe, expect, test } from 'vitest';
import { shipped } from '../../cases/shipped-pack.ts';
import { fieldLess, fitMorning } from './ready-field.ts';
import { doesNotKnow, fieldOf, lines, pressed, requested, started, type Told, talk, undone } from './talk.ts';

const { pack } = shipped;
const world = { pack, forecast: null };
const without = (...facts: Parameters<typeof fieldLess>[1][]): Told => started(pack, fieldLess(fitMorning, ...facts));
const last = (...told: Told[]) => lines(talk(told, world), pack).at(-1);

describe('what is asked of the assistant', () => {
  test('what was said so far: each fact once, with how old it is; not what the field brought, nor what is not known', () => {
    const told = [
      without('soil.feel', 'crop.trueLeaves', 'soil.temperature30cmC'),
      pressed('soil-feel', 'dry'),
      pressed('soil-feel', 'moist'),
      doesNotKnow('true-leaves'),
    ];
    expect(last(...told, requested('what-said'))).toBe(
      '- So far: feel of the soil in the hand: moist (you said, just now).',
    );
    expect(last(without('soil.feel'), requested('what-said'))).toBe('- You have told me nothing yet.');
  });

  test('why: the reason of the question and the rules that it settles; without such rules that it may change the answer', () => {
    expect(last(without('soil.feel'), requested('why-asked'))).toBe(
      '- Roots meet the active only in moist soil; in saturated soil it washes out. With your answer I can check for: soil saturated and soil too dry.',
    );
    expect(last(without(), requested('dose'), requested('why-asked'))).toMatch(
      /\. Until this is known the answer can still change\.$/,
    );
    expect(last(without(), requested('why-asked'))).toBe('- Nothing that is known stands in the way: spray today.');
  });

  test.each<[string, Told[], string]>([
    [
      'spray today, without the label',
      [without()],
      'For the dose I ask two things from the label in hand, once nothing else is open.',
    ],
    [
      'before any answer',
      [without('soil.feel')],
      'For the dose I ask two things from the label in hand, once nothing else is open.',
    ],
    ['do not spray', [started(pack, fieldOf({ 'field.country': 'FR' }))], 'No dose while the answer is do not spray.'],
  ])('the dose: %s', (_, told, text) => {
    expect(lines(talk([...told, requested('dose')], world), pack)).toContain(`- ${text}`);
  });

  test('what is not known is noted by the names of its facts, and for the dose with what follows', () => {
    expect(lines(talk([without('field.latitude', 'soil.feel'), doesNotKnow('place')], world), pack)).toContain(
      '- Noted as not known: latitude and longitude.',
    );
    expect(last(without(), doesNotKnow('no-such'))).toBe(
      '- No question is open just now. Say what has changed, or "look again".',
    );
  });

  test.each([
    [pressed('soil-feel', 'dry'), 'phone-1', 'Taken back: soil feels dry.'],
    [doesNotKnow('soil-feel'), 'phone-1', 'Taken back: feel of the soil in the hand: you cannot say.'],
    [
      pressed('surface'),
      'phone-1',
      'Taken back: surface none of: crumbly, cracked, sticky, ponded, frozen, under snow.',
    ],
    [pressed('soil-feel', 'dry'), 'phone-7', 'There is nothing to take back.'],
  ])('what is taken back is named: %j, %s', (told, of, text) => {
    expect(
      lines(talk([without('soil.feel', 'soil.surface', 'soil.temperature30cmC'), told, undone(of)], world), pack),
    ).toContain(`- ${text}`);
  });

  test.each(['confirm', 'deny'] as const)(
    '%s, with no question open, is told that there is nothing to say it to',
    (request) => {
      expect(last(without(), requested(request))).toBe('- There is nothing to say yes or no to just now.');
    },
  );
});
