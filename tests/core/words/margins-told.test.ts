import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { Known, Resolved } from '../../../src/core/facts/types.ts';
import type { ConditionTrace, Margin, RuleTrace } from '../../../src/core/rules/trace-types.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { fillRuleText } from '../../../src/core/words/fill.ts';
import { comparisonsIn, describeMargin, describeMargins, describeRuleMargin } from '../../../src/core/words/margins.ts';
import { whyOf } from '../../../src/core/words/why.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { choice, day, number } from '../../generators/small.ts';

const words = catalogueOf('en');

/** How far a soil temperature is from a limit, changed where a case is about that. */
const marginWith = (more: Partial<Margin>): Margin => {
  return { fact: 'soil.temperature30cmC', parameter: 'p', limit: 10, unit: null, margin: 2, worst: 2, ...more };
};

type Comparison = Extract<ConditionTrace, { kind: 'comparison' }>;

/** A comparison of a fact with a number from above: how much room is left is the limit less the value, at worst less its upper end. */
function below(
  limit: number,
  value: Known,
  fact: FactId = 'soil.temperature30cmC',
  more: Partial<Comparison> = {},
): Comparison {
  const numbers = value.type === 'number' ? value : { value: 0, high: 0 };
  const [margin, worst] = [limit - numbers.value, limit - numbers.high];
  return {
    kind: 'comparison',
    name: fact,
    fact,
    op: 'above',
    limit: { kind: 'number', value: limit },
    parameter: 'p',
    unit: null,
    value,
    outcome: margin < 0 ? 'met' : 'not-met',
    margin: { fact, parameter: 'p', limit, unit: null, margin, worst },
    ...more,
  };
}

function ruleOf(condition: ConditionTrace, more: Partial<RuleTrace> = {}): RuleTrace {
  return {
    rule: 'r',
    effect: 'hold',
    authority: 'practice',
    lifts: 'days',
    outcome: condition.outcome,
    facts: [],
    parameters: [],
    margins: [],
    condition,
    ...more,
  };
}

describe('a margin', () => {
  const said = (comparison: Comparison) => describeMargin(comparison, factDefinition, words);

  test.each<[string, Comparison, string | null]>([
    ['room', below(10, number(8.75)), '1.3 C room left'],
    ['of a value shown finer', below(10, number(9.96)), '0.04 C room left'],
    ['of the worse end of a band', below(10, number(8, 7, 9)), '1.0 C room left'],
    ['of the value where the worse end has none left', below(10, number(9, 8, 10)), '1.0 C room left'],
    ['at the limit', below(10, number(10)), 'just at the limit'],
    ['beyond', below(10, number(10.5)), '0.5 C too warm'],
    [
      'below a least',
      below(10, number(9), 'soil.temperature30cmC', { margin: marginWith({ margin: -1, worst: -1 }) }),
      '1.0 C too cold',
    ],
    [
      'beyond, of a fact without a word of its own',
      below(40, number(50), 'weed.plantsPerM2'),
      '10 plants per m2 above the limit',
    ],
    [
      'below a least, of such a fact',
      below(40, number(30), 'weed.plantsPerM2', { margin: marginWith({ limit: 40, margin: -10, worst: -10 }) }),
      '10 plants per m2 below the limit',
    ],
    ['of one leaf', below(4, number(3), 'crop.trueLeaves'), '1 leaf room left'],
    [
      'across which a band reaches',
      below(10.5, number(10, 9, 11), undefined, { outcome: 'unknown' }),
      'the band reaches across the limit of 10.5 C',
    ],
    ['of a forecast told in words', below(10, { ...number(8), source: 'told' }), null],
    ['of no limit', below(10, number(8), undefined, { margin: null }), null],
    ['of a choice', below(10, choice('moist'), 'soil.feel'), null],
    ['of a number against a day', below(10, number(8), undefined, { margin: marginWith({ limit: '10-01' }) }), null],
  ])('%s', (_, comparison, text) => {
    expect(said(comparison)).toBe(text);
  });

  test('in German has the mark of its numbers', () => {
    expect(describeMargin(below(10, number(9.96)), factDefinition, catalogueOf('de'))).toContain('0,04 °C');
    const crossing = below(10.5, number(10, 9, 11), undefined, { outcome: 'unknown' });
    expect(describeMargin(crossing, factDefinition, catalogueOf('de'))).toContain('10,5 °C');
  });

  test.each([
    [1, '1 day left'],
    [2, '2 days left'],
    [0, 'just at the limit'],
    [-1, '1 day to go'],
    [-12, '12 days to go'],
  ])('of %i days', (margin, text) => {
    const comparison = below(10, day('2026-11-06'), 'date');
    expect(said({ ...comparison, margin: marginWith({ limit: '10-01', margin }) })).toBe(text);
  });

  test('of what is not known is none', () => {
    const value: Resolved = { known: false, reason: 'not-asked' };
    expect(said({ ...below(10, number(8)), value })).toBeNull();
  });
});

describe('the margins of a rule', () => {
  const [warm, mild, none] = [
    below(10, number(8)),
    below(5, number(9), 'air.temperatureC'),
    below(3, number(1), 'rain.next48hMm', { margin: null }),
  ];
  const inner: ConditionTrace = { kind: 'not', outcome: 'met', member: mild };
  const named: ConditionTrace = { kind: 'rule', rule: 'other', outcome: 'met', member: none };
  const rule = ruleOf({ kind: 'all', outcome: 'met', members: [warm, inner, named] });

  test('are those of all its comparisons, in written order, through groups, negations and rules that it names', () => {
    expect(comparisonsIn(rule.condition)).toEqual([warm, mild, none]);
    expect(describeMargins(rule, factDefinition, words)).toEqual([
      'soil temperature at 30 cm: 2.0 C room left',
      'air temperature: 4.0 C too warm',
    ]);
  });

  test.each([
    [2, '2.0 C room left'],
    [-4, '4.0 C too warm'],
    [3, null],
    [null, null],
  ])('the one of %s is told of it', (margin, text) => {
    expect(describeRuleMargin(rule, margin, factDefinition, words)).toBe(text);
  });
});

describe('the nearest limit of a spray-today', () => {
  const nearest = (...rules: RuleTrace[]) =>
    whyOf({ verdict: 'spray-today', reasons: [], trace: rules }, factDefinition, words);
  const all = (count: number) => `None of the ${count} reasons to stop or wait applies.`;
  const soil = below(10, number(8));
  const wind = below(20, number(19), 'wind.boomKmh');
  const group = (kind: 'all' | 'any' | 'eitherOf', ...members: ConditionTrace[]): ConditionTrace => {
    return { kind, outcome: 'not-met', members };
  };
  const soilTold = `${all(1)} Nearest to its limit: soil temperature at 30 cm, 2.0 C room left.`;

  test('is the least share of a limit, not the least number', () => {
    expect(nearest(ruleOf(soil), ruleOf(wind))).toBe(
      `${all(2)} Nearest to its limit: wind at boom height, 1.0 km/h room left.`,
    );
    expect(nearest(ruleOf(wind), ruleOf(soil))).toBe(nearest(ruleOf(soil), ruleOf(wind)));
  });

  test.each<[string, ConditionTrace, string]>([
    ['any of several', group('any', soil), soilTold],
    ['whichever is known', group('eitherOf', soil), soilTold],
    ['a rule that is named', { kind: 'rule', rule: 'o', outcome: 'not-met', member: soil }, soilTold],
    ['all of several decides only together', group('all', soil), all(1)],
    ['a negation', { kind: 'not', outcome: 'not-met', member: soil }, all(1)],
    ['a band that reaches over the limit', below(10, number(8, 7, 10.5)), all(1)],
    ['a band that ends at the limit', below(10, { ...number(8, 7, 10), source: 'measured' }), soilTold],
    ['a band chosen by words', below(10, number(8, 7, 9)), all(1)],
    ['a band of the field', below(10, { ...number(8, 7, 9), source: 'profile' }), all(1)],
    ['a band told of the forecast', below(10, { ...number(8, 7, 9), source: 'told' }), all(1)],
    ['a number told of the forecast', below(10, { ...number(8), source: 'told' }), all(1)],
    [
      'a band of the forecast',
      below(10, { ...number(8, 7, 9), source: 'forecast' }),
      `${all(1)} Nearest to its limit: soil temperature at 30 cm, 1.0 C room left.`,
    ],
    ['no margin', below(10, number(8), undefined, { margin: null }), all(1)],
    [
      'a limit of 0',
      below(0, number(-3)),
      `${all(1)} Nearest to its limit: soil temperature at 30 cm, 3.0 C room left.`,
    ],
  ])('of %s', (_, condition, text) => {
    expect(nearest(ruleOf(condition))).toBe(text);
  });

  test('of advice is not told, and advice is not counted', () => {
    expect(nearest(ruleOf(soil, { effect: 'advise' }), ruleOf(group('all'), { effect: 'stop' }))).toBe(all(1));
  });

  test('beside a limit of 0 or below 0 is measured by its size', () => {
    const cold = below(-10, number(-11), 'air.temperatureC');
    const frost = below(0, number(-3), 'air.temperatureC');
    expect(nearest(ruleOf(frost), ruleOf(cold))).toContain('air temperature, 1.0 C room left');
    expect(nearest(ruleOf(frost), ruleOf(soil))).toContain('soil temperature at 30 cm, 2.0 C room left');
  });
});

describe('a sentence of a rule', () => {
  const parameters = new Map([
    ['maxC', { id: 'maxC', value: 10.5, unit: 'C', tighter: 'lower', validFrom: '2026-01-01', source: 's', why: {} }],
  ] as const);
  const fill = (template: string, condition: ConditionTrace, language = 'en') =>
    fillRuleText(
      template,
      ruleOf(condition, { parameters: ['maxC', 'lost'] }),
      parameters,
      factDefinition,
      catalogueOf(language),
    );
  const soil = below(10.5, number(10.46));
  const told = { ...soil, value: { ...number(10.46), source: 'told' } } as const;
  const lost = { ...soil, value: { known: false, reason: 'not-asked' } } as const;

  test('has its values shown finely enough beside its limit, and its limits with their units', () => {
    expect(fill('{soil.temperature30cmC} beside {maxC}, {lost}', soil)).toBe('10.46 C beside 10.5 C, {lost}');
    expect(fill('{soil.temperature30cmC} beside {maxC}', soil, 'de')).toBe('10,46 °C beside 10,5 °C');
  });

  test.each([
    ['known', soil, 'A 10.46 C, B.'],
    ['told in words', told, 'A, B.'],
    ['not known', lost, 'A, B.'],
  ] as const)('has a part in brackets where the value is %s', (_, condition, text) => {
    expect(fill('A[[ {soil.temperature30cmC}]], B.', condition)).toBe(text);
  });

  test('keeps a part that names no value, and leaves one out of which one value is missing', () => {
    expect(fill('A[[, B]].', lost)).toBe('A, B.');
    const both: ConditionTrace = {
      kind: 'any',
      outcome: 'met',
      members: [below(9, number(3), 'air.temperatureC'), lost],
    };
    expect(fill('A[[ {air.temperatureC} {soil.temperature30cmC}]][[ {air.temperatureC}]].', both)).toBe('A 3.0 C.');
  });
});
