import type { ConditionTrace, Margin, Outcome, RuleTrace, Trace } from '../rules/trace-types.ts';
import type { Authority, Effect } from '../rules/types.ts';
import type { Reason } from './types.ts';

const outcomeRank: Readonly<Record<Outcome, number>> = { met: 0, unknown: 1, 'not-met': 2 };
const effectRank: Readonly<Record<Effect, number>> = { stop: 0, hold: 1, advise: 2 };
const authorityRank: Readonly<Record<Authority, number>> = { law: 0, label: 1, water: 2, practice: 3 };

/** Stops and holds that are met, then those unknown; stop before hold, then law, label, water, practice, then id. */
export function reasonsOf(trace: Trace): Reason[] {
  return ordered(trace.filter(({ effect, outcome }) => effect !== 'advise' && outcome !== 'not-met')).map(reasonOf);
}

/** Advice that is met, by law, label, water, practice, then id. */
export function adviceOf(trace: Trace): Reason[] {
  return ordered(trace.filter(({ effect, outcome }) => effect === 'advise' && outcome === 'met')).map(reasonOf);
}

function ordered(rules: readonly RuleTrace[]): RuleTrace[] {
  return [...rules].sort(
    (a, b) =>
      outcomeRank[a.outcome] - outcomeRank[b.outcome] ||
      effectRank[a.effect] - effectRank[b.effect] ||
      authorityRank[a.authority] - authorityRank[b.authority] ||
      (a.rule < b.rule ? -1 : 1),
  );
}

function reasonOf({ rule, effect, authority, lifts, outcome, condition }: RuleTrace): Reason {
  const deciding = decidingMargin(condition);
  return {
    rule,
    effect,
    authority,
    lifts,
    outcome,
    margin: deciding?.margin ?? null,
    marginUnit: deciding?.unit ?? null,
  };
}

/**
 * The margin of the comparison that decides a condition: the first, in written order, on a way of nodes that have their group's
 * outcome (for a `not`, its member's). Between two limits of one fact, that which the passing of days lifts: the upper one.
 */
export function decidingMargin(condition: ConditionTrace): Margin | null {
  const margins = supportingMargins(condition);
  const first = margins[0];
  if (!first || typeof first.margin.limit === 'number') return first?.margin ?? null;
  const upper = margins.find(({ margin, rises }) => margin.fact === first.margin.fact && !rises);
  return (upper ?? first).margin;
}

function supportingMargins(condition: ConditionTrace): { margin: Margin; rises: boolean }[] {
  if (condition.kind === 'comparison') {
    const { margin, op } = condition;
    return margin ? [{ margin, rises: op === 'above' || op === 'atLeast' }] : [];
  }
  if (condition.kind === 'not' || condition.kind === 'rule') return supportingMargins(condition.member);
  return condition.members.filter(({ outcome }) => outcome === condition.outcome).flatMap(supportingMargins);
}
