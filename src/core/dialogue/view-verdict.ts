import { describeChange } from '../words/change.ts';
import {
  describeForecast,
  describeGiven,
  describeGoodUntil,
  describePack,
  describeValidUntil,
} from '../words/forecast.ts';
import type { VerdictGivenEvent } from './events.ts';
import { jobsFor } from './find-out.ts';
import type { State } from './state.ts';
import type { ViewContext } from './view-context.ts';
import { ruleViews } from './view-rules.ts';
import type { VerdictView } from './view-types.ts';

/** A verdict as shown. Only the one that stands has its rules and tells whether the rest can be checked; the log has sentences alone. */
export function verdictView(
  given: VerdictGivenEvent,
  state: State,
  { pack, now, words }: ViewContext,
  standing: { readonly canCheckRest: boolean } | null,
): VerdictView {
  const { decision } = given;
  const before = state.verdicts[state.verdicts.indexOf(given) - 1]?.decision;
  const moment = { now, zone: pack.zone };
  return {
    verdict: decision.verdict,
    headline: decision.headline,
    why: decision.why,
    reasons: decision.reasons,
    advice: decision.advice,
    jobs: jobsFor(decision, pack, words.language),
    doseText: decision.doseText,
    doseNeeds: decision.verdict !== 'do-not-spray' && 'needs' in decision.dose && decision.dose.needs.length > 0,
    cautions: decision.cautions,
    forecastText: describeForecast(decision.forecast, moment, words),
    packText: describePack(decision.pack, words),
    at: decision.at,
    validUntil: decision.validUntil,
    validUntilText: decision.verdict === 'spray-today' ? describeValidUntil(decision.validUntil, moment, words) : null,
    givenText: describeGiven(decision.at, moment, words),
    goodUntilText: decision.verdict === 'spray-today' ? describeGoodUntil(decision.validUntil, pack.zone, words) : null,
    canCheckRest: standing?.canCheckRest ?? false,
    change: before ? describeChange(before, decision, words) : null,
    rules: standing ? ruleViews(decision, pack, words) : [],
  };
}
