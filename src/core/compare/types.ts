import type { FactId } from '../facts/registry/index.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import type { Pack, PackCase } from '../rules/pack-types.ts';
import type { Lifts } from '../rules/types.ts';
import type { Dose, VerdictWord } from '../verdict/types.ts';

/** One of two rule sets that are compared: the pack with its overlays applied, and its cases. */
export interface Side {
  readonly pack: Pack;
  readonly cases: readonly PackCase[];
}

/** Two rule sets: the one as it was or is shipped, and the one that may take its place. */
export interface Sides {
  readonly a: Side;
  readonly b: Side;
}

/** What becomes of a verdict: the stricter one lets less through. */
export type Way = 'stricter' | 'looser' | 'same';

/** A verdict under both rule sets. */
export interface VerdictPair {
  readonly a: VerdictWord;
  readonly b: VerdictWord;
}

/** What one rule set says of some facts. */
export interface Answer {
  readonly verdict: VerdictWord;
  /** Every rule that is met, advice too, in id order. */
  readonly met: readonly string[];
  /** What lifts each stop and hold that is met. */
  readonly lifts: Readonly<Record<string, Lifts>>;
  readonly dose: Dose;
}

/** How many verdicts go from one to another. */
export interface Transition extends VerdictPair {
  readonly way: Way;
  readonly count: number;
}

/** A verdict that was saved: what `verdict-given` keeps as its decision holds all of it. */
export interface SavedVerdict {
  readonly verdict: VerdictWord;
  /** The moment judged, ISO instant UTC. */
  readonly at: string;
  readonly facts: ResolvedFacts;
  readonly pack: { readonly id: string; readonly version: string; readonly hash: string };
}

/** Facts that stand in for those of a field where nothing else tells them, and where they come from. */
export interface HeldField {
  /** As in a facts file. */
  readonly facts: Readonly<Record<string, unknown>>;
  readonly resolved: ResolvedFacts;
}

/** A fact with its value as in a facts file; null where it is not known. */
export type GivenFacts = Readonly<Partial<Record<FactId, unknown>>>;
