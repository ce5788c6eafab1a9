import type { Outcome } from '../rules/trace-types.ts';
import type { Authority, Effect, Lifts } from '../rules/types.ts';
import type { VerdictWord } from '../verdict/types.ts';
import type { Catalogue } from './catalogue.ts';

/** A verdict in a few words: "spray today". */
export function describeVerdict(verdict: VerdictWord, words: Catalogue): string {
  return words.verdict.names[verdict];
}

/** What a rule's outcome means: "holds it", "does not apply", "not known". */
export function describeOutcome(effect: Effect, outcome: Outcome, words: Catalogue): string {
  return words.verdict.outcomes[effect][outcome];
}

/** What a rule does: "stop", "hold", "advice". */
export function describeEffect(effect: Effect, words: Catalogue): string {
  return words.verdict.effects[effect];
}

/** Who stands behind a rule and whom to ask: "label: check the label in hand". */
export function describeAuthority(authority: Authority, words: Catalogue): string {
  return words.verdict.authorities[authority];
}

/** What lifts a stop or hold. */
export function describeLifts(lifts: Lifts, words: Catalogue): string {
  return words.verdict.lifts[lifts];
}

/** The safety sentence that stands with every spray-today: label in hand, regulator and adviser come first. */
export function safetySentence(words: Catalogue): string {
  return words.verdict.safety;
}
