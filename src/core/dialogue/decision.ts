import { definitionsOf } from '../facts/registry/index.ts';
import { type ResolvedFacts, resolvedFact } from '../facts/resolved.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { Trace } from '../rules/trace-types.ts';
import type { CompiledRules } from '../rules/types.ts';
import { doseFor } from '../sprayer/dose.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { inLanguage } from '../units/texts.ts';
import { verdictOf } from '../verdict/verdict-of.ts';
import type { Forecast } from '../weather/forecast.ts';
import { catalogueOf } from '../words/catalogue.ts';
import { describeDose } from '../words/dose.ts';
import { headlineOf } from '../words/headline.ts';
import { whyOf } from '../words/why.ts';
import { askingOrder } from './asking-order.ts';
import type { Decision } from './decision-types.ts';
import { summariseForecast } from './forecast-summary.ts';
import { instantText } from './moment.ts';
import { stampOf } from './pack-stamp.ts';
import { wordReason } from './worded-reason.ts';

/** All that a decision is put together from. The trace must come from these facts and rules. */
export interface DecisionInput {
  readonly pack: Pack;
  readonly compiled: CompiledRules;
  readonly facts: ResolvedFacts;
  readonly trace: Trace;
  readonly at: EpochSeconds;
  readonly forecast: Forecast | null;
  /** ISO 639-1 code. */
  readonly language: string;
}

/** Puts one whole answer together from a trace: verdict, sentences, dose, cautions, stamps. Pure. */
export function decisionFrom(input: DecisionInput): Decision {
  const { pack, compiled, facts, trace, at, forecast, language } = input;
  const words = catalogueOf(language);
  const definitionOf = definitionsOf(pack.facts);
  const verdict = verdictOf(trace, facts, askingOrder(pack));
  const byRule = new Map(trace.map((rule) => [rule.rule, rule]));
  const worded = (reason: (typeof verdict.reasons)[number]) =>
    wordReason(reason, { pack, rule: byRule.get(reason.rule), parameters: compiled.parameters, language });
  const reasons = verdict.reasons.map(worded);
  const dose = doseFor(facts, compiled.parameters);
  const strength = resolvedFact(facts, 'product.activeGPerL');
  return {
    ...verdict,
    headline: headlineOf(verdict, words),
    why: whyOf({ verdict: verdict.verdict, reasons, trace }, definitionOf, words),
    reasons,
    advice: verdict.advice.map(worded),
    dose,
    doseText: describeDose(
      dose,
      strength.known && strength.type === 'number' ? strength.high : null,
      definitionOf,
      words,
    ),
    cautions: pack.cautions.map(({ id, authority, text }) => ({ id, authority, text: inLanguage(text, language) })),
    pack: stampOf(pack, language),
    forecast:
      forecast &&
      summariseForecast(forecast, { at, facts, parameters: compiled.parameters, registry: compiled.registry }),
    facts,
    at: instantText(at),
    validUntil: verdict.validUntil === null ? null : instantText(verdict.validUntil),
  };
}
