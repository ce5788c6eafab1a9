import { describe, expect, test } from 'vitest';
import { localDate } from '../../../src/core/facts/local-day.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { cardParts, fieldCard } from '../../../src/core/tour/field-card.ts';
import { makeTour, tourMoment } from '../../../src/core/tour/make-tour.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { shipped } from '../../cases/shipped-pack.ts';

const { pack } = shipped;

/** Rules and tour, made anew in each test, so that each is seen to reach what it checks. */
function told() {
  const at = tourMoment(pack, epochSeconds(0));
  const compiled = compileRules(pack, localDate(at, pack.zone));
  return { compiled, tour: makeTour({ pack, compiled, at }) };
}

function made() {
  const { compiled, tour } = told();
  return fieldCard(pack, compiled, tour);
}
const partOf = (rule: string) => made().parts.find(({ rules }) => rules.some((one) => one.rule.id === rule))?.part;

describe('the card for the cab', () => {
  test('holds every rule once, its parts in the order of the way to the field', () => {
    const card = made();
    const rules = card.parts.flatMap(({ rules: own }) => own.map(({ rule }) => rule.id));
    expect(rules.toSorted()).toEqual(pack.rules.map(({ id }) => id).toSorted());
    const parts = card.parts.map(({ part }) => part);
    expect(parts).toEqual(cardParts.filter((part) => parts.includes(part)));
  });

  test.each([
    ['season-closed', 'season'],
    ['one-application', 'season'],
    ['slope-to-water', 'field'],
    ['crop-too-small', 'crop'],
    ['soil-too-warm', 'soil'],
    ['too-windy', 'weather'],
    // Asks of the field and of the soil: judged where the last of them is met.
    ['drains-about-to-run', 'soil'],
  ] as const)('has %s under %s', (rule, part) => {
    expect(partOf(rule)).toBe(part);
  });

  test('puts what stops before what holds, and advice last, in each part', () => {
    for (const { part, rules } of made().parts) {
      const order = rules.map(({ rule }) => ['stop', 'hold', 'advise'].indexOf(rule.effect));
      expect(order, part).toEqual(order.toSorted((a, b) => a - b));
    }
  });

  test('has the hand test from dry to saturated, each class with the rules that it meets', () => {
    const card = made();
    expect(card.hand?.question.id).toBe('soil-feel');
    const classes = new Map(card.hand?.classes.map(({ choice, met }) => [choice, met]));
    expect([...classes.keys()]).toEqual(['dry', 'slightly-moist', 'moist', 'wet', 'at-capacity', 'saturated']);
    expect(classes.get('dry')).toContain('soil-too-dry');
    expect(classes.get('saturated')).toContain('soil-saturated');
    expect(classes.get('moist')).toEqual([]);
  });

  test('knows the question by which areas of drinking water are looked up', () => {
    expect(made().waterArea?.id).toBe('protected-area');
  });

  test('of a pack that asks neither has neither', () => {
    const { compiled, tour } = told();
    const questions = pack.questions.filter(({ id }) => id !== 'soil-feel' && id !== 'protected-area');
    expect(fieldCard({ ...pack, questions }, compiled, tour)).toMatchObject({ hand: null, waterArea: null });
  });

  test('leaves out a part that no rule belongs to', () => {
    const { compiled, tour } = told();
    const rules = compiled.rules.filter(({ rule }) => rule.id === 'too-windy');
    expect(fieldCard(pack, { ...compiled, rules }, tour).parts).toEqual([{ part: 'weather', rules }]);
  });

  test('has a hand test without classes where the tour does not come to it', () => {
    const { compiled, tour } = told();
    expect(fieldCard(pack, compiled, { ...tour, steps: [] }).hand?.classes).toEqual([]);
  });
});
