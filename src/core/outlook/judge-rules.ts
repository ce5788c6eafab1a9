import type { FactId } from '../facts/registry/index.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import { outcomeOf } from '../rules/outcome.ts';
import { evaluateRule } from '../rules/reference.ts';
import type { Outcome } from '../rules/trace-types.ts';
import type { CompiledRule } from '../rules/types.ts';
import { usefulFacts } from '../verdict/useful.ts';
import type { HourFacts } from './hour-facts.ts';

/** One rule on one set of facts: its outcome and, where that is unknown, the facts that could settle it. */
export interface Judged {
  readonly outcome: Outcome;
  readonly open: readonly FactId[];
}

/** One rule in one hour: on facts as they surely stand then, and with what was observed held. */
export interface JudgedRule {
  readonly compiled: CompiledRule;
  readonly strict: Judged;
  readonly held: Judged;
}

/** Judges rules hour after hour by the synchronous evaluator; a rule none of whose facts has moved keeps its outcome. */
export function rulesJudge(): (rules: readonly CompiledRule[], facts: HourFacts) => readonly JudgedRule[] {
  const strict = keptOutcomes();
  const held = keptOutcomes();
  return (rules, facts) =>
    rules.map((compiled) => {
      const surely = strict(compiled, facts.strict);
      const rests = surely.outcome === 'unknown' && compiled.facts.some((id) => facts.aged.includes(id));
      return { compiled, strict: surely, held: rests ? held(compiled, facts.held) : surely };
    });
}

function keptOutcomes(): (compiled: CompiledRule, facts: ResolvedFacts) => Judged {
  const kept = new Map<CompiledRule, { readonly facts: ResolvedFacts; readonly judged: Judged }>();
  return (compiled, facts) => {
    const last = kept.get(compiled);
    if (last && compiled.facts.every((id) => last.facts[id] === facts[id])) return last.judged;
    const judged = judge(compiled, facts);
    kept.set(compiled, { facts, judged });
    return judged;
  };
}

function judge(compiled: CompiledRule, facts: ResolvedFacts): Judged {
  const outcome = outcomeOf(compiled.condition, facts);
  return { outcome, open: outcome === 'unknown' ? [...usefulFacts([evaluateRule(compiled, facts)])] : [] };
}
