import type { FactId } from '../facts/registry/index.ts';
import { type ResolvedFacts, resolvedFact } from '../facts/resolved.ts';
import { judgeComparison, opposite } from './judge.ts';
import { marginOf } from './margins.ts';
import type { ConditionTrace, Margin, Outcome, RuleTrace, Trace } from './trace-types.ts';
import type { CompiledComparison, CompiledCondition, CompiledRule, CompiledRules } from './types.ts';

/** Evaluates every rule without the engine, synchronously; nothing is cut short, so the trace is whole. */
export function evaluateReference(compiled: CompiledRules, facts: ResolvedFacts): Trace {
  return compiled.rules.map((rule) => traceRule(rule, facts));
}

interface Gathered {
  readonly facts: Set<FactId>;
  readonly parameters: Set<string>;
  readonly margins: Margin[];
}

function traceRule({ rule, condition }: CompiledRule, facts: ResolvedFacts): RuleTrace {
  const gathered: Gathered = { facts: new Set(), parameters: new Set(), margins: [] };
  const trace = traceCondition(condition, facts, false, gathered);
  const { id, effect, authority, lifts } = rule;
  return {
    rule: id,
    effect,
    authority,
    lifts,
    outcome: trace.outcome,
    facts: [...gathered.facts],
    parameters: [...gathered.parameters],
    margins: gathered.margins,
    condition: trace,
  };
}

function traceCondition(
  condition: CompiledCondition,
  facts: ResolvedFacts,
  negated: boolean,
  gathered: Gathered,
): ConditionTrace {
  switch (condition.kind) {
    case 'comparison':
      return traceComparison(condition, facts, negated, gathered);
    case 'not': {
      const member = traceCondition(condition.member, facts, !negated, gathered);
      return { kind: 'not', outcome: opposite(member.outcome), member };
    }
    case 'rule': {
      const member = traceCondition(condition.member, facts, negated, gathered);
      return { kind: 'rule', rule: condition.rule, outcome: member.outcome, member };
    }
    case 'eitherOf': {
      const members = condition.members.map((member) =>
        markPresence(traceCondition(member, facts, negated, gathered), facts),
      );
      const present = members.filter((member) => member.kind !== 'comparison' || member.present !== false);
      return { kind: 'eitherOf', outcome: present.length === 0 ? 'unknown' : kleeneAny(present), members };
    }
    default: {
      const members = condition.members.map((member) => traceCondition(member, facts, negated, gathered));
      return {
        kind: condition.kind,
        outcome: condition.kind === 'all' ? kleeneAll(members) : kleeneAny(members),
        members,
      };
    }
  }
}

function traceComparison(
  comparison: CompiledComparison,
  facts: ResolvedFacts,
  negated: boolean,
  gathered: Gathered,
): ConditionTrace {
  const { name, fact, op, limit, parameter, unit } = comparison;
  const value = resolvedFact(facts, fact);
  const margin = marginOf(comparison, value, negated);
  gathered.facts.add(fact);
  if (parameter !== null) gathered.parameters.add(parameter);
  if (margin) gathered.margins.push(margin);
  const outcome = judgeComparison(comparison, value);
  return { kind: 'comparison', name, fact, op, limit, parameter, unit, value, outcome, margin };
}

function markPresence(trace: ConditionTrace, facts: ResolvedFacts): ConditionTrace {
  return trace.kind === 'comparison' ? { ...trace, present: resolvedFact(facts, trace.fact).known } : trace;
}

function kleeneAll(members: readonly ConditionTrace[]): Outcome {
  if (members.some(({ outcome }) => outcome === 'not-met')) return 'not-met';
  return members.every(({ outcome }) => outcome === 'met') ? 'met' : 'unknown';
}

function kleeneAny(members: readonly ConditionTrace[]): Outcome {
  if (members.some(({ outcome }) => outcome === 'met')) return 'met';
  return members.every(({ outcome }) => outcome === 'not-met') ? 'not-met' : 'unknown';
}
