import type { FactId } from '../facts/registry/index.ts';
import type { ConditionTrace, RuleTrace, Trace } from '../rules/trace-types.ts';

/**
 * The unknown stops and holds whose outcome can still change the verdict, given the certain outcomes of the others: none once a
 * stop is met; once a hold is met only stops, which alone can make it worse; else all of them.
 */
export function openRules(trace: Trace): RuleTrace[] {
  if (trace.some(({ effect, outcome }) => effect === 'stop' && outcome === 'met')) return [];
  const held = trace.some(({ effect, outcome }) => effect === 'hold' && outcome === 'met');
  return trace.filter(
    ({ effect, outcome }) => outcome === 'unknown' && (effect === 'stop' || (effect === 'hold' && !held)),
  );
}

/**
 * Facts that could still change the verdict, alone or together with others that are not known: those that an open rule reads in a
 * comparison that is itself unknown and that no sibling has made irrelevant (a member of an `all` that is not met or of an `any`
 * that is met settles its group whatever the others are). Of an eitherOf that is not settled, every unsettled way counts; one that
 * is settled by a known way asks for no other. Bounds, not enumeration: a fact that can change the verdict is never left out for
 * want of another, while a contradiction between two comparisons of one unknown fact is not looked for.
 */
export function usefulFacts(trace: Trace): ReadonlySet<FactId> {
  const facts = new Set<FactId>();
  for (const { condition } of openRules(trace)) collectUnsettled(condition, facts);
  return facts;
}

function collectUnsettled(condition: ConditionTrace, facts: Set<FactId>): void {
  if (condition.outcome !== 'unknown') return;
  if (condition.kind === 'comparison') facts.add(condition.fact);
  else if (condition.kind === 'not' || condition.kind === 'rule') collectUnsettled(condition.member, facts);
  else for (const member of condition.members) collectUnsettled(member, facts);
}
