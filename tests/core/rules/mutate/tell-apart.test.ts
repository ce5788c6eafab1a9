import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compileRules } from '../../../../src/core/rules/compile.ts';
import { changeCondition } from '../../../../src/core/rules/mutate/change-conditions.ts';
import { assignmentsOf, ruleCells, tellApart } from '../../../../src/core/rules/mutate/tell-apart.ts';
import { outcomeOf } from '../../../../src/core/rules/outcome.ts';
import { comparisonsIn } from '../../../../src/core/rules/reads.ts';
import type { CompiledRule, Condition, Rule } from '../../../../src/core/rules/types.ts';
import { factDefinition, ofCore } from '../../../fixtures/core-facts.ts';
import { generatedParameters, ruleSet } from '../../../generators/conditions.ts';
import { resolvedFacts } from '../../../generators/facts.ts';
import { holdRule, tenSigns } from '../../../generators/small.ts';

const compile = (rule: Rule): CompiledRule =>
  compileRules({ ...ofCore, rules: [rule], parameters: generatedParameters }, '2026-11-06').rules[0]!;
const ruleOf = (when: Condition) => compile(holdRule('r', when));
const ways = (one: Condition, other: Condition) => tellApart(ruleOf(one), ruleOf(other), factDefinition, 2026);

/** n1l1 is 9 C and n1l2 is 10 C. */
const above9: Condition = { fact: 'soil.temperature30cmC', above: 'n1l1' };
const above10: Condition = { fact: 'soil.temperature30cmC', above: 'n1l2' };
const drained: Condition = { fact: 'field.drained', is: 'yes' };

describe('two versions of a rule are told apart by the plainest facts that do', () => {
  test('at the limit, when a comparison takes or leaves it', () => {
    const { ways: found, whole } = ways(above10, { fact: 'soil.temperature30cmC', atLeast: 'n1l2' });
    expect(whole).toBe(true);
    expect(found[0]!.cells['soil.temperature30cmC']!.given).toBe(10);
    expect(found[0]!.outcome).toBe('not-met');
  });

  test.each<readonly [string, Condition, Condition]>([
    ['a bound within a bound', { any: [above9, above10] }, { any: [above9] }],
    ['not above and at most', { not: above10 }, { fact: 'soil.temperature30cmC', atMost: 'n1l2' }],
    ['the order of members', { all: [above9, drained] }, { all: [drained, above9] }],
    ['yes and not no', drained, { fact: 'field.drained', isNot: 'no' }],
  ])('not at all, where no facts can: %s', (_, one, other) => {
    expect(ways(one, other)).toEqual({ ways: [], whole: true });
  });

  test('by what is not known, where only that tells them apart', () => {
    const two: readonly Condition[] = [above10, { fact: 'soil.fieldCapacityPercent', below: 'n3l0' }];
    const found = ways({ eitherOf: two }, { any: two }).ways;
    expect(found).not.toEqual([]);
    for (const { cells } of found) {
      expect(Object.values(cells).map((cell) => cell!.given)).toContain(null);
    }
  });

  test('on 29 February, where a limit lies there', () => {
    const found = ways({ fact: 'date', above: 'day1' }, { fact: 'date', atLeast: 'day1' }).ways;
    expect(found.map(({ cells }) => cells['date']!.given)).toEqual(['2028-02-29']);
  });
});

describe('every way in which facts can come out', () => {
  const assignments = (when: Condition) => {
    const { condition } = ruleOf(when);
    return [...assignmentsOf(condition, ruleCells(ruleOf(when), factDefinition, 2026))].map(
      ({ cells, outcome, cost }) => [...Object.values(cells).map((cell) => cell?.given), outcome, cost],
    );
  };
  test('is gone through once, the last fact fastest, with the outcome and how far from plain it is', () => {
    const both = ['yes', 'no'];
    expect(assignments({ all: [drained, { fact: 'field.organicSoil', is: 'no' }] })).toEqual([
      ['yes', 'yes', 'not-met', 0],
      ['yes', 'no', 'met', 0],
      ['yes', both, 'unknown', 2],
      ['yes', null, 'unknown', 3],
      ['no', 'yes', 'not-met', 0],
      ['no', 'no', 'not-met', 0],
      ['no', both, 'not-met', 2],
      ['no', null, 'not-met', 3],
      [both, 'yes', 'not-met', 2],
      [both, 'no', 'unknown', 2],
      [both, both, 'unknown', 4],
      [both, null, 'unknown', 5],
      [null, 'yes', 'not-met', 3],
      [null, 'no', 'unknown', 3],
      [null, both, 'unknown', 5],
      [null, null, 'unknown', 6],
    ]);
  });

  test('of one fact named twice is that of the fact', () => {
    expect(assignments({ any: [drained, { fact: 'field.drained', is: 'no' }] })).toHaveLength(4);
  });
});

describe('facts that can come out in more than a million ways', () => {
  const yes = (count: number): Condition => ({ all: tenSigns.slice(0, count).map((fact) => ({ fact, is: 'yes' })) });

  test('are gone through in plain values alone, ten of four ways each, and what shows there is told', () => {
    const { ways: found, whole } = ways(yes(10), yes(9));
    expect(whole).toBe(false);
    expect(found.map(({ cells, cost }) => [Object.values(cells).map((cell) => cell?.given), cost])).toEqual([
      [[...Array.from({ length: 9 }, () => 'yes'), 'no'], 0],
    ]);
  });

  test('while fewer are gone through whole', () => {
    const { ways: found, whole } = ways(yes(5), yes(4));
    expect(whole).toBe(true);
    expect(found[0]?.cost).toBe(0);
    expect(found).toHaveLength(20);
  });
});

test('what the cells cannot tell apart no generated facts can, over changes of generated rules', () => {
  let equal = 0;
  let differing = 0;
  fc.assert(
    fc.property(
      ruleSet(1),
      fc.nat(),
      fc.array(resolvedFacts(), { minLength: 40, maxLength: 40 }),
      ([rule], pick, all) => {
        const changes = changeCondition(rule!.when, factDefinition);
        const after = compile({ ...rule!, when: changes[pick % changes.length]!.when });
        const before = compile(rule!);
        const cells = ruleCells(before, factDefinition, 2026, comparisonsIn(after.condition));
        fc.pre(cells.reduce((product, [, each]) => product * each.length, 1) <= 20_000);
        const isEqual = tellApart(before, after, factDefinition, 2026).ways.length === 0;
        for (const facts of all) {
          const same = outcomeOf(before.condition, facts) === outcomeOf(after.condition, facts);
          if (isEqual) expect(same).toBe(true);
          if (!same) differing += 1;
        }
        if (isEqual) equal += 1;
      },
    ),
    { numRuns: 300 },
  );
  expect(equal).toBeGreaterThan(5);
  expect(differing).toBeGreaterThan(500);
});
