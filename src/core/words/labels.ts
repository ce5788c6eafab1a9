import type { Outcome } from '../rules/trace-types.ts';
import type { Authority, Effect } from '../rules/types.ts';
import type { Catalogue } from './catalogue.ts';

/** What a rule's outcome means: "holds it", "does not apply", "not known". */
export function describeOutcome(effect: Effect, outcome: Outcome, words: Catalogue): string {
  return words.verdict.outcomes[effect][outcome];
}

/** Who stands behind a rule and whom to ask: "label: check the label in hand". */
export function describeAuthority(authority: Authority, words: Catalogue): string {
  return words.verdict.authorities[authority];
}
