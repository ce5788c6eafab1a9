import type { FactId, FactRegistry } from '../facts/registry/index.ts';
import type { Parameters } from '../units/parameter.ts';
import type { Source, Texts } from '../units/texts.ts';

/** What a met rule does to the verdict. */
export type Effect = 'stop' | 'hold' | 'advise';
/** Who stands behind a rule. */
export type Authority = 'law' | 'label' | 'water' | 'practice';
/** What lifts a stop or hold. */
export type Lifts = 'hours' | 'days' | 'person' | 'season';

/** Operators that compare with a number or a month and day; their right side is always a parameter id. */
export type OrderOperator = 'below' | 'atMost' | 'above' | 'atLeast';
/** Operators over choices and signs; their right side is a choice, a list of choices, or a list parameter's id. */
export type ChoiceOperator = 'is' | 'isNot' | 'oneOf' | 'noneOf' | 'has';
export type Operator = OrderOperator | ChoiceOperator;

/** A comparison as written in a rule file, exactly one operator: { "fact": "...", "above": "parameterId" }. */
export type Comparison = { readonly fact: FactId } & (
  | { readonly below: string }
  | { readonly atMost: string }
  | { readonly above: string }
  | { readonly atLeast: string }
  | { readonly is: string }
  | { readonly isNot: string }
  | { readonly oneOf: readonly string[] | { readonly parameter: string } }
  | { readonly noneOf: readonly string[] | { readonly parameter: string } }
  | { readonly has: string }
);

/** The closed condition language of rule files; at most two levels of groups, counted before references are expanded. */
export type Condition =
  | Comparison
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition }
  /** Two or more ways to know the same thing; members are comparisons of different facts. */
  | { readonly eitherOf: readonly Condition[] }
  /** Another rule's condition, by id. */
  | { readonly rule: string };

/** Sentences of a rule in one language. `{fact.id}` and `{parameterId}` are filled with value and unit. */
export interface RuleText {
  /** A few words for lists: "Soil too warm". */
  readonly title: string;
  /** One sentence said when the rule is met. */
  readonly met: string;
  /** One sentence said when the rule cannot be judged: what to find out and how. */
  readonly unknown: string;
  /** One sentence: what lifts it, what to do or watch for. Absent for advice. */
  readonly lift?: string;
}

/** A rule as loaded. */
export interface Rule {
  readonly id: string;
  readonly topic: string;
  readonly effect: Effect;
  readonly authority: Authority;
  /** Null for advice. */
  readonly lifts: Lifts | null;
  /** True for practice rules that an overlay may only tighten. */
  readonly protectedByPractice: boolean;
  readonly source: Source;
  readonly why: Texts;
  readonly when: Condition;
  /**
   * Conditions that it had before overlays changed it, the shipped one first. Protected rules that refer to it go on holding by
   * them beside the one it has now. Absent where no overlay changed the condition.
   */
  readonly earlier?: readonly Condition[];
  readonly text: Readonly<Record<string, RuleText>>;
}

/** True for a rule that overlays may only tighten: law, label, water, and the safety rules of practice. */
export function isProtected({ authority, protectedByPractice }: Pick<Rule, 'authority' | 'protectedByPractice'>) {
  return authority !== 'practice' || protectedByPractice;
}

/** A limit as the evaluators see it. */
export type Limit =
  | { readonly kind: 'number'; readonly value: number }
  /** Month and day, as month * 100 + day. */
  | { readonly kind: 'month-day'; readonly value: number }
  | { readonly kind: 'choices'; readonly values: readonly string[] };

/** A comparison ready for evaluation. `name` is unique within the compiled pack and stable: rule id and path. */
export interface CompiledComparison {
  readonly kind: 'comparison';
  readonly name: string;
  readonly fact: FactId;
  readonly op: Operator;
  readonly limit: Limit;
  /** Parameter the limit came from; null for a choice written in the rule. */
  readonly parameter: string | null;
  readonly unit: string | null;
}

/** A condition ready for evaluation: references expanded, limits looked up. */
export type CompiledCondition =
  | CompiledComparison
  | { readonly kind: 'all' | 'any' | 'eitherOf'; readonly members: readonly CompiledCondition[] }
  | { readonly kind: 'not'; readonly member: CompiledCondition }
  | { readonly kind: 'rule'; readonly rule: string; readonly member: CompiledCondition };

/** A rule ready for evaluation, with the facts and parameters that it reads, references followed, in written order. */
export interface CompiledRule {
  readonly rule: Rule;
  readonly condition: CompiledCondition;
  readonly facts: readonly FactId[];
  readonly parameters: readonly string[];
}

/** All rules of a pack with the limits of one day, in id order. */
export interface CompiledRules {
  readonly rules: readonly CompiledRule[];
  readonly parameters: Parameters;
  /** The facts that the pack reaches: those its rules, questions and dose read, and what these are worked out from. */
  readonly registry: FactRegistry;
}
