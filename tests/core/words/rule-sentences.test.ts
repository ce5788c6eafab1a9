import { describe, expect, test } from 'vitest';
import { wordReason } from '../../../src/core/dialogue/worded-reason.ts';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import type { Known } from '../../../src/core/facts/types.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { evaluateReference } from '../../../src/core/rules/reference.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { verdictOf } from '../../../src/core/verdict/verdict-of.ts';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { describeChange } from '../../../src/core/words/change.ts';
import { describeParameter } from '../../../src/core/words/fill.ts';
import { jobsOf, liftBeside, notJudged } from '../../../src/core/words/jobs.ts';
import { describeMargins } from '../../../src/core/words/margins.ts';
import { whyOf } from '../../../src/core/words/why.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';

const words = catalogueOf('en');
const { pack } = shipped;
const compiled = compileRules(pack, '2026-11-06');

const origin = { known: true, source: 'said', at: epochSeconds(0), goodUntil: null } as const;
const number = (value: number, low = value, high = value): Known => ({ ...origin, type: 'number', value, low, high });
const date = (iso: string): Known => ({ ...origin, type: 'date', iso });
const choice = (one: string): Known => ({ ...origin, type: 'choice', possible: [one] });

const ruleOf = (id: string, facts: ResolvedFacts) => {
  const rule = evaluateReference(compiled, facts).find((one) => one.rule === id);
  if (!rule) throw new Error(id);
  return rule;
};

/** The reasons of facts, in words. */
function judged(facts: ResolvedFacts) {
  const trace = evaluateReference(compiled, facts);
  const verdict = verdictOf(trace, facts, []);
  const reasons = verdict.reasons.map((reason) =>
    wordReason(reason, {
      pack,
      rule: trace.find(({ rule }) => rule === reason.rule),
      parameters: compiled.parameters,
      language: 'en',
    }),
  );
  return { verdict: verdict.verdict, reasons, trace };
}

describe('a margin', () => {
  test.each<[string, FactId, Known, string[]]>([
    ['soil-too-warm', 'soil.temperature30cmC', number(10.4), ['0.4 C too warm']],
    ['soil-too-warm', 'soil.temperature30cmC', number(8.8), ['1.2 C room left']],
    ['soil-too-warm', 'soil.temperature30cmC', number(8.8, 8.5, 9.1), ['0.9 C room left']],
    ['soil-too-warm', 'soil.temperature30cmC', number(10), ['just at the limit']],
    ['soil-too-warm', 'soil.temperature30cmC', number(10.04), ['0.04 C too warm']],
    ['soil-too-warm', 'soil.temperature30cmC', number(9.8, 9.4, 10.3), ['the band reaches across the limit of 10 C']],
    ['too-windy', 'wind.boomKmh', number(8.4), ['1.2 km/h room left']],
    ['too-windy', 'wind.boomKmh', number(12), ['2.4 km/h too windy']],
    ['crop-too-small', 'crop.trueLeaves', number(2), ['1 leaf too few']],
    ['season-not-open', 'date', date('2026-09-19'), ['49 days to go', '12 days to go']],
    ['season-not-open', 'date', date('2026-07-30'), ['2 days left', '63 days to go']],
  ])('of %s is told in the words of the fact', (rule, fact, value, texts) => {
    const { label } = factDefinition(fact);
    expect(describeMargins(ruleOf(rule, { [fact]: value }), factDefinition, words)).toEqual(
      texts.map((text) => `${label}: ${text}`),
    );
  });

  test('of what is not known, or of a forecast told in words, is none', () => {
    const told = { ...number(10.4), source: 'told' } as const;
    expect(describeMargins(ruleOf('soil-too-warm', { 'soil.temperature30cmC': told }), factDefinition, words)).toEqual(
      [],
    );
    const unknown = { known: false, reason: 'not-asked' } as const;
    expect(
      describeMargins(ruleOf('soil-too-warm', { 'soil.temperature30cmC': unknown }), factDefinition, words),
    ).toEqual([]);
    expect(describeMargins(ruleOf('soil-too-warm', {}), factDefinition, words)).toEqual([]);
  });

  test('of a reason is that of the comparison that decides', () => {
    const { reasons } = judged({ date: date('2026-09-19'), 'soil.temperature30cmC': number(10.4) });
    const told = reasons.filter(({ outcome }) => outcome === 'met').map(({ rule, marginText }) => [rule, marginText]);
    expect(told).toEqual([
      ['season-not-open', '12 days to go'],
      ['soil-too-warm', '0.4 C too warm'],
    ]);
  });
});

describe('a rule in words', () => {
  test('has its values and limits filled in, each with its unit', () => {
    const { reasons } = judged({ 'soil.temperature30cmC': number(10.04), 'wind.boomKmh': number(12) });
    const text = (rule: string) => reasons.find((one) => one.rule === rule)?.text;
    expect([text('soil-too-warm'), text('too-windy')]).toMatchInlineSnapshot(`
      [
        "The soil at 30 cm is 10.04 C; the limit is 10 C.",
        "The wind at boom height is 12.0 km/h; the limit is 9.6 km/h.",
      ]
    `);
  });

  test.each<[string, ResolvedFacts, string]>([
    [
      'all known',
      { 'rain.next48hMm': number(12), 'rain.next48hMaxMmPerH': number(2) },
      'Heavy rain is due within 48 hours: 12.0 mm in all, 2.0 mm/h at the heaviest. The limits are 10 mm in all and 4 mm/h in any hour.',
    ],
    [
      'one not known',
      { 'rain.next48hMm': number(12) },
      'Heavy rain is due within 48 hours. The limits are 10 mm in all and 4 mm/h in any hour.',
    ],
    [
      'told in words',
      { 'rain.next48hMm': { ...number(80), source: 'told' }, 'rain.next48hMaxMmPerH': number(2) },
      'Heavy rain is due within 48 hours. The limits are 10 mm in all and 4 mm/h in any hour.',
    ],
  ])('gives numbers only where there are some: %s', (_, facts, text) => {
    expect(judged(facts).reasons.find(({ rule }) => rule === 'heavy-rain-coming')?.text).toBe(text);
  });

  test('tells no margin of a forecast told in words', () => {
    const { reasons } = judged({ 'rain.next48hMm': { ...number(80), source: 'told' } });
    expect(reasons.find(({ rule }) => rule === 'heavy-rain-coming')?.marginText).toBeNull();
  });

  test('leaves no placeholder open, whatever is known', () => {
    const known: ResolvedFacts[] = [{}, { 'soil.temperature30cmC': number(12), date: date('2026-08-20') }];
    for (const facts of known) {
      const { reasons } = judged(facts);
      expect(
        reasons.map(({ text, lift, title }) => `${text} ${lift} ${title}`).filter((one) => /[{}]/.test(one)),
      ).toEqual([]);
    }
  });

  test.each([
    [10, 'C', '10 C'],
    ['10-01', 'month-day', '1 October'],
    [['GB-ENG', 'GB-SCT'], 'list', 'England or Scotland'],
  ])('tells the limit %j as it is said', (value, unit, text) => {
    expect(describeParameter({ value, unit }, words)).toBe(text);
  });
});

describe('why and what to do', () => {
  test('name the leading reasons, the jobs and what to find out', () => {
    const facts = {
      'field.waterDistanceM': number(12),
      'field.bufferMarked': choice('no'),
      'soil.temperature30cmC': number(11),
    };
    const answer = judged(facts);
    expect(whyOf(answer, factDefinition, words)).toMatchInlineSnapshot(
      `"Water is 12 m away; within 20 m the no-spray distance must be known and marked, and it is not. Check the label in hand. The soil at 30 cm is 11.0 C; the limit is 10 C."`,
    );
    expect([...jobsOf(answer.reasons), notJudged(answer.reasons, words)]).toMatchInlineSnapshot(
      `
      [
        "Read the no-spray distance on the label in hand, mark it from the top of the bank, then say so here.",
        "Not judged, since the answer is sure without it: already applied; outside England, Scotland and Wales; season closed; heavy rain on unfit soil; high-risk field for water; crop too small; season not open yet; drains about to run; heavy rain coming; soil loosened, no plan; cracks in the soil; soil frozen or under snow; soil saturated; drained field in a protected area, no plan; water standing or drains running; frost; gusty; inversion risk; nothing to control; raining; soil sticky; soil too dry; soil warming up; too windy; wind towards something sensitive.",
      ]
    `,
    );
  });

  test('name no jobs and nothing that lifts what does not count, where a stop holds all season', () => {
    const { reasons } = judged({
      'field.protectedWaterArea': choice('inside'),
      'field.waterDistanceM': number(12),
      'field.bufferMarked': choice('no'),
      'field.drained': choice('yes'),
      'soil.temperature30cmC': number(11),
    });
    const met = reasons.filter(({ outcome }) => outcome === 'met');
    expect([jobsOf(reasons), notJudged(reasons, words)]).toEqual([[], null]);
    expect(met.filter((reason) => liftBeside(reason, reasons) !== null).map(({ rule }) => rule)).toEqual([
      'water-risk-field',
    ]);
  });

  test('say beside a reason what lifts it, unless the jobs say it', () => {
    const { reasons } = judged({
      'field.waterDistanceM': number(12),
      'field.bufferMarked': choice('no'),
      'soil.temperature30cmC': number(11),
    });
    const beside = reasons.filter((reason) => liftBeside(reason, reasons) !== null).map(({ rule }) => rule);
    expect(beside).toEqual(['soil-too-warm']);
  });

  test('say what changed since the answer before', () => {
    const cold = judged({ 'soil.temperature30cmC': number(8) });
    const warm = judged({ 'soil.temperature30cmC': number(12) });
    expect([
      describeChange(warm, cold, words),
      describeChange(cold, warm, words),
      describeChange(cold, cold, words),
      describeChange(warm, { ...cold, verdict: 'spray-today' }, words),
    ]).toMatchInlineSnapshot(`
      [
        "Still wait; no longer in the way: soil too warm; checked and not in the way: soil warming up.",
        "Still wait; new in the way: soil too warm; no longer known: soil warming up.",
        "As before: wait.",
        "It was wait; now spray today, because no longer in the way: soil too warm; checked and not in the way: soil warming up.",
      ]
    `);
  });
});
