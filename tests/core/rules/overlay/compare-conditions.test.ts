import { describe, expect, test } from 'vitest';
import { compileRules } from '../../../../src/core/rules/compile.ts';
import { compareConditions } from '../../../../src/core/rules/overlay/protect/compare-conditions.ts';
import { proofCells } from '../../../../src/core/rules/overlay/protect/proof-cells.ts';
import { comparisonsIn } from '../../../../src/core/rules/reads.ts';
import type { Condition } from '../../../../src/core/rules/types.ts';
import { factDefinition, ofCore } from '../../../fixtures/core-facts.ts';
import { generatedParameters } from '../../../generators/conditions.ts';
import { holdRule, tenSigns } from '../../../generators/small.ts';

const compiled = (...conditions: Condition[]) =>
  compileRules(
    { ...ofCore, rules: conditions.map((when, at) => holdRule(`r${at}`, when)), parameters: generatedParameters },
    '2026-11-06',
  ).rules.map(({ condition }) => condition);

/** n0l1 is 9.6 km/h of wind and n0l2 is 14.5; n1l1 is 9 C. */
const windy: Condition = { fact: 'wind.boomKmh', above: 'n0l1' };
const stormy: Condition = { fact: 'wind.boomKmh', above: 'n0l2' };
const warm: Condition = { fact: 'soil.temperature30cmC', above: 'n1l1' };
const dry: Condition = { fact: 'soil.feel', is: 'dry' };

function compared(shipped: Condition, changed: Condition) {
  const [one, other] = compiled(shipped, changed);
  const found = compareConditions(one!, other!, factDefinition, 2026);
  if (found.kind !== 'loosened') return found;
  const { cells, shipped: was, changed: is } = found.breach;
  return [Object.fromEntries(Object.entries(cells).map(([fact, cell]) => [fact, cell?.given])), was, is];
}

describe('a changed condition against the shipped one', () => {
  test.each<readonly [string, Condition, Condition, object]>([
    ['is proved by its structure', stormy, windy, { kind: 'proved', by: 'structure' }],
    [
      'is proved by every combination where the structure does not show it',
      { not: windy },
      { fact: 'wind.boomKmh', atMost: 'n0l1' },
      { kind: 'proved', by: 'every-combination' },
    ],
    ['is looser at a value', windy, stormy, [{ 'wind.boomKmh': 9.61 }, 'met', 'not-met']],
    [
      'is looser by one more demand, at the plainest facts',
      windy,
      { all: [windy, warm] },
      [{ 'wind.boomKmh': 9.61, 'soil.temperature30cmC': 9 }, 'met', 'not-met'],
    ],
    [
      'is looser where a fact is not known',
      { eitherOf: [windy, dry] },
      { any: [windy, dry] },
      { kind: 'proved', by: 'structure' },
    ],
    [
      'is looser where only what is unknown shows it',
      { any: [windy, dry] },
      { eitherOf: [windy, dry] },
      [{ 'wind.boomKmh': 9.6, 'soil.feel': null }, 'unknown', 'not-met'],
    ],
    [
      'is looser by another list',
      { fact: 'soil.feel', oneOf: ['dry', 'wet'] },
      dry,
      [{ 'soil.feel': 'wet' }, 'met', 'not-met'],
    ],
    [
      'is looser by a later day',
      { fact: 'date', atLeast: 'day2' },
      { fact: 'date', above: 'day2' },
      [{ date: '2026-08-01' }, 'met', 'not-met'],
    ],
  ])('%s', (_, shipped, changed, found) => {
    expect(compared(shipped, changed)).toEqual(found);
  });

  const yes = (fact: string): Condition => ({ fact, is: 'yes' });

  test('of more than a million combinations is looked through in plain values, and a breach among them is told', () => {
    expect(compared({ any: tenSigns.map(yes) }, { any: tenSigns.slice(1).map(yes) })).toEqual([
      Object.fromEntries(tenSigns.map((fact) => [fact, fact === 'field.drained' ? 'yes' : 'no'])),
      'met',
      'not-met',
    ]);
  });

  test('of which none shows one cannot be proved, and the number of combinations is told', () => {
    const [first, ...rest] = tenSigns;
    const turned: Condition = { any: [{ not: { fact: first, isNot: 'yes' } }, ...rest.map(yes)] };
    expect(compared({ any: tenSigns.map(yes) }, turned)).toEqual({ kind: 'unprovable', combinations: 4 ** 10 });
  });
});

describe('the cells of a proof', () => {
  const given = (fact: string, ...conditions: Condition[]) => {
    const comparisons = compiled(...conditions).flatMap((one) => comparisonsIn(one));
    return proofCells(comparisons, factDefinition(fact), 2026)?.map((cell) => cell.given) ?? null;
  };

  test('of a number are those of the comparisons, of a day an unknown one too', () => {
    expect(given('wind.boomKmh', windy)).toEqual([9.6, 9.61, { value: 9.6, low: 9.6, high: 9.61 }, null]);
    expect(given('date', { fact: 'date', atLeast: 'day2' })).toEqual(['2026-08-01', '2026-07-31', null]);
  });

  test('of a choice are every set of those that the comparisons tell apart', () => {
    const three = given('soil.feel', dry, { fact: 'soil.feel', is: 'moist' }, { fact: 'soil.feel', is: 'wet' });
    expect(three).toEqual(
      expect.arrayContaining(['dry', 'moist', 'wet', ['dry', 'moist'], ['dry', 'wet'], ['moist', 'wet'], null]),
    );
    expect(three?.filter((one) => Array.isArray(one) && one.length > 2)).not.toEqual([]);
    expect(new Set(three?.map((one) => JSON.stringify(one))).size).toBe(three?.length);
  });

  test('of more than ten choices that are told apart are not gone through', () => {
    const countries = (count: number): Condition[] =>
      Array.from({ length: count }, (_, at) => ({ fact: 'field.country', is: `X${'ABCDEFGHIJKLM'[at]}` }));
    expect(given('field.country', ...countries(10))).toBeNull();
    expect(given('field.country', ...countries(9))).not.toBeNull();
  });
});
