import { describe, expect, test } from 'vitest';
import { derivationReads } from '../../../../src/core/facts/derive/reads.ts';
import { risesWith, type Way } from '../../../../src/core/rules/overlay/protect/rises-with.ts';
import type { CompiledCondition, Limit, Operator } from '../../../../src/core/rules/types.ts';

const compare = (fact: string, op: Operator, limit: Limit): CompiledCondition => ({
  kind: 'comparison',
  name: `${fact} ${op}`,
  fact,
  op,
  limit,
  parameter: null,
  unit: null,
});
const is = (op: Operator, ...values: string[]) => compare('air.inversionRisk', op, { kind: 'choices', values });
const wind = (op: Operator) => compare('wind.boomKmh', op, { kind: 'number', value: 9 });
const not = (member: CompiledCondition): CompiledCondition => ({ kind: 'not', member });
const rule = (member: CompiledCondition): CompiledCondition => ({ kind: 'rule', rule: 'other', member });
const group = (kind: 'all' | 'any' | 'eitherOf', ...members: CompiledCondition[]): CompiledCondition => ({
  kind,
  members,
});

describe('a fact that goes one way', () => {
  test.each<[string, CompiledCondition, string, Way, boolean]>([
    ['is yes', is('is', 'yes'), 'air.inversionRisk', 'yes', true],
    ['is no', is('is', 'no'), 'air.inversionRisk', 'yes', false],
    ['is not no', is('isNot', 'no'), 'air.inversionRisk', 'yes', true],
    ['is not yes', is('isNot', 'yes'), 'air.inversionRisk', 'yes', false],
    ['one of two', is('oneOf', 'yes', 'no'), 'air.inversionRisk', 'yes', false],
    ['is one of a list of two', is('is', 'yes', 'no'), 'air.inversionRisk', 'yes', false],
    ['not: is yes', not(is('is', 'yes')), 'air.inversionRisk', 'yes', false],
    ['not: is no', not(is('is', 'no')), 'air.inversionRisk', 'yes', true],
    ['not: is not yes', not(is('isNot', 'yes')), 'air.inversionRisk', 'yes', true],
    ['not: not: is yes', not(not(is('is', 'yes'))), 'air.inversionRisk', 'yes', true],
    ['a rule that is yes', rule(is('is', 'yes')), 'air.inversionRisk', 'yes', true],
    ['not a rule that is yes', not(rule(is('is', 'yes'))), 'air.inversionRisk', 'yes', false],
    ['above, up', wind('above'), 'wind.boomKmh', 'higher', true],
    ['at least, up', wind('atLeast'), 'wind.boomKmh', 'higher', true],
    ['below, up', wind('below'), 'wind.boomKmh', 'higher', false],
    ['at most, up', wind('atMost'), 'wind.boomKmh', 'higher', false],
    ['above, down', wind('above'), 'wind.boomKmh', 'lower', false],
    ['below, down', wind('below'), 'wind.boomKmh', 'lower', true],
    ['at most, down', wind('atMost'), 'wind.boomKmh', 'lower', true],
    ['not: above, down', not(wind('above')), 'wind.boomKmh', 'lower', true],
    ['not: above, up', not(wind('above')), 'wind.boomKmh', 'higher', false],
    ['another fact', wind('below'), 'wind.gustKmh', 'higher', true],
    ['all of both', group('all', is('is', 'yes'), wind('below')), 'wind.boomKmh', 'higher', false],
    ['any, the other read', group('any', is('is', 'yes'), wind('below')), 'air.inversionRisk', 'yes', true],
    ['either of, a choice', group('eitherOf', is('is', 'yes'), wind('above')), 'air.inversionRisk', 'yes', true],
    ['either of, a number', group('eitherOf', is('is', 'yes'), wind('above')), 'wind.boomKmh', 'higher', false],
    ['either of, within', group('eitherOf', is('is', 'yes'), not(wind('below'))), 'wind.boomKmh', 'higher', false],
    ['either of, deeper', group('eitherOf', group('all', rule(wind('above')))), 'wind.boomKmh', 'higher', false],
    ['either of others', group('eitherOf', is('is', 'yes')), 'wind.boomKmh', 'higher', true],
  ])('%s', (_, condition, fact, way, rises) => {
    expect(risesWith(condition, fact, way)).toBe(rises);
  });
});

test('what may be moved towards yes goes into no other fact, where it might count the other way', () => {
  const read = Object.values(derivationReads).flat();
  expect(
    ['crop.frostOnLeaves', 'soil.drainsExpected7d', 'air.inversionRisk'].filter((one) => read.includes(one)),
  ).toEqual([]);
});
