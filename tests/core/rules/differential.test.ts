import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compileRules } from '../../../src/core/rules/compile.ts';
import { evaluateWithEngine } from '../../../src/core/rules/engine.ts';
import { evaluateChecked } from '../../../src/core/rules/evaluate-checked.ts';
import { evaluateReference } from '../../../src/core/rules/reference.ts';
import { ofCore } from '../../fixtures/core-facts.ts';
import { generatedParameters, ruleSet } from '../../generators/conditions.ts';
import { resolvedFacts } from '../../generators/facts.ts';

const rulesPerRun = 100;
const runs = 100;

test('both evaluators give every one of 10,000 generated condition trees the same outcome', async () => {
  const seen = { met: 0, 'not-met': 0, unknown: 0 };
  await fc.assert(
    fc.asyncProperty(ruleSet(rulesPerRun), resolvedFacts(), async (rules, facts) => {
      const compiled = compileRules({ ...ofCore, rules, parameters: generatedParameters }, '2026-11-06');
      const trace = evaluateReference(compiled, facts);
      const outcomes = await evaluateWithEngine(compiled, facts);
      expect(outcomes).toEqual(new Map(trace.map(({ rule, outcome }) => [rule, outcome])));
      for (const { outcome } of trace) seen[outcome] += 1;
    }),
    { numRuns: runs },
  );
  expect(seen.met + seen['not-met'] + seen.unknown).toBe(rulesPerRun * runs);
  expect(Math.min(...Object.values(seen))).toBeGreaterThan((rulesPerRun * runs) / 20);
});

test('50 evaluations at once are complete and like those made one by one', async () => {
  const [rules = []] = fc.sample(ruleSet(60), { numRuns: 1, seed: 3 });
  const compiled = compileRules({ ...ofCore, rules, parameters: generatedParameters }, '2026-11-06');
  const many = fc.sample(resolvedFacts(), { numRuns: 50, seed: 4 });
  const together = await Promise.all(many.map((facts) => evaluateChecked(compiled, facts)));
  for (const [index, facts] of many.entries()) {
    expect(together[index]).toEqual(await evaluateChecked(compiled, facts));
    expect(together[index]).toHaveLength(60);
  }
});

test('the order of rules and of facts changes neither the trace nor the engine', async () => {
  await fc.assert(
    fc.asyncProperty(
      ruleSet(30).chain((rules) => fc.tuple(fc.constant(rules), fc.shuffledSubarray([...rules], { minLength: 30 }))),
      resolvedFacts(),
      async ([rules, shuffled], facts) => {
        const reversed = Object.fromEntries(Object.entries(facts).reverse());
        const here = compileRules({ ...ofCore, rules, parameters: generatedParameters }, '2026-11-06');
        const there = compileRules(
          { ...ofCore, rules: shuffled, parameters: [...generatedParameters].reverse() },
          '2026-11-06',
        );
        expect(await evaluateChecked(there, reversed)).toEqual(await evaluateChecked(here, facts));
      },
    ),
    { numRuns: 30 },
  );
});
