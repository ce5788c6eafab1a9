import { type ResolvedFacts, resolvedFact } from '../facts/resolved.ts';
import { judgeComparison, opposite } from './judge.ts';
import type { Outcome } from './trace-types.ts';
import type { CompiledCondition } from './types.ts';

/** The outcome of a condition alone, the same as its trace has: for scans over many hours, where no trace is wanted. */
export function outcomeOf(condition: CompiledCondition, facts: ResolvedFacts): Outcome {
  switch (condition.kind) {
    case 'comparison':
      return judgeComparison(condition, resolvedFact(facts, condition.fact));
    case 'not':
      return opposite(outcomeOf(condition.member, facts));
    case 'rule':
      return outcomeOf(condition.member, facts);
    case 'all':
      return settle(condition.members, facts, 'not-met', 'met');
    case 'any':
      return settle(condition.members, facts, 'met', 'not-met');
    case 'eitherOf': {
      const present = condition.members.filter(
        (member) => member.kind !== 'comparison' || resolvedFact(facts, member.fact).known,
      );
      return present.length === 0 ? 'unknown' : settle(present, facts, 'met', 'not-met');
    }
  }
}

/** The settling outcome if any member has it; else unknown if any is unknown; else the other. Every member is judged. */
function settle(
  members: readonly CompiledCondition[],
  facts: ResolvedFacts,
  settling: Outcome,
  otherwise: Outcome,
): Outcome {
  let outcome = otherwise;
  for (const member of members) {
    const one = outcomeOf(member, facts);
    if (one === settling) outcome = settling;
    else if (one === 'unknown' && outcome !== settling) outcome = 'unknown';
  }
  return outcome;
}
