import type { FactId } from '../facts/registry/index.ts';
import { operators } from './operators.ts';
import type { Comparison, CompiledComparison, CompiledCondition, Condition, Rule } from './types.ts';

/** What a condition reads, references followed. */
export interface Reads {
  readonly facts: ReadonlySet<FactId>;
  readonly parameters: ReadonlySet<string>;
}

/** Facts and parameters that a condition reads, through the rules it names too. A circle of rules is walked once. */
export function readsOf(condition: Condition, rules: ReadonlyMap<string, Rule>): Reads {
  const facts = new Set<FactId>();
  const parameters = new Set<string>();
  for (const comparison of comparisonsOf(condition, rules)) {
    facts.add(comparison.fact);
    const id = parameterOf(comparison);
    if (id !== null) parameters.add(id);
  }
  return { facts, parameters };
}

/** Every comparison of a condition, in written order, references followed once each. */
export function comparisonsOf(
  condition: Condition,
  rules: ReadonlyMap<string, Rule>,
  seen: Set<string> = new Set(),
): Comparison[] {
  if ('fact' in condition) return [condition];
  if ('not' in condition) return comparisonsOf(condition.not, rules, seen);
  if ('rule' in condition) {
    const rule = rules.get(condition.rule);
    if (!rule || seen.has(rule.id)) return [];
    seen.add(rule.id);
    return [...(rule.earlier ?? []), rule.when].flatMap((when) => comparisonsOf(when, rules, seen));
  }
  return membersOf(condition).flatMap((member) => comparisonsOf(member, rules, seen));
}

/** Every comparison of a compiled condition, references expanded, in written order. */
export function comparisonsIn(condition: CompiledCondition): CompiledComparison[] {
  if (condition.kind === 'comparison') return [condition];
  return 'member' in condition ? comparisonsIn(condition.member) : condition.members.flatMap(comparisonsIn);
}

/** Ids of the rules that a condition names directly. */
export function referencesOf(condition: Condition): string[] {
  if ('rule' in condition) return [condition.rule];
  if ('fact' in condition) return [];
  return 'not' in condition ? referencesOf(condition.not) : membersOf(condition).flatMap(referencesOf);
}

/** The members of an `all`, `any` or `eitherOf`. */
export function membersOf(
  group: Extract<Condition, { all: unknown } | { any: unknown } | { eitherOf: unknown }>,
): readonly Condition[] {
  if ('all' in group) return group.all;
  return 'any' in group ? group.any : group.eitherOf;
}

/** Operator and right side of a comparison. */
export function operatorOf(comparison: Comparison): {
  readonly op: (typeof operators)[number];
  readonly operand: unknown;
} {
  const op = operators.find((name) => name in comparison) ?? 'is';
  return { op, operand: (comparison as unknown as Record<string, unknown>)[op] };
}

/** The parameter that a comparison names, or null where its choices stand in the rule. */
export function parameterOf(comparison: Comparison): string | null {
  const { op, operand } = operatorOf(comparison);
  if (op === 'is' || op === 'isNot' || op === 'has' || Array.isArray(operand)) return null;
  return typeof operand === 'string' ? operand : (operand as { readonly parameter: string }).parameter;
}
