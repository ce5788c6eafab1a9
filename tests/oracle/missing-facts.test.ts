import fc from 'fast-check';
import { expect, test } from 'vitest';
import { askPack } from './ask-pack.ts';
import { agreedAnswer, type CertainFacts } from './design-oracle.ts';
import { oracleFacts } from './facts-near-limits.ts';
import { completed, type Uncertain, uncertainFacts } from './uncertain-facts.ts';

/** Numbers from 0 up to 1 that depend on the seed alone; most are 0, which picks the harmless value of what was left out. */
function mostlyHarmless(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) | 0;
    const number = (state >>> 0) / 4294967296;
    return number < 0.75 ? 0 : (number - 0.75) * 4;
  };
}

/** The verdicts for every value that one fact may have while the others are as they turned out. */
function verdictsFor(id: keyof CertainFacts, { json, mayBe }: Uncertain, others: CertainFacts): Set<string> {
  const verdicts = mayBe[id].map((value) => {
    const settled = oracleFacts.map((fact) => [fact, [fact === id ? value : others[fact]]]);
    const facts = completed({ json, mayBe: Object.fromEntries(settled) as Uncertain['mayBe'] }, () => 0);
    return agreedAnswer(facts).verdict;
  });
  return new Set(verdicts);
}

test('a fact is missing just where it can change the verdict', () => {
  let missed = 0;
  let idle = 0;
  fc.assert(
    fc.property(fc.constantFrom(3, 8).chain(uncertainFacts), fc.integer(), (uncertain, seed) => {
      const { missing, verdict } = askPack(uncertain.json);
      const pick = mostlyHarmless(seed);
      const truths = Array.from({ length: 400 }, () => completed(uncertain, pick));
      for (const id of oracleFacts.filter((fact) => uncertain.mayBe[fact].length > 1)) {
        const isMissing = missing.includes(id);
        const tried = isMissing ? truths : truths.slice(0, 40);
        const canChange = tried.some((others) => verdictsFor(id, uncertain, others).size > 1);
        if (isMissing) missed += 1;
        else idle += 1;
        expect({ id, verdict, canChange }).toEqual({ id, verdict, canChange: isMissing });
      }
    }),
    { numRuns: 150, seed: 20261106 },
  );
  expect([missed > 20, idle > 50]).toEqual([true, true]);
});
