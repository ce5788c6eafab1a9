import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import type { Known } from '../../../src/core/facts/types.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { evaluateReference } from '../../../src/core/rules/reference.ts';
import type { CompiledRules, Condition, Rule } from '../../../src/core/rules/types.ts';
import { usefulFacts } from '../../../src/core/verdict/useful.ts';
import { verdictOf, verdictWord } from '../../../src/core/verdict/verdict-of.ts';
import { ofCore } from '../../fixtures/core-facts.ts';
import { generatedParameters, ruleSet } from '../../generators/conditions.ts';
import { knownByFact, resolvedFacts } from '../../generators/facts.ts';
import { choice, holdRule, number } from '../../generators/small.ts';

function word(compiled: CompiledRules, facts: ResolvedFacts) {
  return verdictWord(evaluateReference(compiled, facts));
}

function compile(...rules: Rule[]): CompiledRules {
  return compileRules({ ...ofCore, rules, parameters: generatedParameters }, '2026-11-06');
}

/** A settled eitherOf asks for no other way on purpose, so here it is a plain `any`. */
function withoutEitherOf(rules: readonly Rule[]): Rule[] {
  return JSON.parse(JSON.stringify(rules).replaceAll('"eitherOf"', '"any"'));
}

const windy: Condition = { fact: 'wind.boomKmh', above: 'n0l1' };
const warm: Condition = { fact: 'soil.temperature30cmC', above: 'n1l2' };
const dry: Condition = { fact: 'soil.feel', oneOf: ['dry'] };
const driedOut: Condition = { fact: 'soil.fieldCapacityPercent', below: 'n3l0' };

/** Facts that say of a sampled value of each fact, one at a time or all at once, whether the verdict can move. */
const samples = fc.tuple(...knownByFact.map(([fact, known]) => known.map((value): [FactId, Known] => [fact, value])));

describe('a fact that could change the verdict', () => {
  test('is never left out: knowing the unknown facts that are not useful, together, leaves the verdict as it is', () => {
    fc.assert(
      fc.property(ruleSet(4), resolvedFacts(5), samples, (rules, facts, more) => {
        const compiled = compile(...withoutEitherOf(rules));
        const before = evaluateReference(compiled, facts);
        const useful = usefulFacts(before);
        const learned = more.filter(([fact]) => !facts[fact]?.known && !useful.has(fact));
        expect(word(compiled, { ...facts, ...Object.fromEntries(learned) })).toBe(verdictWord(before));
      }),
      { numRuns: 1500 },
    );
  });

  test('ends: once every useful fact is known without a band, none is useful', () => {
    fc.assert(
      fc.property(ruleSet(4), resolvedFacts(3), samples, (rules, facts, more) => {
        const compiled = compile(...rules);
        const exact = Object.fromEntries(more.map(([fact, known]) => [fact, exactly(known)])) as Record<FactId, Known>;
        let now: ResolvedFacts = facts;
        for (let asked = 0; ; asked += 1) {
          const [next] = usefulFacts(evaluateReference(compiled, now));
          if (next === undefined) break;
          expect(asked).toBeLessThan(knownByFact.length);
          now = { ...now, [next]: exact[next]! };
        }
        const trace = evaluateReference(compiled, now);
        const settled = !trace.some(({ effect, outcome }) => effect !== 'advise' && outcome === 'unknown');
        expect(settled || word(compiled, now) !== 'spray-today').toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  test.each<[string, CompiledRules, ResolvedFacts, FactId[]]>([
    [
      'both of an all of two unknowns',
      compile(holdRule('a', { all: [windy, warm] })),
      {},
      ['wind.boomKmh', 'soil.temperature30cmC'],
    ],
    [
      'none of an all with a member that is not met',
      compile(holdRule('a', { all: [windy, warm] })),
      { 'wind.boomKmh': number(5) },
      [],
    ],
    [
      'none of an any with a member that is met',
      compile(holdRule('a', { any: [windy, warm] })),
      { 'wind.boomKmh': number(15) },
      [],
    ],
    [
      'one whose band straddles its limit',
      compile(holdRule('a', windy)),
      { 'wind.boomKmh': number(9.5, 9, 10) },
      ['wind.boomKmh'],
    ],
    [
      'every way of an eitherOf of which none is known',
      compile(holdRule('a', { eitherOf: [dry, driedOut] })),
      {},
      ['soil.feel', 'soil.fieldCapacityPercent'],
    ],
    [
      'no other way of an eitherOf that one way settles',
      compile(holdRule('a', { eitherOf: [dry, driedOut] })),
      { 'soil.feel': choice('wet') },
      [],
    ],
    [
      'none once a stop is met',
      compile(holdRule('a', warm), { ...holdRule('b', windy), effect: 'stop' }),
      { 'wind.boomKmh': number(20) },
      [],
    ],
    [
      'only those of stops once a hold is met',
      compile(holdRule('a', windy), holdRule('b', driedOut), { ...holdRule('c', warm), effect: 'stop' }),
      { 'wind.boomKmh': number(20) },
      ['soil.temperature30cmC'],
    ],
    ['none of advice', compile({ ...holdRule('a', windy), effect: 'advise', lifts: null }), {}, []],
  ])('is %s', (_name, compiled, facts, expected) => {
    const trace = evaluateReference(compiled, facts);
    expect(new Set(verdictOf(trace, facts, []).missing)).toEqual(new Set(expected));
  });

  test('is listed in the order of asking, then as the rules read them', () => {
    const compiled = compile(holdRule('a', { any: [windy, warm, dry] }));
    const { missing } = verdictOf(evaluateReference(compiled, {}), {}, ['soil.feel', 'field.areaHa']);
    expect(missing).toEqual(['soil.feel', 'wind.boomKmh', 'soil.temperature30cmC']);
  });
});

function exactly(known: Known): Known {
  if (known.type === 'number') return { ...known, low: known.value, high: known.value };
  if (known.type === 'choice') return { ...known, possible: known.possible.slice(0, 1) };
  return known.type === 'signs' ? { ...known, possible: known.present } : known;
}
