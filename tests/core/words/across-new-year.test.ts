import { describe, expect, test } from 'vitest';
import type { CompiledComparison, CompiledCondition, OrderOperator } from '../../../src/core/rules/types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { sayComparison } from '../../../src/core/words/say-comparison.ts';
import { sayCondition, sayConditionLines } from '../../../src/core/words/say-condition.ts';
import { titlesOf } from '../../../src/core/words/say-rule.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { holdRule } from '../../generators/small.ts';

const en = catalogueOf('en');
const world = { definitionOf: factDefinition, titleOf: (id: string) => `Title ${id}` };

function date(op: OrderOperator, value: number): CompiledComparison {
  return {
    kind: 'comparison',
    name: 'd',
    fact: 'date',
    op,
    limit: { kind: 'month-day', value },
    parameter: 'p',
    unit: null,
  };
}
function wind(op: OrderOperator, value: number): CompiledComparison {
  const limit = { kind: 'number', value } as const;
  return { kind: 'comparison', name: 'w', fact: 'wind.boomKmh', op, limit, parameter: 'w', unit: 'km/h' };
}
const group = (kind: 'all' | 'any', ...members: CompiledCondition[]): CompiledCondition => ({ kind, members });
const said = (condition: CompiledCondition) => sayCondition(condition, world, en);

describe('days that run across the new year', () => {
  test.each<[string, CompiledCondition, boolean]>([
    ['before one and after a later one', group('any', date('below', 1020), date('above', 1210)), true],
    ['the other way round', group('any', date('above', 1210), date('below', 1020)), true],
    ['with the days themselves', group('any', date('atMost', 1020), date('atLeast', 1210)), true],
    ['before one and after an earlier one', group('any', date('below', 1210), date('above', 1020)), false],
    ['before and after the same', group('any', date('below', 1020), date('above', 1020)), false],
    ['both at once', group('all', date('below', 1020), date('above', 1210)), false],
    ['twice before', group('any', date('below', 1020), date('below', 1210)), false],
    ['twice after', group('any', date('above', 1020), date('above', 1210)), false],
    ['of three', group('any', date('below', 1020), date('above', 1210), date('above', 1220)), false],
    ['of numbers', group('any', wind('below', 5), wind('above', 9)), false],
    ['of a number and a day', group('any', wind('below', 5), date('above', 1210)), false],
    [
      'of a day and a group',
      group('any', date('below', 1020), group('all', date('above', 1210), wind('above', 9))),
      false,
    ],
  ])('%s: marked as such is %s', (_, condition, isMarked) => {
    expect(said(condition).startsWith('across the new year: ')).toBe(isMarked);
    const [first] = sayConditionLines(condition, world, en);
    expect(first?.text.startsWith('across the new year: ')).toBe(isMarked);
  });

  test('within another condition stand in brackets', () => {
    const season = group('any', date('below', 1020), date('above', 1210));
    expect(said(group('all', wind('above', 9), season))).toBe(
      'wind at boom height is above 9 km/h (w), and (across the new year: date is before 20 October (p), or date is after 10 December (p))',
    );
    expect(said(group('all', season))).toBe(
      'all of (across the new year: date is before 20 October (p), or date is after 10 December (p))',
    );
  });
});

describe('a condition in lines', () => {
  const long = group('any', ...[1, 2, 3, 4, 5].map((limit) => wind('above', limit)));

  test('is one line up to 140 letters, and its members one by one beyond', () => {
    const three = group('any', ...[1, 2, 3].map((limit) => wind('above', limit)));
    expect(said(three).length).toBeLessThanOrEqual(140);
    expect(sayConditionLines(three, world, en)).toEqual([{ depth: 0, text: said(three) }]);
    expect(sayConditionLines(long, world, en).map(({ depth, text }) => `${depth} ${text}`)).toEqual([
      '0 any of these holds:',
      ...[1, 2, 3, 4, 5].map((limit) => `1 wind at boom height is above ${limit} km/h (w)`),
    ]);
  });

  test('of a negation and of a rule named have their lead before the first line', () => {
    const not: CompiledCondition = { kind: 'not', member: long };
    const named: CompiledCondition = { kind: 'rule', rule: 'other', member: long };
    expect(sayConditionLines(not, world, en, 2).slice(0, 2)).toEqual([
      { depth: 2, text: 'it is not so that: any of these holds:' },
      { depth: 3, text: 'wind at boom height is above 1 km/h (w)' },
    ]);
    expect(sayConditionLines(named, world, en)[0]?.text).toBe(
      '“Title other” (other) applies, that is: any of these holds:',
    );
  });
});

test('a comparison says a plural where it is one, and a number with the mark of the language', () => {
  const say = (more: Partial<CompiledComparison>, language = 'en') =>
    sayComparison({ ...wind('above', 9.5), ...more }, factDefinition, catalogueOf(language));
  expect(say({ fact: 'wind.gustKmh' })).toMatch(/ are above 9\.5 km\/h \(w\)$/);
  expect(say({})).toBe('wind at boom height is above 9.5 km/h (w)');
  expect(say({}, 'de')).toContain('9,5 km/h');
  const feel = {
    fact: 'soil.feel',
    op: 'oneOf',
    limit: { kind: 'choices', values: ['dry', 'wet'] },
    unit: null,
  } as const;
  expect(say({ ...feel, parameter: null })).toBe('feel of the soil in the hand: one of dry or wet');
  expect(say({ ...feel, parameter: 'classes' })).toBe('feel of the soil in the hand: one of dry or wet (classes)');
  expect(sayComparison(date('below', 105), factDefinition, en)).toBe('date is before 5 January (p)');
});

test('a title is that of the language, else the first that there is; a rule that there is not keeps its id', () => {
  const text = (title: string) => ({ title, met: '', unknown: '' });
  const rule = (id: string, texts: Record<string, ReturnType<typeof text>>) => {
    return { ...holdRule(id, { fact: 'soil.surface', has: 'cracked' }), text: texts };
  };
  const rules = [rule('a', { en: text('A'), de: text('Ah') }), rule('b', { de: text('Be') }), rule('c', {})];
  expect(['a', 'b', 'c', 'gone'].map(titlesOf(rules, en))).toEqual(['A', 'Be', 'c', 'gone']);
  expect(['a', 'b'].map(titlesOf(rules, catalogueOf('de')))).toEqual(['Ah', 'Be']);
});
