import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import type { ResolvedFacts } from '../../../src/core/facts/resolved.ts';
import type { Known, Resolved } from '../../../src/core/facts/types.ts';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { membersOf } from '../../../src/core/rules/reads.ts';
import { evaluateReference } from '../../../src/core/rules/reference.ts';
import type { Outcome, Trace } from '../../../src/core/rules/trace-types.ts';
import type { Condition, Rule } from '../../../src/core/rules/types.ts';
import { verdictOf, verdictWord } from '../../../src/core/verdict/verdict-of.ts';
import { ofCore } from '../../fixtures/core-facts.ts';
import { generatedParameters, ruleSet } from '../../generators/conditions.ts';
import { choiceFacts, countries, signs } from '../../generators/fact-pool.ts';
import { resolvedFacts, unknownFact } from '../../generators/facts.ts';
import { outcomes } from '../../generators/outcomes.ts';

const goodness = { 'do-not-spray': 0, wait: 1, 'spray-today': 2 } as const;

function judge(rules: readonly Rule[], facts: ResolvedFacts): Trace {
  return evaluateReference(compileRules({ ...ofCore, rules, parameters: generatedParameters }, '2026-11-06'), facts);
}

/** Facts joined by an eitherOf anywhere in the rules: they are made unknown together. */
function groupOf(fact: FactId, rules: readonly Rule[]): FactId[] {
  const group = new Set<FactId>([fact]);
  const walk = (condition: Condition): void => {
    if ('fact' in condition || 'rule' in condition) return;
    if ('not' in condition) {
      walk(condition.not);
      return;
    }
    const facts = membersOf(condition).flatMap((member) => ('fact' in member ? [member.fact] : []));
    if ('eitherOf' in condition && facts.some((one) => group.has(one))) for (const one of facts) group.add(one);
    membersOf(condition).forEach(walk);
  };
  for (let size = 0; size !== group.size; ) {
    size = group.size;
    for (const { when } of rules) walk(when);
  }
  return [...group];
}

function widen(fact: Resolved | undefined): Resolved {
  if (!fact?.known) return unknownFact;
  const wide: Partial<Record<Known['type'], object>> = {
    number: fact.type === 'number' ? { low: fact.low - 4, high: fact.high + 0.2 } : {},
    choice: fact.type === 'choice' ? { possible: widerChoices(fact.possible) } : {},
    signs: fact.type === 'signs' ? { present: fact.present.slice(1), possible: signs } : {},
  };
  return { ...fact, ...wide[fact.type] } as Resolved;
}

function widerChoices(possible: readonly string[]): readonly string[] {
  const all = [...choiceFacts.map(({ choices }) => choices), countries];
  return all.find((choices) => possible.every((one) => (choices as readonly string[]).includes(one))) ?? possible;
}

const few = ruleSet(4);

describe('over generated rule sets and facts', () => {
  test('(a) making a fact unknown, with its eitherOf group, never turns another verdict into spray today', () => {
    let changed = 0;
    fc.assert(
      fc.property(few, resolvedFacts(8), (rules, facts) => {
        const before = verdictWord(judge(rules, facts));
        for (const fact of Object.keys(facts) as FactId[]) {
          const less: Record<string, Resolved> = { ...facts };
          for (const one of groupOf(fact, rules)) less[one] = unknownFact;
          const after = verdictWord(judge(rules, less as ResolvedFacts));
          if (after !== before) changed += 1;
          if (before !== 'spray-today') expect(after).not.toBe('spray-today');
        }
      }),
      { numRuns: 1000 },
    );
    expect(changed).toBeGreaterThan(100);
  });

  test('(e) widening a band or a set never turns another verdict into spray today', () => {
    fc.assert(
      fc.property(few, resolvedFacts(8), (rules, facts) => {
        const before = verdictWord(judge(rules, facts));
        for (const fact of Object.keys(facts) as FactId[]) {
          if (!facts[fact]?.known) continue;
          const after = verdictWord(judge(rules, { ...facts, [fact]: widen(facts[fact]) }));
          if (before !== 'spray-today') expect(after).not.toBe('spray-today');
        }
      }),
      { numRuns: 1000 },
    );
  });

  test('(c) the order of rules and facts changes nothing in the verdict', () => {
    fc.assert(
      fc.property(
        few.chain((rules) => fc.tuple(fc.constant(rules), fc.shuffledSubarray([...rules], { minLength: 4 }))),
        resolvedFacts(),
        ([rules, shuffled], facts) => {
          const reversed = Object.fromEntries(Object.entries(facts).reverse()) as ResolvedFacts;
          expect(verdictOf(judge(shuffled, reversed), reversed, [])).toEqual(verdictOf(judge(rules, facts), facts, []));
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('over generated outcomes', () => {
  const raised: Readonly<Record<Outcome, Outcome>> = { 'not-met': 'unknown', unknown: 'met', met: 'met' };

  test('(b) raising any stop or hold along not-met, unknown, met never improves the verdict', () => {
    fc.assert(
      fc.property(outcomes, (trace) => {
        const before = goodness[verdictWord(trace)];
        trace.forEach((rule, index) => {
          if (rule.effect === 'advise') return;
          const worse = trace.with(index, { ...rule, outcome: raised[rule.outcome] });
          expect(goodness[verdictWord(worse)]).toBeLessThanOrEqual(before);
        });
      }),
      { numRuns: 2000 },
    );
  });

  test('(d) advice never changes the verdict, its reasons, or what is missing', () => {
    fc.assert(
      fc.property(outcomes, (trace) => {
        const { advice: _advice, trace: _trace, ...rest } = verdictOf(trace, {}, []);
        const without = trace.filter(({ effect }) => effect !== 'advise');
        const { advice, trace: _other, ...bare } = verdictOf(without, {}, []);
        expect(advice).toEqual([]);
        expect(rest).toEqual(bare);
      }),
      { numRuns: 1000 },
    );
  });

  test('a stop that is met is do not spray, else a hold that is met is wait, else anything unknown is wait, else spray today', () => {
    fc.assert(
      fc.property(outcomes, (trace) => {
        const has = (effect: string, outcome: string) =>
          trace.some((one) => one.effect === effect && one.outcome === outcome);
        const blocked = trace.some(({ effect, outcome }) => effect !== 'advise' && outcome !== 'not-met');
        const expected = has('stop', 'met') ? 'do-not-spray' : blocked ? 'wait' : 'spray-today';
        expect(verdictWord(trace)).toBe(expected);
      }),
      { numRuns: 1000 },
    );
  });
});
