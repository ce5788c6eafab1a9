import { describe, expect, test } from 'vitest';
import { coreFacts, type FactId } from '../../../src/core/facts/registry/index.ts';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import type { KnownSigns } from '../../../src/core/facts/types.ts';
import { applyChange } from '../../../src/core/outlook/changes/apply.ts';
import { distanceOf, type LeafChange, leafChange } from '../../../src/core/outlook/changes/leaf.ts';
import { knownChoice, knownDate, knownNumber, knownSigns } from '../../../src/core/rules/analyse/known-values.ts';
import type { Operator } from '../../../src/core/rules/types.ts';
import { morning } from './field.ts';
import { compare } from './small-rules.ts';

const world = (facts: ResolvedFacts = {}, today = '2026-11-06') => ({ facts, today, registry: coreFacts });
const changeOf = (
  fact: FactId,
  op: Operator,
  value: number | string | readonly string[],
  wanted: boolean,
  facts: ResolvedFacts = {},
  today?: string,
) => leafChange(compare(fact, op, value), wanted, world(facts, today));

describe('the least change of a number', () => {
  test.each<[Operator, boolean, number]>([
    ['above', true, 10.01],
    ['above', false, 10],
    ['atLeast', true, 10],
    ['atLeast', false, 9.99],
    ['below', true, 9.99],
    ['below', false, 10],
    ['atMost', true, 10],
    ['atMost', false, 10.01],
  ])('%s 10 C wanted %s goes to %d: to the limit, or a hundredth beyond it', (op, wanted, to) => {
    expect(changeOf('soil.temperature30cmC', op, 10, wanted)).toMatchObject({ how: 'reach', to });
  });

  test('costs the share of the usual span that it goes, a whole one where the value is not known', () => {
    // Usual at 30 cm: -2 to 25 C.
    const costFrom = (facts: ResolvedFacts) => changeOf('soil.temperature30cmC', 'above', 10, false, facts)?.cost;
    expect(costFrom({ 'soil.temperature30cmC': knownNumber(12.7) })).toBeCloseTo(0.1, 9);
    expect(costFrom({ 'soil.temperature30cmC': knownNumber(7.3) })).toBeCloseTo(0.1, 9);
    expect(costFrom({})).toBe(1);
  });

  test('there is none beyond what can be', () => {
    expect(changeOf('air.relativeHumidityPercent', 'above', 100, true)).toBeNull();
    expect(changeOf('air.relativeHumidityPercent', 'atLeast', 100, true)).toMatchObject({ to: 100 });
    expect(changeOf('air.relativeHumidityPercent', 'below', 0, true)).toBeNull();
    expect(changeOf('air.relativeHumidityPercent', 'atMost', 0, true)).toMatchObject({ to: 0 });
  });
});

describe('the least change of a choice', () => {
  test.each<[Operator, string | readonly string[], boolean, string]>([
    ['is', 'dry', true, 'dry'],
    ['is', 'wet', false, 'moist'],
    ['isNot', 'moist', true, 'slightly-moist'],
    ['isNot', 'dry', false, 'dry'],
    ['oneOf', ['dry', 'slightly-moist'], false, 'moist'],
    ['oneOf', ['dry', 'slightly-moist'], true, 'slightly-moist'],
    ['noneOf', ['moist', 'slightly-moist', 'wet'], true, 'dry'],
    ['noneOf', ['dry', 'saturated'], false, 'dry'],
  ])('felt moist, %s %j wanted %s: %s, the nearest in the order of the fact', (op, value, wanted, to) => {
    const facts = { 'soil.feel': knownChoice('moist') };
    expect(changeOf('soil.feel', op, value, wanted, facts)).toEqual({ fact: 'soil.feel', how: 'reach', to, cost: 1 });
  });

  test('from what is not known the first that is offered, and none where every choice is excluded', () => {
    expect(changeOf('soil.feel', 'noneOf', ['dry', 'slightly-moist'], true)).toMatchObject({ to: 'moist' });
    expect(changeOf('treatment.alreadyApplied', 'noneOf', ['yes', 'no'], true)).toBeNull();
  });

  test('of a fact of the field that nobody can change costs more than any that can be brought about', () => {
    const costs = (['field.drained', 'field.bufferMarked', 'field.waterPlanAgreed'] as const).map(
      (fact) => changeOf(fact, 'is', 'yes', false)?.cost,
    );
    expect(costs).toEqual([1001, 1, 1]);
  });

  test('of a country: one that the rule names', () => {
    const facts = { 'field.country': knownChoice('FR') };
    expect(changeOf('field.country', 'noneOf', ['GB-ENG', 'GB-WLS'], false, facts)).toMatchObject({ to: 'GB-ENG' });
    expect(changeOf('field.country', 'oneOf', ['GB-ENG', 'GB-WLS'], false, facts)).toBeNull();
  });

  test('of a sign: that it is there, or has gone', () => {
    expect(changeOf('soil.surface', 'has', 'cracked', true)).toMatchObject({ how: 'reach', to: 'cracked', cost: 1 });
    expect(changeOf('soil.surface', 'has', 'cracked', false)).toMatchObject({ how: 'without', to: 'cracked', cost: 1 });
  });
});

describe('the least change of the day', () => {
  test.each<[Operator, boolean, string, string]>([
    ['atLeast', true, '2026-11-06', '2027-10-01'],
    ['atLeast', true, '2026-09-30', '2026-10-01'],
    ['above', true, '2026-09-30', '2026-10-02'],
    ['below', false, '2026-09-30', '2026-10-01'],
    ['atMost', false, '2026-09-30', '2026-10-02'],
    ['below', true, '2026-11-06', '2027-01-01'],
    ['atMost', true, '2026-11-06', '2027-01-01'],
    ['atLeast', false, '2026-12-31', '2027-01-01'],
    ['atLeast', true, '2026-10-01', '2027-10-01'],
  ])('%s 1 October wanted %s, on %s: %s', (op, wanted, today, to) => {
    const change = changeOf('date', op, 1001, wanted, {}, today);
    const days = (Date.parse(to) - Date.parse(today)) / 86_400_000;
    expect(change).toEqual({ fact: 'date', how: 'reach', to, cost: days / 366 });
  });
});

describe('how far a change goes', () => {
  test('is told in the unit of a number and in days of a date, and not of a choice or from what is not known', () => {
    const unknown = { known: false, reason: 'not-asked' } as const;
    expect(distanceOf({ to: 9.6 }, knownNumber(12))).toBe(-2.4);
    expect(distanceOf({ to: 9.6 }, unknown)).toBeNull();
    expect(distanceOf({ to: 9.6 }, knownChoice('dry'))).toBeNull();
    expect(distanceOf({ to: '2027-10-01' }, knownDate('2026-11-06'))).toBe(329);
    expect(distanceOf({ to: '2027-10-01' }, unknown)).toBeNull();
    expect(distanceOf({ to: 'moist' }, knownChoice('dry'))).toBeNull();
  });
});

describe('facts with a change made', () => {
  const applied = (facts: ResolvedFacts, fact: FactId, how: LeafChange['how'], to: number | string) =>
    applyChange(facts, { fact, how, to }, morning, coreFacts)[fact];
  const said = { known: true, source: 'said', at: morning, goodUntil: null } as const;

  test('hold the value as said at that moment', () => {
    expect(applied({}, 'wind.boomKmh', 'reach', 9)).toEqual({ ...said, type: 'number', value: 9, low: 9, high: 9 });
    expect(applied({}, 'date', 'reach', '2026-12-01')).toEqual({ ...said, type: 'date', iso: '2026-12-01' });
    expect(applied({}, 'soil.feel', 'reach', 'dry')).toEqual({ ...said, type: 'choice', possible: ['dry'] });
    expect(applied({}, 'field.country', 'reach', 'FR')).toEqual({ ...said, type: 'choice', possible: ['FR'] });
  });

  test('hold a sign beside those that stand, or the others without it', () => {
    const perhaps: KnownSigns = { ...knownSigns(['cracked']), possible: ['cracked', 'snow', 'ponded'] };
    const facts = { 'soil.surface': perhaps, 'soil.feel': knownChoice('dry') };
    expect(applied(facts, 'soil.surface', 'without', 'cracked')).toEqual({
      ...said,
      type: 'signs',
      present: [],
      possible: ['snow', 'ponded'],
    });
    expect(applied(facts, 'soil.surface', 'reach', 'snow')).toEqual({
      ...said,
      type: 'signs',
      present: ['cracked', 'snow'],
      possible: ['cracked', 'ponded', 'snow'],
    });
    expect(applied({}, 'soil.surface', 'without', 'cracked')).toEqual({
      ...said,
      type: 'signs',
      present: [],
      possible: ['friable', 'sticky', 'ponded', 'frozen', 'snow'],
    });
    expect(applyChange(facts, { fact: 'wind.boomKmh', how: 'reach', to: 1 }, morning, coreFacts)['soil.feel']).toEqual(
      knownChoice('dry'),
    );
  });
});
