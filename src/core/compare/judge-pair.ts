import type { ResolvedFacts } from '../facts/resolved.ts';
import { outcomeOf } from '../rules/outcome.ts';
import type { Outcome } from '../rules/trace-types.ts';
import type { CompiledRule, CompiledRules, Effect } from '../rules/types.ts';
import type { VerdictWord } from '../verdict/types.ts';
import { verdictWord } from '../verdict/verdict-of.ts';
import type { VerdictPair, Way } from './types.ts';

/** Outcomes of every rule, in the order of the compiled rules, and the verdict that they come to. */
export interface Judgement {
  readonly verdict: VerdictWord;
  readonly outcomes: readonly Outcome[];
}

/** Both judgements of the same facts. */
export interface JudgedPair {
  readonly a: Judgement;
  readonly b: Judgement;
}

/** Two compiled rule sets, ready to be judged together. */
export interface RulePair {
  readonly a: CompiledRules;
  readonly b: CompiledRules;
  /** For each rule of B the place of the rule of A with the very same condition. */
  readonly sameAs: readonly (number | undefined)[];
}

const strictness: readonly VerdictWord[] = ['spray-today', 'wait', 'do-not-spray'];

/** Puts two compiled rule sets side by side. */
export function pairRules(a: CompiledRules, b: CompiledRules): RulePair {
  const places = new Map(a.rules.map((rule, at) => [keyOf(rule), at]));
  return { a, b, sameAs: b.rules.map((rule) => places.get(keyOf(rule))) };
}

function keyOf({ condition }: CompiledRule): string {
  return JSON.stringify(condition);
}

/**
 * Judges both rule sets; a condition that both have is judged once. `factsB` are the facts as B sees them where its parameters of
 * ageing and derivation differ.
 */
export function judgePair({ a, b, sameAs }: RulePair, facts: ResolvedFacts, factsB = facts): JudgedPair {
  const ofA = a.rules.map(({ condition }) => outcomeOf(condition, facts));
  const ofB = b.rules.map(({ condition }, at) => {
    const same = sameAs[at];
    return factsB === facts && same !== undefined ? ofA[same]! : outcomeOf(condition, factsB);
  });
  return { a: judgementOf(a, ofA), b: judgementOf(b, ofB) };
}

function judgementOf({ rules }: CompiledRules, outcomes: readonly Outcome[]): Judgement {
  const judged = rules.map(({ rule: { effect } }, at) => ({ effect, outcome: outcomes[at]! }));
  return { verdict: verdictWord(judged), outcomes };
}

/** What becomes of a verdict from A to B. */
export function wayOf({ a, b }: VerdictPair): Way {
  if (a === b) return 'same';
  return strictness.indexOf(b) > strictness.indexOf(a) ? 'stricter' : 'looser';
}

/**
 * Ids of the rules by which a verdict changed: those that bring about the stricter of the two verdicts and do not in the other rule
 * set. Empty where it did not change.
 */
export function decidersOf({ a, b }: RulePair, judged: JudgedPair): string[] {
  const way = wayOf({ a: judged.a.verdict, b: judged.b.verdict });
  if (way === 'same') return [];
  const [strict, loose] = way === 'stricter' ? ([b, a] as const) : ([a, b] as const);
  const [strictly, loosely] = way === 'stricter' ? [judged.b, judged.a] : [judged.a, judged.b];
  const level = strictness.indexOf(strictly.verdict);
  const weights = new Map(loose.rules.map(({ rule }, at) => [rule.id, weightOf(rule.effect, loosely.outcomes[at]!)]));
  return strict.rules.flatMap(({ rule: { id, effect } }, at) => {
    const weight = weightOf(effect, strictly.outcomes[at]!);
    return weight === level && (weights.get(id) ?? 0) < level ? [id] : [];
  });
}

/** What an outcome alone brings about, as its place among the verdicts. */
function weightOf(effect: Effect, outcome: Outcome): number {
  if (effect === 'advise' || outcome === 'not-met') return 0;
  return effect === 'stop' && outcome === 'met' ? 2 : 1;
}
