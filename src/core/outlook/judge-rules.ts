import type { FactId } from '../facts/registry/index.ts';
import type { Resolved } from '../facts/types.ts';
import { evaluateRule } from '../rules/reference.ts';
import type { RuleTrace } from '../rules/trace-types.ts';
import type { CompiledRule } from '../rules/types.ts';
import type { HourFacts } from './hour-facts.ts';

/** One rule in one hour: on facts as they surely stand then, and with what was observed held. The same trace where both agree. */
export interface JudgedRule {
  readonly compiled: CompiledRule;
  readonly strict: RuleTrace;
  readonly held: RuleTrace;
}

type Facts = Readonly<Partial<Record<FactId, Resolved>>>;

/** Judges rules hour after hour by the synchronous evaluator; a rule none of whose facts has moved keeps its trace. */
export function rulesJudge(): (rules: readonly CompiledRule[], facts: HourFacts) => readonly JudgedRule[] {
  const strict = keptTraces();
  const held = keptTraces();
  return (rules, facts) =>
    rules.map((compiled) => {
      const surely = strict(compiled, facts.strict);
      const rests = surely.outcome === 'unknown' && compiled.facts.some((id) => facts.aged.includes(id));
      return { compiled, strict: surely, held: rests ? held(compiled, facts.held) : surely };
    });
}

function keptTraces(): (compiled: CompiledRule, facts: Facts) => RuleTrace {
  const kept = new Map<CompiledRule, { readonly facts: Facts; readonly trace: RuleTrace }>();
  return (compiled, facts) => {
    const last = kept.get(compiled);
    if (last && compiled.facts.every((id) => last.facts[id] === facts[id])) return last.trace;
    const trace = evaluateRule(compiled, facts);
    kept.set(compiled, { facts, trace });
    return trace;
  };
}
