import type { FactId } from '../facts/registry/index.ts';
import type { ConditionTrace, RuleTrace } from '../rules/trace-types.ts';

/** One place in which an unknown comparison reads a fact, and the facts that stand beside it in an unknown `all`. */
interface Occurrence {
  readonly fact: FactId;
  readonly beside: readonly FactId[];
}

/**
 * Facts whose turn has not come: everywhere they stand in an `all` beside a fact that has to be known anyway, since another
 * comparison asks for it alone (the trend beside the temperature, the direction of the wind beside its speed). Until that one is
 * known they change nothing: its own rule holds the verdict, and their `all` cannot be met.
 */
export function deferredFacts(rules: readonly RuleTrace[]): ReadonlySet<FactId> {
  const occurrences = rules.flatMap(({ condition }) => occurrencesIn(condition, []));
  const anyway = new Set(occurrences.filter(({ beside }) => beside.length === 0).map(({ fact }) => fact));
  const facts = new Set(occurrences.map(({ fact }) => fact));
  return new Set(
    [...facts].filter((fact) =>
      occurrences.filter((one) => one.fact === fact).every(({ beside }) => beside.some((other) => anyway.has(other))),
    ),
  );
}

function occurrencesIn(condition: ConditionTrace, beside: readonly FactId[]): Occurrence[] {
  if (condition.outcome !== 'unknown') return [];
  if (condition.kind === 'comparison') return [{ fact: condition.fact, beside }];
  if (condition.kind === 'not' || condition.kind === 'rule') return occurrencesIn(condition.member, beside);
  if (condition.kind !== 'all') return condition.members.flatMap((member) => occurrencesIn(member, beside));
  const read = condition.members.map((member) => occurrencesIn(member, []).map(({ fact }) => fact));
  return condition.members.flatMap((member, index) =>
    occurrencesIn(member, [...beside, ...read.filter((_, other) => other !== index).flat()]),
  );
}
