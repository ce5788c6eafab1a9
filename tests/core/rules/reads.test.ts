import { describe, expect, test } from 'vitest';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { givesDose, reachedFacts } from '../../../src/core/rules/reach.ts';
import { comparisonsOf, operatorOf, parameterOf, readsOf, referencesOf } from '../../../src/core/rules/reads.ts';
import type { Comparison, Condition, Operator } from '../../../src/core/rules/types.ts';
import { generatedParameters } from '../../generators/conditions.ts';
import { holdRule } from '../../generators/small.ts';

const windy: Comparison = { fact: 'wind.boomKmh', above: 'n0l1' };
const dry: Comparison = { fact: 'soil.feel', is: 'dry' };
const abroad: Comparison = { fact: 'field.country', noneOf: { parameter: 'countries' } };
const late: Comparison = { fact: 'date', atLeast: 'day2' };

describe('what a condition reads', () => {
  const rules = [
    { ...holdRule('b', { all: [dry, { rule: 'c' }] }), earlier: [late] },
    holdRule('c', { any: [{ rule: 'b' }, abroad] }),
  ];
  const byId = new Map(rules.map((rule) => [rule.id, rule]));

  test.each<readonly [string, Condition, readonly Comparison[], readonly string[]]>([
    ['alone', windy, [windy], []],
    [
      'in groups and turned, in written order',
      { all: [dry, { not: windy }, { eitherOf: [late, abroad] }] },
      [dry, windy, late, abroad],
      [],
    ],
    [
      'in a rule that it names, with what that had before, each rule once',
      { any: [windy, { rule: 'b' }, { rule: 'b' }] },
      [windy, late, dry, abroad],
      ['b', 'b'],
    ],
    ['turned', { not: { rule: 'c' } }, [late, dry, abroad], ['c']],
    ['in a rule that there is none of', { any: [{ rule: 'gone' }, dry] }, [dry], ['gone']],
  ])('%s', (_, condition, comparisons, names) => {
    expect(comparisonsOf(condition, byId)).toHaveLength(comparisons.length);
    expect(new Set(comparisonsOf(condition, byId))).toEqual(new Set(comparisons));
    expect(referencesOf(condition)).toEqual(names);
  });

  test('is its facts and the parameters that it names, each once', () => {
    expect(readsOf({ all: [windy, windy, dry, { rule: 'c' }] }, byId)).toEqual({
      facts: new Set(['wind.boomKmh', 'soil.feel', 'date', 'field.country']),
      parameters: new Set(['n0l1', 'day2', 'countries']),
    });
  });

  test.each<readonly [Comparison, Operator, unknown, string | null]>([
    [windy, 'above', 'n0l1', 'n0l1'],
    [{ fact: 'wind.boomKmh', atMost: 'n0l2' }, 'atMost', 'n0l2', 'n0l2'],
    [dry, 'is', 'dry', null],
    [{ fact: 'soil.feel', isNot: 'dry' }, 'isNot', 'dry', null],
    [{ fact: 'soil.surface', has: 'cracked' }, 'has', 'cracked', null],
    [{ fact: 'soil.feel', oneOf: ['dry'] }, 'oneOf', ['dry'], null],
    [{ fact: 'soil.feel', noneOf: ['dry', 'wet'] }, 'noneOf', ['dry', 'wet'], null],
    [abroad, 'noneOf', { parameter: 'countries' }, 'countries'],
  ])('of %j: operator, right side and parameter', (comparison, op, operand, parameter) => {
    expect(operatorOf(comparison)).toEqual({ op, operand });
    expect(parameterOf(comparison)).toBe(parameter);
  });
});

describe('the facts that a pack reaches', () => {
  const [first] = generatedParameters;
  const reached = (when: Condition, more: { earlier?: readonly Condition[]; asks?: string[]; dose?: boolean } = {}) => {
    const { earlier, asks = [], dose = false } = more;
    const question = { id: 'q', facts: asks, form: 'number', effortSeconds: 1, group: 'field', text: {} } as const;
    const rule = { ...holdRule('a', when), ...(earlier ? { earlier } : {}) };
    const parameters = dose ? [{ ...first!, id: 'usualDoseGPerHa' }] : [first!];
    return Object.keys(reachedFacts({ facts: coreFacts, rules: [rule], questions: [question], parameters }));
  };
  const always = ['date', 'field.latitude', 'field.longitude'];
  const sorted = (...facts: string[]) => [...always, ...facts].toSorted();

  test('are the day and place, those of its rules now and before, of its questions and, where it gives one, of the dose', () => {
    expect(reached(dry).toSorted()).toEqual(sorted('soil.feel'));
    expect(reached(dry, { earlier: [abroad] }).toSorted()).toEqual(sorted('soil.feel', 'field.country'));
    expect(reached(dry, { asks: ['field.areaHa'] }).toSorted()).toEqual(sorted('soil.feel', 'field.areaHa'));
    const dose = ['product.activeGPerL', 'product.labelMaxGPerHa', 'weed.plantsPerM2'];
    expect(reached(dry, { dose: true }).toSorted()).toEqual(sorted('soil.feel', ...dose));
  });

  test('are what these are worked out from too, in the order of the registry', () => {
    const found = reached({ fact: 'air.deltaTC', above: 'n0l1' });
    expect(found).toEqual(expect.arrayContaining(['air.temperatureC', 'air.relativeHumidityPercent']));
    expect(found).toEqual(Object.keys(coreFacts).filter((fact) => found.includes(fact)));
  });

  test('are looked up once for a pack, and are the registry itself where they are all of it', () => {
    const pack = { facts: { date: coreFacts.date }, rules: [], questions: [], parameters: [] };
    expect(reachedFacts(pack)).toBe(pack.facts);
    const small = { facts: coreFacts, rules: [], questions: [], parameters: [] };
    expect(reachedFacts(small)).toBe(reachedFacts(small));
  });

  test('a pack tells a dose where it holds the usual one', () => {
    expect([givesDose([]), givesDose([first!]), givesDose([first!, { ...first!, id: 'usualDoseGPerHa' }])]).toEqual([
      false,
      false,
      true,
    ]);
  });
});
