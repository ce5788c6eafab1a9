import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ResolvedFacts } from '../../../../src/core/facts/resolved.ts';
import { compileRules } from '../../../../src/core/rules/compile.ts';
import { outcomeOf } from '../../../../src/core/rules/outcome.ts';
import { applyOverlays } from '../../../../src/core/rules/overlay/apply-overlays.ts';
import { isAtLeast } from '../../../../src/core/rules/overlay/protect/at-least.ts';
import { compareConditions } from '../../../../src/core/rules/overlay/protect/compare-conditions.ts';
import { evaluateReference } from '../../../../src/core/rules/reference.ts';
import { isProtected } from '../../../../src/core/rules/types.ts';
import { verdictWord } from '../../../../src/core/verdict/verdict-of.ts';
import { factDefinition, ofCore } from '../../../fixtures/core-facts.ts';
import { generatedParameters, ruleSet } from '../../../generators/conditions.ts';
import { resolvedFacts } from '../../../generators/facts.ts';
import { factsNear } from './facts-near.ts';
import { bare, madeOverlay } from './made-overlays.ts';

const day = '2026-11-06';
const height = { 'not-met': 0, unknown: 1, met: 2 } as const;
const words = ['spray-today', 'wait', 'do-not-spray'];
const weights = ['advise', 'hold', 'stop'];

describe('over made overlays, most of them of ill will, that are taken', () => {
  test('no protected rule comes out better, nor a verdict because of one, on any facts near a limit', () => {
    let taken = 0;
    let changedRules = 0;
    const before = compileRules(bare, day);
    const kept = new Set(bare.rules.filter(isProtected).map(({ id }) => id));
    const overlays = fc.tuple(madeOverlay('area'), fc.option(madeOverlay('farm'), { nil: null, freq: 2 }));
    fc.assert(
      fc.property(overlays, fc.nat(), ([area, farm], seed) => {
        const applied = applyOverlays(bare, farm ? [farm, area] : [area]);
        if (!applied.ok) return;
        taken += 1;
        if (applied.pack.overlays?.some(({ changed }) => changed.rules.some((id) => kept.has(id)))) changedRules += 1;
        const after = compileRules(applied.pack, day);
        for (const facts of fc.sample(factsNear(before, after), { seed, numRuns: 12 })) {
          const was = evaluateReference(before, facts).filter(({ rule }) => kept.has(rule));
          const is = evaluateReference(after, facts);
          const byId = new Map(is.map((one) => [one.rule, one]));
          for (const one of was) {
            const now = byId.get(one.rule);
            expect(now && height[now.outcome], one.rule).toBeGreaterThanOrEqual(height[one.outcome]);
            expect(weights.indexOf(now?.effect ?? '')).toBeGreaterThanOrEqual(weights.indexOf(one.effect));
          }
          const least = words.indexOf(verdictWord(was));
          expect(words.indexOf(verdictWord(is.filter(({ rule }) => kept.has(rule))))).toBeGreaterThanOrEqual(least);
          expect(words.indexOf(verdictWord(is))).toBeGreaterThanOrEqual(least);
        }
      }),
      { numRuns: 400, endOnFailure: true },
    );
    expect(taken).toBeGreaterThan(60);
    expect(changedRules).toBeGreaterThan(15);
  }, 60_000);
});

describe('comparing two conditions', () => {
  const pair = ruleSet(2).map(
    (rules) => compileRules({ ...ofCore, rules, parameters: generatedParameters }, day).rules,
  );

  test('what is proved holds on all facts, and what is loosened shows on the facts that are told', () => {
    fc.assert(
      fc.property(pair, fc.array(resolvedFacts(), { minLength: 5, maxLength: 5 }), ([one, other], drawn) => {
        const compared = compareConditions(one!.condition, other!.condition, factDefinition, 2026);
        if (compared.kind === 'unprovable') return;
        if (compared.kind === 'loosened') {
          const { cells, shipped, changed } = compared.breach;
          const facts = Object.fromEntries(
            Object.entries(cells).map(([fact, cell]) => [fact, cell?.resolved]),
          ) as unknown as ResolvedFacts;
          expect(outcomeOf(one!.condition, facts)).toBe(shipped);
          expect(outcomeOf(other!.condition, facts)).toBe(changed);
          expect(height[changed]).toBeLessThan(height[shipped]);
          return;
        }
        for (const facts of drawn) {
          const at = height[outcomeOf(one!.condition, facts)];
          expect(height[outcomeOf(other!.condition, facts)]).toBeGreaterThanOrEqual(at);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('what shows from the structure is also found by going through everything', () => {
    let shown = 0;
    fc.assert(
      fc.property(pair, fc.array(resolvedFacts(), { minLength: 20, maxLength: 20 }), ([one, other], drawn) => {
        const joined = { kind: 'any', members: [other!.condition, one!.condition] } as const;
        const narrowed = { kind: 'all', members: [other!.condition, one!.condition] } as const;
        for (const [high, low] of [
          [joined, one!.condition],
          [one!.condition, narrowed],
          [one!.condition, other!.condition],
          [{ kind: 'not', member: narrowed } as const, { kind: 'not', member: one!.condition } as const],
        ] as const) {
          if (!isAtLeast(high, low)) continue;
          shown += 1;
          for (const facts of drawn) {
            expect(height[outcomeOf(high, facts)]).toBeGreaterThanOrEqual(height[outcomeOf(low, facts)]);
          }
        }
      }),
      { numRuns: 200 },
    );
    expect(shown).toBeGreaterThan(550);
  });
});
