import type { FactId } from '../facts/registry/index.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import type { DefinitionOf } from '../rules/mutate/change-conditions.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { PlainDay } from '../rules/plain-day.ts';
import type { Trace } from '../rules/trace-types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { VerdictWord } from '../verdict/types.ts';

/**
 * What a day trains: `inside` its rule is just met; `outside` just not; `mixed` its rule decides with others that are met too;
 * `unknown-matters` its rule cannot be judged and that decides; `unknown-spared` something is not known that changes nothing;
 * `weather` a day of recorded weather.
 */
export type DayKind = (typeof madeKinds)[number] | 'weather';

/** The kinds that are made for each rule. */
export const madeKinds = ['inside', 'outside', 'mixed', 'unknown-matters', 'unknown-spared'] as const;

/** What a day is about: a rule and a kind; practice is scheduled by these. */
export interface Card {
  readonly rule: string;
  readonly kind: DayKind;
}

/** How near a day lies to the limit of its rule. */
export interface Nearness {
  /** The fact by which the day would come out otherwise. */
  readonly fact: FactId;
  /** Most that a number is off the limit, in the fact's unit; days for a date; null for choices and signs. */
  readonly within: number | null;
}

/** One practice day: plain data, which may lie in a file. */
export interface PracticeDay extends Card {
  /** The same for the same rules, kind, facts and moment. */
  readonly id: string;
  /** As in a facts file of the command line; what it leaves out is not known. */
  readonly facts: Readonly<Record<string, unknown>>;
  /** The moment judged, ISO 8601 UTC. */
  readonly at: string;
  /** For `inside` and `outside`. */
  readonly near?: Nearness;
}

/** Why a rule has no day of a kind. */
export type NoDayReason =
  /** The pack has no day on which all is well to start from. */
  | 'no-plain-day'
  /** No facts were found that bring the rule there by one step. */
  | 'not-reached'
  /** It reads nothing but the date, which is always known. */
  | 'always-known'
  /** Advice neither decides with others nor can it leave the answer open. */
  | 'only-advice';

/** What practice days are made from. */
export interface PracticeWorld {
  readonly pack: Pack;
  /** Where every day begins; null where the pack has none. */
  readonly plain: PlainDay | null;
  readonly definitionOf: DefinitionOf;
}

/** A day as the rules judge it. */
export interface JudgedDay {
  readonly at: EpochSeconds;
  readonly facts: ResolvedFacts;
  readonly trace: Trace;
  readonly verdict: VerdictWord;
  /** Stops and holds that are met, the leading one first; then those not known. */
  readonly met: readonly string[];
  readonly unknown: readonly string[];
  readonly advice: readonly string[];
}
