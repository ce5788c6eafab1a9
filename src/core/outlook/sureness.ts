import type { FactId } from '../facts/registry/index.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import { resolvedFact } from '../facts/resolved.ts';
import type { CompiledComparison, CompiledCondition, CompiledRule } from '../rules/types.ts';
import type { Banded } from '../weather/banded.ts';

/** Bands to be read in place of a fact's own, for facts that stand at the cautious end of theirs. */
export type WholeBands = Readonly<Partial<Record<FactId, Banded>>>;

/**
 * Chance, 0 to 1, that a rule is met, every number spread evenly over its band and different comparisons taken as independent.
 * Null where no forecast number settles it: unknown facts and open choices are for eyes, and are not counted.
 */
export function chanceMet({ condition }: CompiledRule, facts: ResolvedFacts, bands: WholeBands): number | null {
  return chanceOf(condition, facts, bands);
}

function chanceOf(condition: CompiledCondition, facts: ResolvedFacts, bands: WholeBands): number | null {
  switch (condition.kind) {
    case 'comparison':
      return chanceOfComparison(condition, facts, bands);
    case 'rule':
      return chanceOf(condition.member, facts, bands);
    case 'not': {
      const chance = chanceOf(condition.member, facts, bands);
      return chance === null ? null : 1 - chance;
    }
    default: {
      const chances = condition.members.map((member) => chanceOf(member, facts, bands)).filter((one) => one !== null);
      if (chances.length === 0) return null;
      if (condition.kind !== 'all') return 1 - chances.reduce((product, one) => product * (1 - one), 1);
      return chances.reduce((product, one) => product * one, 1);
    }
  }
}

function chanceOfComparison(
  { fact: id, op, limit }: CompiledComparison,
  facts: ResolvedFacts,
  bands: WholeBands,
): number | null {
  const fact = resolvedFact(facts, id);
  if (!fact.known) return null;
  if (limit.kind === 'choices') {
    if (fact.type !== 'choice' || fact.possible.length !== 1) return null;
    const inside = limit.values.includes(fact.possible[0] ?? '');
    return inside === (op === 'is' || op === 'oneOf') ? 1 : 0;
  }
  if (fact.type !== 'number') return null;
  const { low, high } = bands[id] ?? fact;
  const rises = op === 'above' || op === 'atLeast';
  if (low === high) {
    const holds = rises ? low > limit.value : low < limit.value;
    return holds || (low === limit.value && (op === 'atLeast' || op === 'atMost')) ? 1 : 0;
  }
  const below = Math.min(1, Math.max(0, (limit.value - low) / (high - low)));
  return rises ? 1 - below : below;
}
