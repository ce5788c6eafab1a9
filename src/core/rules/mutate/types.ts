import type { Parameter } from '../../units/parameter.ts';
import type { ReachingPack } from '../reach.ts';
import type { Rule } from '../types.ts';

/** What a change touches: a parameter's value, or one thing in a rule. */
export type ChangeKind =
  | 'limit'
  | 'operator'
  | 'choice'
  | 'connective'
  | 'negation'
  | 'member'
  | 'reference'
  | 'effect'
  | 'lifts';

/** One single change of a rule set: a rule or a version of a parameter, before and after. */
export type Change =
  | { readonly kind: Exclude<ChangeKind, 'limit'>; readonly before: Rule; readonly after: Rule }
  | { readonly kind: 'limit'; readonly before: Parameter; readonly after: Parameter };

/** The rules and parameters that a change is made in, with the facts and questions beside them. */
export type RuleSet = ReachingPack;

/** The rule set with one change made; order is kept. */
export function applyChange(set: RuleSet, change: Change): RuleSet {
  if (change.kind === 'limit') {
    return { ...set, parameters: set.parameters.map((one) => (one === change.before ? change.after : one)) };
  }
  return { ...set, rules: set.rules.map((one) => (one === change.before ? change.after : one)) };
}
