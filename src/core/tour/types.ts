import type { FactId } from '../facts/registry/index.ts';
import type { Outcome } from '../rules/trace-types.ts';

/** What becomes of the conversation: nothing more is asked; wait is sure and little is asked; it goes on. */
export type After = 'ends' | 'waits' | 'asks-on';

/** What one rule comes to by one answer alone, all else not known but the day. */
export interface RuleAfter {
  readonly rule: string;
  readonly outcome: Outcome;
  /** Facts on which it still hangs; empty where it is settled. */
  readonly waitsFor: readonly FactId[];
}

/** How an answer is told: one of the question's buttons, or a stretch of numbers between limits, ends included as told. */
export type AnswerShape =
  | { readonly kind: 'choice'; readonly choice: string }
  | {
      readonly kind: 'stretch';
      readonly fact: FactId;
      /** Null where the stretch has no end there. In the fact's unit. */
      readonly from: number | null;
      readonly to: number | null;
      /** True where the end itself belongs to the stretch. */
      readonly withFrom: boolean;
      readonly withTo: boolean;
    };

/** One answer and what it opens or closes. */
export interface TourAnswer {
  readonly shape: AnswerShape;
  readonly rules: readonly RuleAfter[];
  readonly after: After;
  /** Questions that need not be asked any more, where the conversation goes on. */
  readonly closes: readonly string[];
}

/** One question of the tour, in the order of asking. */
export interface TourStep {
  /** From 1. */
  readonly number: number;
  readonly question: string;
  readonly facts: readonly FactId[];
  /** Rules that read one of its facts. */
  readonly rules: readonly string[];
  readonly answers: readonly TourAnswer[];
  /** True where it is asked only for the dose. */
  readonly forDose: boolean;
}

/** The logic of a pack, told as a walk through its questions. */
export interface Tour {
  readonly steps: readonly TourStep[];
  /** Facts that rules read and no question asks for: worked out, from the calendar or from the forecast. */
  readonly unasked: readonly { readonly fact: FactId; readonly rules: readonly string[] }[];
}
