import type { FactId } from '../facts/registry/index.ts';
import { type ResolvedFacts, resolvedFact } from '../facts/resolved.ts';
import type { RuleTrace, Trace } from '../rules/trace-types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { adviceOf, reasonsOf } from './reasons.ts';
import type { Verdict, VerdictWord } from './types.ts';
import { usefulFacts } from './useful.ts';

const slowness = ['hours', 'days', 'season'] as const;

/**
 * The verdict of a trace over the facts that it was made from. `order` is the order of asking; facts that it does not name come
 * last, in the order in which the rules read them. Any stop met: do not spray; else any hold met: wait; else any stop or hold unknown: wait; else spray.
 */
export function verdictOf(trace: Trace, facts: ResolvedFacts, order: readonly FactId[]): Verdict {
  return {
    verdict: verdictWord(trace),
    reasons: reasonsOf(trace),
    advice: adviceOf(trace),
    missing: missingOf(trace, order),
    slowest: slowestOf(trace),
    validUntil: validUntilOf(trace, facts),
    trace,
  };
}

/** The word alone. */
export function verdictWord(trace: readonly Pick<RuleTrace, 'effect' | 'outcome'>[]): VerdictWord {
  const some = (effect: RuleTrace['effect'], outcome: RuleTrace['outcome']): boolean =>
    trace.some((rule) => rule.effect === effect && rule.outcome === outcome);
  if (some('stop', 'met')) return 'do-not-spray';
  if (some('hold', 'met') || some('stop', 'unknown') || some('hold', 'unknown')) return 'wait';
  return 'spray-today';
}

function missingOf(trace: Trace, order: readonly FactId[]): FactId[] {
  const useful = usefulFacts(trace);
  return [...new Set([...order, ...useful])].filter((fact) => useful.has(fact));
}

function slowestOf(trace: Trace): Verdict['slowest'] {
  const lifts = trace
    .filter(({ effect, outcome }) => effect !== 'advise' && outcome === 'met')
    .map((rule) => rule.lifts);
  return slowness.findLast((one) => lifts.includes(one)) ?? null;
}

function validUntilOf(trace: Trace, facts: ResolvedFacts): EpochSeconds | null {
  let earliest: EpochSeconds | null = null;
  for (const { effect, facts: read } of trace) {
    if (effect === 'advise') continue;
    for (const id of read) {
      const fact = resolvedFact(facts, id);
      if (!fact.known || fact.goodUntil === null) continue;
      if (earliest === null || fact.goodUntil < earliest) earliest = fact.goodUntil;
    }
  }
  return earliest;
}
