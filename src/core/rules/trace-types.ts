import type { FactId } from '../facts/registry/index.ts';
import type { Resolved } from '../facts/types.ts';
import type { Authority, Effect, Lifts, Limit, Operator } from './types.ts';

/** Kleene's three values, as outcomes of a condition or rule. */
export type Outcome = 'met' | 'not-met' | 'unknown';

/** How far a comparison is from its limit, in the fact's unit: positive = room left before the rule is met. */
export interface Margin {
  readonly fact: FactId;
  readonly parameter: string;
  readonly limit: number | string;
  readonly unit: string | null;
  /** From the value itself. Days for dates. */
  readonly margin: number;
  /** From the worse end of the band; equal to `margin` where there is none. */
  readonly worst: number;
}

/** Outcome of one node of a condition. `present` is false for an eitherOf member left out because its fact is unknown. */
export type ConditionTrace =
  | {
      readonly kind: 'comparison';
      readonly name: string;
      readonly fact: FactId;
      readonly op: Operator;
      readonly limit: Limit;
      readonly parameter: string | null;
      readonly unit: string | null;
      readonly value: Resolved;
      readonly outcome: Outcome;
      readonly margin: Margin | null;
      readonly present?: boolean;
    }
  | {
      readonly kind: 'all' | 'any' | 'eitherOf';
      readonly outcome: Outcome;
      readonly members: readonly ConditionTrace[];
    }
  | { readonly kind: 'not'; readonly outcome: Outcome; readonly member: ConditionTrace }
  | { readonly kind: 'rule'; readonly rule: string; readonly outcome: Outcome; readonly member: ConditionTrace };

/** Outcome of one rule with all it read. */
export interface RuleTrace {
  readonly rule: string;
  readonly effect: Effect;
  readonly authority: Authority;
  readonly lifts: Lifts | null;
  readonly outcome: Outcome;
  readonly facts: readonly FactId[];
  readonly parameters: readonly string[];
  readonly margins: readonly Margin[];
  readonly condition: ConditionTrace;
}

/** Every rule of the pack once, in id order. */
export type Trace = readonly RuleTrace[];
