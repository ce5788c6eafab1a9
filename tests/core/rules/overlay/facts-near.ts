import fc from 'fast-check';
import type { ResolvedFacts } from '../../../../src/core/facts/resolved.ts';
import type { Resolved } from '../../../../src/core/facts/types.ts';
import { comparisonsIn } from '../../../../src/core/rules/reads.ts';
import type { CompiledComparison, CompiledRules } from '../../../../src/core/rules/types.ts';
import { epochSeconds } from '../../../../src/core/units/brands.ts';
import { roundTo } from '../../../../src/core/units/round.ts';
import { factDefinition } from '../../../fixtures/core-facts.ts';

const origin = { known: true, source: 'said', at: epochSeconds(0), goodUntil: null } as const;
const unknown: Resolved = { known: false, reason: 'not-asked' };

/** Facts near every limit that some rules read: at it, steps off it, bands over it, several choices at once, unknown and absent. */
export function factsNear(...sets: readonly CompiledRules[]): fc.Arbitrary<ResolvedFacts> {
  const byFact = new Map<string, CompiledComparison[]>();
  for (const { rules } of sets) {
    for (const { condition } of rules) {
      for (const one of comparisonsIn(condition)) byFact.set(one.fact, [...(byFact.get(one.fact) ?? []), one]);
    }
  }
  const entries = [...byFact].map(([fact, comparisons]) =>
    fc.oneof(
      { weight: 5, arbitrary: knownNear(comparisons).map((value) => [[fact, value]] as [string, Resolved][]) },
      { weight: 1, arbitrary: fc.constantFrom<[string, Resolved][]>([[fact, unknown]], []) },
    ),
  );
  return fc.tuple(...entries).map((pairs) => Object.fromEntries(pairs.flat()) as ResolvedFacts);
}

function knownNear(comparisons: readonly CompiledComparison[]): fc.Arbitrary<Resolved> {
  const [first] = comparisons;
  const definition = factDefinition(first!.fact);
  const limits = comparisons.map(({ limit }) => limit);
  const named = [...new Set(limits.flatMap((limit) => (limit.kind === 'choices' ? limit.values : [])))];
  switch (definition.type) {
    case 'number': {
      const { precision = 1, range = [-1e6, 1e6] } = definition;
      const at = limits.flatMap((limit) => (limit.kind === 'number' ? [limit.value] : []));
      const value = fc
        .tuple(fc.constantFrom(...at), fc.constantFrom(-20, -1, 0, 0, 1, 20))
        .map(([limit, steps]) => roundTo(limit + steps * precision, precision))
        .filter((each) => each >= range[0] && each <= range[1]);
      return fc.oneof(
        value.map((each): Resolved => ({ ...origin, type: 'number', value: each, low: each, high: each })),
        fc.tuple(value, value).map(([a, b]): Resolved => {
          const [low, high] = a < b ? [a, b] : [b, a];
          return { ...origin, type: 'number', value: low, low, high };
        }),
      );
    }
    case 'date': {
      const days = limits.flatMap((limit) => (limit.kind === 'month-day' ? [limit.value] : []));
      const near = days.flatMap((day) => [day, Math.max(day - 1, 101)]).filter((day) => day % 100 > 0);
      return fc.constantFrom(...near, 1231, 101, 229).map((day): Resolved => {
        const iso = `2028-${String(Math.floor(day / 100)).padStart(2, '0')}-${String(day % 100).padStart(2, '0')}`;
        return { ...origin, type: 'date', iso };
      });
    }
    case 'signs':
      return fc
        .subarray(named)
        .chain((possible) =>
          fc.subarray(possible).map((present): Resolved => ({ ...origin, type: 'signs', present, possible })),
        );
    default: {
      const all = definition.choices ?? [...named, 'ZZ'];
      return fc.oneof(
        fc.constantFrom(...all).map((one): Resolved => ({ ...origin, type: 'choice', possible: [one] })),
        fc.subarray([...all], { minLength: 1 }).map((possible): Resolved => ({ ...origin, type: 'choice', possible })),
      );
    }
  }
}
