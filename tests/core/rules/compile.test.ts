import { describe, expect, test } from 'vitest';
import { compileRules, monthDayNumber } from '../../../src/core/rules/compile.ts';
import { judgeComparison } from '../../../src/core/rules/judge.ts';
import { comparisonsIn } from '../../../src/core/rules/reads.ts';
import type { CompiledCondition, Condition, Rule } from '../../../src/core/rules/types.ts';
import type { Parameter } from '../../../src/core/units/parameter.ts';
import { type CodedDetails, codedOf } from '../../fixtures/coded.ts';
import { ofCore } from '../../fixtures/core-facts.ts';
import { generatedParameters } from '../../generators/conditions.ts';
import { choice, day, holdRule, number, signsSeen } from '../../generators/small.ts';

const windy: Condition = { fact: 'wind.boomKmh', above: 'n0l1' };
const stormy: Condition = { fact: 'wind.boomKmh', above: 'n0l2' };
const compile = (rules: readonly Rule[], parameters: readonly Parameter[] = generatedParameters) =>
  compileRules({ ...ofCore, rules, parameters }, '2026-11-06');

test('rules are compiled in the order of their ids, each with the facts and limits that it reads, once and as written', () => {
  const { rules } = compile([
    holdRule('b', { all: [windy, { fact: 'soil.feel', is: 'dry' }, { not: stormy }, windy] }),
    holdRule('c', { rule: 'b' }),
    holdRule('a', { fact: 'date', atLeast: 'day2' }),
  ]);
  expect(rules.map(({ rule, facts, parameters }) => [rule.id, facts, parameters])).toEqual([
    ['a', ['date'], ['day2']],
    ['b', ['wind.boomKmh', 'soil.feel'], ['n0l1', 'n0l2']],
    ['c', ['wind.boomKmh', 'soil.feel'], ['n0l1', 'n0l2']],
  ]);
});

test.each<readonly [Condition, object]>([
  [
    windy,
    { fact: 'wind.boomKmh', op: 'above', limit: { kind: 'number', value: 9.6 }, parameter: 'n0l1', unit: 'km/h' },
  ],
  [
    { fact: 'date', atMost: 'day0' },
    { fact: 'date', op: 'atMost', limit: { kind: 'month-day', value: 131 }, parameter: 'day0', unit: null },
  ],
  [
    { fact: 'soil.feel', isNot: 'dry' },
    { fact: 'soil.feel', op: 'isNot', limit: { kind: 'choices', values: ['dry'] }, parameter: null, unit: null },
  ],
  [
    { fact: 'soil.feel', oneOf: ['dry', 'wet'] },
    { fact: 'soil.feel', op: 'oneOf', limit: { kind: 'choices', values: ['dry', 'wet'] }, parameter: null, unit: null },
  ],
  [
    { fact: 'field.country', noneOf: { parameter: 'countries' } },
    {
      fact: 'field.country',
      op: 'noneOf',
      limit: { kind: 'choices', values: ['GB-ENG', 'GB-SCT'] },
      parameter: 'countries',
      unit: null,
    },
  ],
])('%j is compiled with its limit and the unit of its fact', (when, compiled) => {
  const [rule] = compile([holdRule('a', when)]).rules;
  expect(rule?.condition).toEqual({ kind: 'comparison', name: 'a', ...compiled });
});

test.each([
  ['01-01', 101],
  ['02-29', 229],
  ['12-31', 1231],
])('%s is the day of the year %d', (monthDay, as) => {
  expect(monthDayNumber(monthDay)).toBe(as);
});

describe('a rule of practice that an overlay changed', () => {
  const changed: Rule = { ...holdRule('practice', stormy), earlier: [windy] };
  const naming = (when: Condition, more: Partial<Rule> = { authority: 'label' }, named: Rule = changed) => {
    const rules = [{ ...holdRule('naming', when), ...more }, named];
    const found = compile(rules).rules.find(({ rule }) => rule.id === 'naming');
    return found && [shapeOf(found.condition), ...comparisonsIn(found.condition).map(({ name }) => name)];
  };
  /** The condition in short: groups, and the parameters of its comparisons. */
  const shapeOf = (condition: CompiledCondition): string => {
    if (condition.kind === 'comparison') return condition.parameter ?? '';
    if ('member' in condition) return `${condition.kind}(${shapeOf(condition.member)})`;
    return `${condition.kind}(${condition.members.map(shapeOf).join()})`;
  };

  test('holds by either condition where a protected rule names it, by both under a not, and by both turns again', () => {
    expect(naming({ rule: 'practice' })).toEqual(['rule(any(n0l1,n0l2))', 'naming/rule/any/0', 'naming/rule/any/1']);
    expect(naming({ not: { rule: 'practice' } })).toEqual([
      'not(rule(all(n0l1,n0l2)))',
      'naming/not/rule/all/0',
      'naming/not/rule/all/1',
    ]);
    expect(naming({ not: { not: { rule: 'practice' } } })?.[0]).toBe('not(not(rule(any(n0l1,n0l2))))');
  });

  test.each<readonly [string, Partial<Rule>, Rule]>([
    ['a rule of practice names it', {}, changed],
    ['it is protected itself', { authority: 'label' }, { ...changed, protectedByPractice: true }],
    ['it has no earlier condition', { authority: 'label' }, holdRule('practice', stormy)],
  ])('holds by the one that it has where %s', (_, more, named) => {
    expect(naming({ rule: 'practice' }, more, named)).toEqual(['rule(n0l2)', 'naming/rule']);
  });

  test('holds so for a safety rule of practice too', () => {
    expect(naming({ rule: 'practice' }, { protectedByPractice: true })?.[0]).toBe('rule(any(n0l1,n0l2))');
  });
});

describe('what cannot be compiled is told in full', () => {
  const fault = (rules: readonly Rule[], parameters?: readonly Parameter[]): CodedDetails =>
    codedOf(() => compile(rules, parameters));
  const valued = (value: Parameter['value']) =>
    generatedParameters.map((one) => (one.id === 'n0l1' ? { ...one, value } : one));

  test.each<readonly [string, () => CodedDetails, CodedDetails]>([
    [
      'a limit that is not in force',
      () => fault([holdRule('a', { any: [{ fact: 'wind.boomKmh', above: 'gone' }] })]),
      {
        code: 'PARAMETER_MISSING',
        expected: 'a value in force on 2026-11-06',
        came: 'nothing',
        parameter: 'gone',
        rule: 'a',
      },
    ],
    [
      'a rule that there is none of',
      () => fault([holdRule('a', { rule: 'b' })]),
      { code: 'RULE_REFERENCE_MISSING', expected: 'the id of a rule of this pack', came: 'b', rule: 'a' },
    ],
    [
      'rules in a circle',
      () => fault([holdRule('a', { rule: 'b' }), holdRule('b', { any: [windy, { rule: 'b' }] })]),
      { code: 'RULE_REFERENCE_CYCLE', expected: 'references that end', came: 'a > b > b', rule: 'a' },
    ],
    [
      'a list as a limit on a scale',
      () => fault([holdRule('a', windy)], valued(['x'])),
      { code: 'PARAMETER_VALUE_WRONG', expected: 'a number or MM-DD', came: '["x"]', parameter: 'n0l1' },
    ],
    [
      'a number as a list',
      () => fault([holdRule('a', { fact: 'field.country', oneOf: { parameter: 'n0l1' } })], valued(3)),
      { code: 'PARAMETER_VALUE_WRONG', expected: 'a list of choices', came: '3', parameter: 'n0l1' },
    ],
  ])('%s', (_, made, told) => {
    expect(made()).toEqual(told);
  });
});

test.each([
  [windy, choice('dry'), 'a well-formed value to compare by above with number, for a'],
  [windy, number(9, 10, 11), 'a well-formed value to compare by above with number, for a'],
  [{ fact: 'date', below: 'day0' }, number(3), 'a well-formed value to compare by below with month-day, for a'],
  [{ fact: 'soil.feel', is: 'dry' }, signsSeen([]), 'a well-formed value to compare by is with choices, for a'],
  [
    { fact: 'soil.surface', has: 'cracked' },
    day('2026-11-06'),
    'a well-formed value to compare by has with choices, for a',
  ],
] as const)('a value of the wrong kind is told with the fact that it is for: %j', (when, fact, expected) => {
  const [rule] = compile([holdRule('a', when as Condition)]).rules;
  const [comparison] = comparisonsIn(rule!.condition);
  expect(codedOf(() => judgeComparison(comparison!, fact))).toEqual({
    code: 'FACT_MALFORMED',
    expected,
    came: JSON.stringify(fact),
    fact: when.fact,
  });
});
