import { type ResolvedFacts, resolvedFact } from '../facts/resolved.ts';
import { judgeComparison, opposite } from './judge.ts';
import { marginOf } from './margins.ts';
import type { ConditionTrace, Margin, Outcome, RuleTrace, Trace } from './trace-types.ts';
import type { CompiledComparison, CompiledCondition, CompiledRule, CompiledRules } from './types.ts';

/** Evaluates every rule without the engine, synchronously; nothing is cut short, so the trace is whole. */
export function evaluateReference(compiled: CompiledRules, facts: ResolvedFacts): Trace {
  return compiled.rules.map((rule) => evaluateRule(rule, facts));
}

/** Evaluates one rule; `evaluateReference` is this for every rule. */
export function evaluateRule(
  { rule, condition, facts: read, parameters }: CompiledRule,
  facts: ResolvedFacts,
): RuleTrace {
  const margins: Margin[] = [];
  const trace = traceCondition(condition, facts, false, margins);
  const { id, effect, authority, lifts } = rule;
  const { outcome } = trace;
  return { rule: id, effect, authority, lifts, outcome, facts: read, parameters, margins, condition: trace };
}

function traceCondition(
  condition: CompiledCondition,
  facts: ResolvedFacts,
  negated: boolean,
  margins: Margin[],
): ConditionTrace {
  switch (condition.kind) {
    case 'comparison':
      return traceComparison(condition, facts, negated, margins);
    case 'not': {
      const member = traceCondition(condition.member, facts, !negated, margins);
      return { kind: 'not', outcome: opposite(member.outcome), member };
    }
    case 'rule': {
      const member = traceCondition(condition.member, facts, negated, margins);
      return { kind: 'rule', rule: condition.rule, outcome: member.outcome, member };
    }
    default: {
      const { kind } = condition;
      const members: ConditionTrace[] = [];
      for (const member of condition.members) members.push(traceCondition(member, facts, negated, margins));
      if (kind !== 'eitherOf')
        return { kind, outcome: kind === 'all' ? kleeneAll(members) : kleeneAny(members), members };
      return traceEitherOf(members);
    }
  }
}

function traceEitherOf(all: readonly ConditionTrace[]): ConditionTrace {
  const members = all.map((one) => (one.kind === 'comparison' ? { ...one, present: one.value.known } : one));
  const present = members.filter((member) => member.kind !== 'comparison' || member.present);
  return { kind: 'eitherOf', outcome: present.length === 0 ? 'unknown' : kleeneAny(present), members };
}

function traceComparison(
  comparison: CompiledComparison,
  facts: ResolvedFacts,
  negated: boolean,
  margins: Margin[],
): ConditionTrace {
  const { name, fact, op, limit, parameter, unit } = comparison;
  const value = resolvedFact(facts, fact);
  const margin = marginOf(comparison, value, negated);
  if (margin) margins.push(margin);
  const outcome = judgeComparison(comparison, value);
  return { kind: 'comparison', name, fact, op, limit, parameter, unit, value, outcome, margin };
}

function kleeneAll(members: readonly ConditionTrace[]): Outcome {
  let outcome: Outcome = 'met';
  for (const member of members) {
    if (member.outcome === 'not-met') return 'not-met';
    if (member.outcome === 'unknown') outcome = 'unknown';
  }
  return outcome;
}

function kleeneAny(members: readonly ConditionTrace[]): Outcome {
  let outcome: Outcome = 'not-met';
  for (const member of members) {
    if (member.outcome === 'met') return 'met';
    if (member.outcome === 'unknown') outcome = 'unknown';
  }
  return outcome;
}
