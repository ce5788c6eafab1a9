import type { FactId } from '../facts/registry/index.ts';
import type { CompiledCondition, CompiledRules } from './types.ts';

/** The lowest limit from which a stop or hold is met by this fact alone, whatever its id; null where no rule has one. */
export function upperLimitOf({ rules }: CompiledRules, fact: FactId): number | null {
  const limits = rules.flatMap(({ rule, condition }) => (rule.effect === 'advise' ? [] : upperLimits(condition, fact)));
  return limits.length === 0 ? null : Math.min(...limits);
}

function upperLimits(condition: CompiledCondition, fact: FactId): number[] {
  if (condition.kind === 'rule') return upperLimits(condition.member, fact);
  if (condition.kind === 'any') return condition.members.flatMap((member) => upperLimits(member, fact));
  if (condition.kind !== 'comparison' || condition.fact !== fact || condition.limit.kind !== 'number') return [];
  return condition.op === 'above' || condition.op === 'atLeast' ? [condition.limit.value] : [];
}
