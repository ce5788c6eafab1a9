import { describe, expect, test } from 'vitest';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import type { KnownChoice } from '../../../src/core/facts/types.ts';
import { type ChangesInput, changesByRule, smallestSetOf } from '../../../src/core/outlook/changes/needed.ts';
import { leastChanges } from '../../../src/core/outlook/changes/ways.ts';
import { knownChoice, knownDate, knownNumber } from '../../../src/core/rules/analyse/known-values.ts';
import type { CompiledRule } from '../../../src/core/rules/types.ts';
import { hoursAfter } from '../facts/moments.ts';
import { morning } from './field.ts';
import { compare, group, ruleOf, rulesOf } from './small-rules.ts';

const world = (facts: ResolvedFacts) => ({ facts, today: '2026-11-06', registry: coreFacts });

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
