import type { FactId } from '../facts/registry/index.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import { resolvedFact } from '../facts/resolved.ts';
import type { CompiledComparison, CompiledCondition, CompiledRule } from '../rules/types.ts';
import { chanceUnder } from '../science/soil/temperature/normal.ts';
import type { Banded } from '../weather/banded.ts';

/** Standard errors to either side that a forecast's band is taken to hold: 90 %, our choice. */
const bandReach = 1.645;

/** Bands to be read in place of a fact's own, for facts that stand at the cautious end of theirs. */
export type WholeBands = Readonly<Partial<Record<FactId, Banded>>>;

/**
 * Chance, 0 to 1, that a rule is met, every number spread normally about its value and different comparisons taken as independent.
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
  const { value, low, high } = bands[id] ?? fact;
  const half = Math.max(high - value, value - low);
  const chanceAbove =
    half > 0 ? 1 - chanceUnder(((limit.value - value) / half) * bandReach) : sureAbove(value, op, limit.value);
  return op === 'above' || op === 'atLeast' ? chanceAbove : 1 - chanceAbove;
}

function sureAbove(value: number, op: CompiledComparison['op'], limit: number): number {
  const atLimit = op === 'atLeast' || op === 'below';
  return value > limit || (atLimit && value === limit) ? 1 : 0;
}
