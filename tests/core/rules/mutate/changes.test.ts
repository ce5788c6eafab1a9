import { describe, expect, test } from 'vitest';
import { changeCondition } from '../../../../src/core/rules/mutate/change-conditions.ts';
import { changeLimit } from '../../../../src/core/rules/mutate/change-limits.ts';
import { changeRule, changesOf } from '../../../../src/core/rules/mutate/changes.ts';
import { applyChange } from '../../../../src/core/rules/mutate/types.ts';
import type { Condition } from '../../../../src/core/rules/types.ts';
import type { Parameter } from '../../../../src/core/units/parameter.ts';
import { shipped } from '../../../cases/shipped-pack.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';
import { holdRule } from '../../../generators/small.ts';

const windy: Condition = { fact: 'wind.boomKmh', above: 'w' };
const drained: Condition = { fact: 'field.drained', is: 'yes' };
const named: Condition = { rule: 'other' };
const changed = (when: Condition) => changeCondition(when, factDefinition).map((one) => [one.kind, one.when]);

describe('every single change of a condition', () => {
  test('a limit is taken or left, and the comparison turned round', () => {
    expect(changed(windy)).toEqual([
      ['negation', { not: windy }],
      ['operator', { fact: 'wind.boomKmh', atLeast: 'w' }],
    ]);
  });

  test.each([
    ['above', 'atLeast'],
    ['atLeast', 'above'],
    ['below', 'atMost'],
    ['atMost', 'below'],
  ])('%s becomes %s', (op, other) => {
    const when = { fact: 'wind.boomKmh', [op]: 'w' } as unknown as Condition;
    expect(changed(when)).toContainEqual(['operator', { fact: 'wind.boomKmh', [other]: 'w' }]);
  });

  test('a choice is denied and exchanged, a list shortened and lengthened by one, a sign exchanged', () => {
    expect(changed(drained)).toEqual([
      ['negation', { not: drained }],
      ['operator', { fact: 'field.drained', isNot: 'yes' }],
      ['choice', { fact: 'field.drained', is: 'no' }],
    ]);
    const lists = changed({ fact: 'soil.feel', oneOf: ['dry', 'slightly-moist'] });
    expect(lists).toContainEqual(['operator', { fact: 'soil.feel', noneOf: ['dry', 'slightly-moist'] }]);
    expect(lists).toContainEqual(['choice', { fact: 'soil.feel', oneOf: ['dry'] }]);
    expect(lists).toContainEqual(['choice', { fact: 'soil.feel', oneOf: ['dry', 'slightly-moist', 'wet'] }]);
    expect(lists).toHaveLength(8);
    expect(changed({ fact: 'soil.surface', has: 'cracked' })).toHaveLength(6);
  });

  test('of a group: the other connective, each member left out, each member changed', () => {
    const changes = changed({ all: [windy, named] });
    expect(changes).toEqual([
      ['negation', { not: { all: [windy, named] } }],
      ['connective', { any: [windy, named] }],
      ['member', { all: [named] }],
      ['reference', { all: [windy] }],
      ['negation', { all: [{ not: windy }, named] }],
      ['operator', { all: [{ fact: 'wind.boomKmh', atLeast: 'w' }, named] }],
      ['negation', { all: [windy, { not: named }] }],
    ]);
  });

  test('two ways to know become a demand for both, or for any', () => {
    const changes = changed({ eitherOf: [windy, drained] });
    expect(changes).toContainEqual(['connective', { all: [windy, drained] }]);
    expect(changes).toContainEqual(['connective', { any: [windy, drained] }]);
  });

  test('a not is taken away, and what it denies is changed', () => {
    expect(changed({ not: windy })).toEqual([
      ['negation', windy],
      ['operator', { not: { fact: 'wind.boomKmh', atLeast: 'w' } }],
    ]);
  });
});

describe('every single change of a limit and a rule', () => {
  const parameter = (value: Parameter['value']): Parameter => ({
    id: 'p',
    value,
    unit: 'any',
    source: 'invented',
    why: { en: 'test' },
    validFrom: '2026-01-01',
    tighter: 'neither',
  });
  const moved = (value: Parameter['value'], fact: Parameters<typeof factDefinition>[0]) =>
    changeLimit(parameter(value), new Set([fact]), factDefinition).map((one) => one.value);

  test('a number moves by one step of precision and by the last decimal shown, a day by one and seven, a list by one entry', () => {
    expect(moved(10, 'soil.temperature30cmC')).toEqual([10.01, 9.99, 10.1, 9.9]);
    expect(moved('01-01', 'date')).toEqual(['01-02', '12-31', '01-08', '12-25']);
    expect(moved(['GB-ENG', 'GB-SCT'], 'field.country')).toEqual([['GB-SCT'], ['GB-ENG'], ['GB-ENG', 'GB-SCT', 'ZZ']]);
  });

  test('a rule becomes each other effect and is lifted by each other thing', () => {
    const changes = changeRule(holdRule('a', windy), factDefinition);
    const heads = changes.filter(({ kind }) => kind === 'effect' || kind === 'lifts').map(({ after }) => after);
    expect(heads.map((rule) => ('effect' in rule ? [rule.effect, rule.lifts] : []))).toEqual([
      ['stop', 'hours'],
      ['advise', null],
      ['hold', 'days'],
      ['hold', 'person'],
      ['hold', 'season'],
    ]);
  });

  test('each change of the first pack changes one rule or one parameter and leaves the rest', () => {
    const { rules, parameters } = shipped.pack;
    for (const change of changesOf(shipped.pack, factDefinition)) {
      const after = applyChange(shipped.pack, change);
      const differing = [
        ...after.rules.filter((rule, at) => JSON.stringify(rule) !== JSON.stringify(rules[at])),
        ...after.parameters.filter((one, at) => JSON.stringify(one) !== JSON.stringify(parameters[at])),
      ];
      expect(differing).toEqual([change.after]);
    }
  });
});
