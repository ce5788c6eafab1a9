import type { FactId } from '../../../facts/registry/index.ts';
import type { CompiledComparison, CompiledCondition } from '../../types.ts';

/** The one way in which a fact may go: a choice towards yes, a number up or down. */
export type Way = 'yes' | 'higher' | 'lower';

/**
 * True where a condition can only come nearer to being met, or stay as it is, when a fact goes one way. Of ways to know the same
 * thing (`eitherOf`) a number must not be one: more hours ahead may be more than the forecast has, and another way would count alone.
 */
export function risesWith(condition: CompiledCondition, fact: FactId, way: Way, isTurned = false): boolean {
  switch (condition.kind) {
    case 'comparison':
      return condition.fact !== fact || comparisonRises(condition, way, isTurned);
    case 'not':
      return risesWith(condition.member, fact, way, !isTurned);
    case 'rule':
      return risesWith(condition.member, fact, way, isTurned);
    default:
      if (condition.kind === 'eitherOf' && way !== 'yes' && condition.members.some((one) => reads(one, fact)))
        return false;
      return condition.members.every((member) => risesWith(member, fact, way, isTurned));
  }
}

function comparisonRises({ op, limit }: CompiledComparison, way: Way, isTurned: boolean): boolean {
  if (way === 'yes') {
    const chosen = limit.kind === 'choices' && limit.values.length === 1 ? limit.values[0] : undefined;
    const isYes = (op === 'is' && chosen === 'yes') || (op === 'isNot' && chosen === 'no');
    const isNo = (op === 'is' && chosen === 'no') || (op === 'isNot' && chosen === 'yes');
    return isTurned ? isNo : isYes;
  }
  const isAbove = op === 'above' || op === 'atLeast';
  const isBelow = op === 'below' || op === 'atMost';
  return (way === 'higher') !== isTurned ? isAbove : isBelow;
}

function reads(condition: CompiledCondition, fact: FactId): boolean {
  if (condition.kind === 'comparison') return condition.fact === fact;
  return 'member' in condition ? reads(condition.member, fact) : condition.members.some((one) => reads(one, fact));
}
