import { describe, expect, test } from 'vitest';
import { coreFacts, type FactId } from '../../../src/core/facts/registry/index.ts';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import type { KnownChoice, KnownSigns } from '../../../src/core/facts/types.ts';
import { applyChange } from '../../../src/core/outlook/changes/apply.ts';
import { distanceOf, type LeafChange, leafChange } from '../../../src/core/outlook/changes/leaf.ts';
import { type ChangesInput, changesByRule, smallestSetOf } from '../../../src/core/outlook/changes/needed.ts';
import { leastChanges } from '../../../src/core/outlook/changes/ways.ts';
import { knownChoice, knownDate, knownNumber, knownSigns } from '../../../src/core/rules/analyse/known-values.ts';
import type { CompiledRule, Operator } from '../../../src/core/rules/types.ts';
import { hoursAfter } from '../facts/moments.ts';
import { morning } from './field.ts';
import { compare, group, ruleOf, rulesOf } from './small-rules.ts';

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

describe('the least changes of a condition', () => {
  const warm = compare('soil.temperature30cmC', 'above', 10);
  const windy = compare('wind.boomKmh', 'above', 9);
  const dry = compare('soil.feel', 'is', 'dry');
  const facts: ResolvedFacts = {
    'soil.temperature30cmC': knownNumber(11),
    'wind.boomKmh': knownNumber(20),
    'soil.feel': knownChoice('dry'),
  };
  const told = (condition: Parameters<typeof leastChanges>[0], wanted = false, given = facts) =>
    leastChanges(condition, wanted, world(given))?.map(({ fact, to }) => `${fact} ${to}`) ?? null;
  const hot = 'soil.temperature30cmC 10';
  const [calm, moister] = ['wind.boomKmh 9', 'soil.feel slightly-moist'];

  test('of all that must hold the cheapest alone, of any that may hold each', () => {
    expect(told(group('all', warm, windy, dry))).toEqual([hot]);
    expect(told(group('any', warm, windy, dry))).toEqual([hot, calm, moister]);
    expect(told(group('eitherOf', windy, dry))).toEqual([calm, moister]);
    expect(told(group('all', group('any', warm, dry), windy))).toEqual([calm]);
  });

  test('of what is not so the other way: each of all, the cheapest of any', () => {
    const good: ResolvedFacts = {
      'soil.temperature30cmC': knownNumber(9),
      'wind.boomKmh': knownNumber(1),
      'soil.feel': knownChoice('moist'),
    };
    const [warmer, windier] = ['soil.temperature30cmC 10.01', 'wind.boomKmh 9.01'];
    expect(told(group('all', warm, windy), true, good)).toEqual([warmer, windier]);
    expect(told(group('any', dry, warm), true, good)).toEqual([warmer]);
    expect(told({ kind: 'not', member: group('any', warm, windy) })).toEqual([]);
    expect(told({ kind: 'not', member: group('any', dry, warm) }, false, good)).toEqual([warmer]);
    expect(told({ kind: 'rule', rule: 'x', member: windy }, true, good)).toEqual([windier]);
  });

  test('none where it is so already, null where no change can bring it', () => {
    const never = compare('air.relativeHumidityPercent', 'above', 100);
    expect(told(windy, true)).toEqual([]);
    expect(told(never, true)).toBeNull();
    expect(told(group('all', never, dry), true)).toBeNull();
    expect(told(group('any', never, compare('soil.feel', 'is', 'wet')), true)).toEqual(['soil.feel wet']);
    expect(told(group('any', never), true)).toBeNull();
  });

  test('a member that is not known is left for asking where any would do, and changed where all must hold', () => {
    const { 'soil.feel': _, ...others } = facts;
    expect(told(group('any', dry, windy), false, others)).toEqual([calm]);
    const never = compare('air.relativeHumidityPercent', 'above', 100);
    expect(told(group('any', dry, never), true, others)).toEqual(['soil.feel dry']);
    expect(told(group('all', dry, compare('wind.boomKmh', 'above', 30)), true, others)).toEqual([
      'soil.feel dry',
      'wind.boomKmh 30.01',
    ]);
  });
});

describe('what would have to change', () => {
  const inputOf = (rules: readonly CompiledRule[], facts: ResolvedFacts): ChangesInput => ({
    compiled: rulesOf(rules),
    facts,
    at: morning,
    today: '2026-11-06',
    forecastAt: (rule) => (rule === 'windy' ? hoursAfter(morning, 3) : null),
  });
  const windy = ruleOf('windy', compare('wind.boomKmh', 'above', 9), { lifts: 'days' });
  const felt: KnownChoice = knownChoice('dry');
  const dry = ruleOf('dry', compare('soil.feel', 'is', 'dry'), { lifts: 'days' });

  test('is told for each stop and hold that is met, in the order of the rules; advice needs nothing', () => {
    const facts = { 'wind.boomKmh': knownNumber(12), 'soil.feel': felt };
    const advice = ruleOf('advice', compare('wind.boomKmh', 'above', 5), { effect: 'advise', lifts: null });
    const stop = ruleOf('stop', compare('wind.boomKmh', 'above', 10), { effect: 'stop', lifts: 'season' });
    const calm = ruleOf('calm', compare('wind.boomKmh', 'below', 1));
    expect(changesByRule(inputOf([advice, windy, dry, stop, calm], facts))).toEqual([
      {
        rule: 'windy',
        fact: 'wind.boomKmh',
        unit: 'km/h',
        now: knownNumber(12),
        how: 'reach',
        to: 9,
        by: -3,
        lifts: 'hours',
        forecastAt: hoursAfter(morning, 3),
      },
      {
        rule: 'dry',
        fact: 'soil.feel',
        unit: null,
        now: felt,
        how: 'reach',
        to: 'slightly-moist',
        by: null,
        lifts: 'days',
        forecastAt: null,
      },
      expect.objectContaining({ rule: 'stop', to: 10, lifts: 'season' }),
    ]);
  });

  test('the smallest set judges anew after each change, drops what is not needed, and is empty where nothing helps', () => {
    const facts = { 'wind.boomKmh': knownNumber(12), 'soil.feel': felt };
    const lower = ruleOf('lower', compare('wind.boomKmh', 'above', 6));
    const set = (rules: readonly CompiledRule[]) =>
      smallestSetOf(inputOf(rules, facts)).map(({ rule, fact, to }) => [rule, fact, to]);
    expect(set([windy, lower, dry])).toEqual([
      ['lower', 'wind.boomKmh', 6],
      ['dry', 'soil.feel', 'slightly-moist'],
    ]);
    const never = ruleOf('never', compare('field.country', 'oneOf', ['GB-ENG']));
    expect(smallestSetOf(inputOf([windy, never], { ...facts, 'field.country': knownChoice('GB-ENG') }))).toEqual([]);
    expect(set([])).toEqual([]);
    const gale = ruleOf('gale', compare('wind.boomKmh', 'below', 9.5));
    expect(set([windy, gale])).toEqual([]);
  });

  test('a day is counted from the day of the facts where they have one, else from today', () => {
    const closed = ruleOf('closed', compare('date', 'above', 1001), { lifts: 'season' });
    const open = ruleOf('open', compare('date', 'below', 1201), { lifts: 'season' });
    const to = (facts: ResolvedFacts) => changesByRule(inputOf([closed], facts)).map((one) => [one.to, one.by]);
    expect(to({ date: knownDate('2028-11-06') })).toEqual([['2029-01-01', 56]]);
    expect(changesByRule(inputOf([open], { date: knownDate('2028-11-06') }))).toMatchObject([{ to: '2028-12-01' }]);
  });
});
