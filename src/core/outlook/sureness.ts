import type { FactId } from '../facts/registry/index.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import { resolvedFact } from '../facts/resolved.ts';
import type { CompiledComparison, CompiledCondition, CompiledRule } from '../rules/types.ts';
import { chanceUnder } from '../science/soil/temperature/normal.ts';
import type { Banded } from '../weather/banded.ts';

/** Bands to be read in place of a fact's own, for facts that stand at the cautious end of theirs. */
export type WholeBands = Readonly<Partial<Record<FactId, Banded>>>;

/**
 * Chance, 0 to 1, that a rule is met, every number spread normally about its value and different comparisons taken as independent.
 * `reach` is how many standard errors a band holds to either side. Null where no forecast number settles it: unknown facts and open choices are for eyes, and are not counted.
 */
export function chanceMet(
  { condition }: Pick<CompiledRule, 'condition'>,
  facts: ResolvedFacts,
  bands: WholeBands,
  reach: number,
): number | null {
  return chanceOf(condition, { facts, bands, reach });
}

interface World {
  readonly facts: ResolvedFacts;
  readonly bands: WholeBands;
  readonly reach: number;
}

function chanceOf(condition: CompiledCondition, world: World): number | null {
  switch (condition.kind) {
    case 'comparison':
      return chanceOfComparison(condition, world);
    case 'rule':
      return chanceOf(condition.member, world);
    case 'not': {
      const chance = chanceOf(condition.member, world);
      return chance === null ? null : 1 - chance;
    }
    default: {
      const chances = condition.members.map((member) => chanceOf(member, world)).filter((one) => one !== null);
      if (chances.length === 0) return null;
      if (condition.kind !== 'all') return 1 - chances.reduce((product, one) => product * (1 - one), 1);
      return chances.reduce((product, one) => product * one, 1);
    }
  }
}

function chanceOfComparison(
  { fact: id, op, limit }: CompiledComparison,
  { facts, bands, reach }: World,
): number | null {
  const fact = resolvedFact(facts, id);
  if (!fact.known) return null;
  if (limit.kind === 'choices') {
    if (fact.type !== 'choice' || fact.possible.length !== 1) return null;
    const inside = limit.values.includes(fact.possible[0] ?? '');
    return inside === (op === 'is' || op === 'oneOf') ? 1 : 0;
  }
  if (fact.type !== 'number') return null;
  const { value, low, high } = bands[id] ?? fact;
  const half = Math.max(high - value, value - low);
  const chanceAbove =
    half > 0 ? 1 - chanceUnder(((limit.value - value) / half) * reach) : sureAbove(value, op, limit.value);
  return op === 'above' || op === 'atLeast' ? chanceAbove : 1 - chanceAbove;
}

function sureAbove(value: number, op: CompiledComparison['op'], limit: number): number {
  const atLimit = op === 'atLeast' || op === 'below';
  return value > limit || (atLimit && value === limit) ? 1 : 0;
}
