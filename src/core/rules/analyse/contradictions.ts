import { judgeComparison } from '../judge.ts';
import type { CompiledComparison, CompiledCondition } from '../types.ts';
import type { DefinitionOf } from './every-cell.ts';
import { knownCellsOf } from './known-cells.ts';

/** Comparisons of one fact in one `all` that no value meets together, and the one at which that shows. */
export interface Contradiction {
  readonly comparisons: readonly CompiledComparison[];
  readonly at: CompiledComparison;
}

/** Contradictions within a condition as it is written, without the rules that it refers to. */
export function contradictionsOf(condition: CompiledCondition, definitionOf: DefinitionOf): Contradiction[] {
  if (condition.kind === 'comparison' || condition.kind === 'rule') return [];
  if (condition.kind === 'not') return contradictionsOf(condition.member, definitionOf);
  const within = condition.members.flatMap((member) => contradictionsOf(member, definitionOf));
  return condition.kind === 'all' ? [...contradictionsAmong(condition.members, definitionOf), ...within] : within;
}

function contradictionsAmong(members: readonly CompiledCondition[], definitionOf: DefinitionOf): Contradiction[] {
  const found: Contradiction[] = [];
  const byFact = new Map<string, CompiledComparison[]>();
  for (const member of members) {
    if (member.kind !== 'comparison') continue;
    const earlier = byFact.get(member.fact) ?? [];
    const comparisons = [...earlier, member];
    const cells = knownCellsOf(definitionOf(member.fact), comparisons);
    const met = (among: readonly CompiledComparison[]) =>
      cells === null || cells.some((cell) => among.every((one) => judgeComparison(one, cell) === 'met'));
    if (earlier.length > 0 && met(earlier) && met([member]) && !met(comparisons))
      found.push({ comparisons, at: member });
    else byFact.set(member.fact, comparisons);
  }
  return found;
}
