import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { askPack, askWholeRoad } from './ask-pack.ts';
import { agreedAnswer, agreedDose, agreedRules, type CertainFacts } from './design-oracle.ts';
import { certainFacts, oracleFacts, valuesTried } from './facts-near-limits.ts';

function answerOf({ verdict, trace }: Awaited<ReturnType<typeof askWholeRoad>> | ReturnType<typeof askPack>) {
  const met = trace.filter(({ outcome }) => outcome === 'met').map(({ rule }) => rule);
  const unknown = trace.filter(({ outcome }) => outcome === 'unknown').map(({ rule }) => rule);
  return { met: met.sort(), unknown, verdict };
}

function agreed(facts: CertainFacts) {
  const { met, verdict } = agreedAnswer(facts);
  return { met, unknown: [], verdict };
}

const harmless = Object.fromEntries(oracleFacts.map((id) => [id, valuesTried[id][0]])) as unknown as CertainFacts;

describe('with every fact certain, the pack says what the rules written out by hand say', () => {
  test('for thousands of days at, just below and just above the limits', () => {
    const verdicts = new Map<string, number>();
    const seen = new Set<string>();
    fc.assert(
      fc.property(fc.constantFrom(2, 6, 15, 60).chain(certainFacts), (facts) => {
        const expected = agreed(facts);
        verdicts.set(expected.verdict, (verdicts.get(expected.verdict) ?? 0) + 1);
        for (const rule of expected.met) seen.add(rule);
        expect(answerOf(askPack(facts))).toEqual(expected);
      }),
      { numRuns: 4000 },
    );
    expect([...seen].sort()).toEqual(Object.keys(agreedRules).sort());
    for (const verdict of ['spray-today', 'wait', 'do-not-spray']) expect(verdicts.get(verdict)).toBeGreaterThan(200);
  });

  test.each(oracleFacts)('for every value of %s on an otherwise harmless day', (id) => {
    for (const value of valuesTried[id] as readonly unknown[]) {
      const facts = { ...harmless, [id]: value } as CertainFacts;
      expect(answerOf(askPack(facts))).toEqual(agreed(facts));
    }
  });

  test('and so it does by the whole road, engine and words included', async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(2, 10, 40).chain(certainFacts), async (facts) => {
        expect(answerOf(await askWholeRoad(facts))).toEqual(agreed(facts));
      }),
      { numRuns: 150 },
    );
  });

  test('the dose is the one worked out in whole numbers', () => {
    fc.assert(
      fc.property(certainFacts(70), (facts) => {
        const { activeGPerHa, productHundredths } = agreedDose(facts);
        expect(askPack(facts).dose).toMatchObject({ activeGPerHa, productLPerHa: productHundredths / 100 });
      }),
      { numRuns: 1000 },
    );
  });
});
