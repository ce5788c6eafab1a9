import type { FactId } from '../facts/registry/index.ts';
import type { Outcome, RuleTrace } from '../rules/trace-types.ts';
import type { Authority, Effect, Lifts } from '../rules/types.ts';
import type { EpochSeconds } from '../units/brands.ts';

/** The three answers. */
export type VerdictWord = 'spray-today' | 'wait' | 'do-not-spray';

/** A stop, hold or advice that counts, in the order in which it is printed. */
export interface Reason {
  readonly rule: string;
  readonly effect: Effect;
  readonly authority: Authority;
  readonly lifts: Lifts | null;
  readonly outcome: Outcome;
  /** From the comparison that decides: positive = room left, in the fact's unit; null where there is none. */
  readonly margin: number | null;
  readonly marginUnit: string | null;
}

/** What the rules say of resolved facts at one moment: no words, no clock. */
export interface Verdict {
  readonly verdict: VerdictWord;
  /** Stops and holds that are met, then those unknown; stop before hold; law, label, water, practice; then id. */
  readonly reasons: readonly Reason[];
  /** Advice that is met. */
  readonly advice: readonly Reason[];
  /** Facts that could still change the verdict, in the order in which they would be asked. */
  readonly missing: readonly FactId[];
  /** The slowest of hours, days and season among the met stops and holds; null where none is met. */
  readonly slowest: Exclude<Lifts, 'person'> | null;
  /** Earliest moment at which a known fact that a stop or hold read grows too old; null where none does. */
  readonly validUntil: EpochSeconds | null;
  readonly trace: readonly RuleTrace[];
}

/** Dose and product per hectare, or what is needed to tell them. */
export type Dose =
  | {
      readonly activeGPerHa: number;
      /** Rounded down to 0.01. L/ha, or kg/ha where the product is a solid in g/kg: the figure is the same. */
      readonly productLPerHa: number;
      /** Active in that product, never above the label's maximum. */
      readonly activeInProductGPerHa: number;
      readonly labelMaxGPerHa: number;
      /** The usual dose, or the one for severe infestation. */
      readonly basis: 'usual' | 'severe';
      /** True where the label's maximum cut the dose. */
      readonly cutToLabel: boolean;
    }
  | { readonly needs: readonly FactId[] };
