import { describe, expect, test } from 'vitest';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { evaluateReference } from '../../../src/core/rules/reference.ts';
import type { Lifts, Rule } from '../../../src/core/rules/types.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { verdictOf } from '../../../src/core/verdict/verdict-of.ts';
import { ofCore } from '../../fixtures/core-facts.ts';
import { generatedParameters } from '../../generators/conditions.ts';
import { traceOf } from '../../generators/outcomes.ts';
import { day, holdRule, number } from '../../generators/small.ts';

function judge(rules: readonly Rule[], facts: ResolvedFacts) {
  const compiled = compileRules({ ...ofCore, rules, parameters: generatedParameters }, '2026-11-06');
  return verdictOf(evaluateReference(compiled, facts), facts, []);
}

describe('reasons', () => {
  test('come met before unknown, stop before hold, then law, label, water, practice, then id', () => {
    const trace = [
      traceOf('a-practice', 'hold', 'met'),
      traceOf('b-unknown-stop', 'stop', 'unknown', { authority: 'law' }),
      traceOf('c-water', 'hold', 'met', { authority: 'water' }),
      traceOf('d-label', 'hold', 'met', { authority: 'label' }),
      traceOf('e-law', 'hold', 'met', { authority: 'law' }),
      traceOf('f-stop', 'stop', 'met'),
      traceOf('g-clear', 'stop', 'not-met'),
      traceOf('h-advice', 'advise', 'met'),
      traceOf('i-unknown-hold', 'hold', 'unknown'),
      traceOf('j-practice', 'hold', 'met'),
      traceOf('k-advice', 'advise', 'met', { authority: 'label' }),
      traceOf('l-advice', 'advise', 'unknown'),
    ];
    const verdict = verdictOf(trace, {}, []);
    const met = ['f-stop', 'e-law', 'd-label', 'c-water', 'a-practice', 'j-practice'];
    expect(verdict.reasons.map(({ rule }) => rule)).toEqual([...met, 'b-unknown-stop', 'i-unknown-hold']);
    expect(verdict.advice.map(({ rule }) => rule)).toEqual(['k-advice', 'h-advice']);
  });

  test.each<[string, Rule['when'], ResolvedFacts, number | null, string | null]>([
    [
      'how far past a limit, negative',
      { fact: 'wind.boomKmh', above: 'n0l1' },
      { 'wind.boomKmh': number(12) },
      -2.4,
      'km/h',
    ],
    [
      'how far past the first of two limits',
      {
        all: [
          { fact: 'soil.temperature30cmC', above: 'n1l1' },
          { fact: 'soil.temperatureTrendCPerDay', above: 'n2l2' },
        ],
      },
      { 'soil.temperature30cmC': number(9.5), 'soil.temperatureTrendCPerDay': number(0.2) },
      -0.5,
      'C',
    ],
    [
      'the member of an any that is met',
      {
        any: [
          { fact: 'wind.boomKmh', above: 'n0l1' },
          { fact: 'soil.temperature30cmC', above: 'n1l2' },
        ],
      },
      { 'wind.boomKmh': number(2), 'soil.temperature30cmC': number(11) },
      -1,
      'C',
    ],
    [
      'days to the end of a span of days, not from its beginning',
      {
        all: [
          { fact: 'date', atLeast: 'day2' },
          { fact: 'date', atMost: 'day3' },
        ],
      },
      { date: day('2026-10-15') },
      -5,
      'days',
    ],
    ['nothing for choices', { fact: 'soil.feel', is: 'dry' }, {}, null, null],
  ])('tell %s', (_name, when, facts, margin, unit) => {
    expect(judge([holdRule('a', when)], facts).reasons[0]).toMatchObject({ margin, marginUnit: unit });
  });
});

describe('what lifts it', () => {
  test.each<[Lifts[], ReturnType<typeof verdictOf>['slowest']]>([
    [['hours'], 'hours'],
    [['hours', 'days'], 'days'],
    [['season', 'days', 'hours'], 'season'],
    [['person', 'hours'], 'hours'],
    [['person'], null],
    [[], null],
  ])('of %j is %j, a job for a person standing beside it', (lifts, slowest) => {
    const trace = lifts.map((one, index) => traceOf(`r${index}`, 'hold', 'met', { lifts: one }));
    const idle = [
      traceOf('x', 'hold', 'not-met', { lifts: 'season' }),
      traceOf('y', 'stop', 'unknown', { lifts: 'season' }),
    ];
    expect(verdictOf([...trace, ...idle], {}, []).slowest).toBe(slowest);
  });
});

describe('validity', () => {
  const windy = holdRule('windy', { fact: 'wind.boomKmh', above: 'n0l1' });
  const warm = holdRule('warm', { fact: 'soil.temperature30cmC', above: 'n1l2' });

  test('ends when the first fact that a stop or hold reads grows too old', () => {
    const facts = {
      'wind.boomKmh': number(2, 2, 2, epochSeconds(7200)),
      'soil.temperature30cmC': number(5, 5, 5, epochSeconds(3600)),
      'air.deltaTC': number(5, 5, 5, epochSeconds(60)),
    };
    expect(judge([windy, warm], facts).validUntil).toBe(3600);
  });

  test.each<readonly [string, ResolvedFacts, number | null]>([
    [
      'a fact that does not age',
      { 'wind.boomKmh': number(2), 'soil.temperature30cmC': number(5, 5, 5, epochSeconds(3600)) },
      3600,
    ],
    ['one that is not known', { 'soil.temperature30cmC': number(5, 5, 5, epochSeconds(3600)) }, 3600],
    ['one that is not known, before it', { 'wind.boomKmh': number(2, 2, 2, epochSeconds(7200)) }, 7200],
    ['none that is known', {}, null],
  ])('is that of what ages, beside %s', (_, facts, until) => {
    expect(judge([windy, warm], facts).validUntil).toBe(until);
    expect(judge([{ ...warm, id: 'a-warm' }, windy], facts).validUntil).toBe(until);
  });

  test('does not end with a fact that only advice reads, nor where nothing ages', () => {
    const advice: Rule = { ...warm, effect: 'advise', lifts: null };
    const facts = { 'wind.boomKmh': number(2), 'soil.temperature30cmC': number(5, 5, 5, epochSeconds(3600)) };
    expect(judge([windy, advice], facts).validUntil).toBeNull();
  });
});

test('rules without a stop or hold that could be met give spray today only when all are known not to be met', () => {
  const windy = holdRule('windy', { fact: 'wind.boomKmh', above: 'n0l1' });
  expect(judge([windy], { 'wind.boomKmh': number(9.6) }).verdict).toBe('spray-today');
  expect(judge([windy], { 'wind.boomKmh': number(9.5, 9.4, 9.7) }).verdict).toBe('wait');
  expect(judge([windy], {}).verdict).toBe('wait');
});
