import fc from 'fast-check';
import { expect, test } from 'vitest';
import { askPack } from './ask-pack.ts';
import { agreedAnswer, agreedRules } from './design-oracle.ts';
import { completed, uncertainFacts } from './uncertain-facts.ts';

/** Numbers from 0 up to 1 that depend on the seed alone (mulberry32). */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    const first = Math.imul(state ^ (state >>> 15), 1 | state);
    const second = (first + Math.imul(first ^ (first >>> 7), 61 | first)) ^ first;
    return ((second ^ (second >>> 14)) >>> 0) / 4294967296;
  };
}

test('what the pack says of facts in doubt holds however they turn out', () => {
  const decided = { met: 0, 'not-met': 0, unknown: 0 };
  const verdicts = { 'spray-today': 0, wait: 0, 'do-not-spray': 0 };
  fc.assert(
    fc.property(fc.constantFrom(3, 8, 20, 50).chain(uncertainFacts), fc.integer(), (uncertain, seed) => {
      const { trace, verdict } = askPack(uncertain.json);
      verdicts[verdict] += 1;
      const isHeld = trace.some(({ effect, outcome }) => effect === 'hold' && outcome === 'met');
      for (const { outcome } of trace) decided[outcome] += 1;
      const pick = numbersFrom(seed);
      for (let round = 0; round < 25; round += 1) {
        const truth = agreedAnswer(completed(uncertain, pick));
        const wrong = trace.filter(
          ({ rule, outcome }) => outcome !== 'unknown' && (outcome === 'met') !== truth.met.includes(rule),
        );
        expect(wrong.map(({ rule, outcome }) => `${rule}: ${outcome}`)).toEqual([]);
        if (verdict !== 'wait') expect(truth.verdict).toBe(verdict);
        else if (isHeld) expect(truth.verdict).not.toBe('spray-today');
      }
    }),
    { numRuns: 1500 },
  );
  for (const count of [...Object.values(decided), ...Object.values(verdicts)]) expect(count).toBeGreaterThan(20);
});

test('a rule is unknown only where it can turn out either way', () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(fc.constantFrom(3, 12, 40).chain(uncertainFacts), fc.integer(), (uncertain, seed) => {
      const open = askPack(uncertain.json).trace.filter(({ outcome }) => outcome === 'unknown');
      const pick = numbersFrom(seed);
      const truths = Array.from({ length: 300 }, () => completed(uncertain, pick));
      for (const { rule } of open) {
        seen.add(rule);
        const holds = agreedRules[rule]![1];
        expect([truths.some(holds), truths.every(holds)], rule).toEqual([true, false]);
      }
    }),
    { numRuns: 300 },
  );
  expect(seen.size).toBeGreaterThan(30);
});
