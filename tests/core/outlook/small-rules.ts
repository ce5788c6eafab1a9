import { coreFacts, type FactId } from '../../../src/core/facts/registry/index.ts';
import { comparisonsIn } from '../../../src/core/rules/reads.ts';
import type {
  CompiledComparison,
  CompiledCondition,
  CompiledRule,
  CompiledRules,
  Effect,
  Lifts,
  Operator,
} from '../../../src/core/rules/types.ts';
import type { Parameters } from '../../../src/core/units/parameter.ts';

/** A comparison with a number, or with one or several choices. */
export function compare(fact: FactId, op: Operator, value: number | string | readonly string[]): CompiledComparison {
  const limit =
    typeof value === 'number'
      ? ({ kind: fact === 'date' ? 'month-day' : 'number', value } as const)
      : ({ kind: 'choices', values: typeof value === 'string' ? [value] : value } as const);
  return { kind: 'comparison', name: `${fact} ${op}`, fact, op, limit, parameter: null, unit: null };
}

/** A condition of several. */
export function group(kind: 'all' | 'any' | 'eitherOf', ...members: CompiledCondition[]): CompiledCondition {
  return { kind, members };
}

/** An invented rule with a condition, a hold of practice that hours lift unless said otherwise. */
export function ruleOf(
  id: string,
  condition: CompiledCondition,
  { effect = 'hold', lifts = 'hours' }: { readonly effect?: Effect; readonly lifts?: Lifts | null } = {},
): CompiledRule {
  const [first] = comparisonsIn(condition);
  return {
    rule: {
      id,
      topic: 'invented',
      effect,
      authority: 'practice',
      lifts,
      protectedByPractice: false,
      source: 'invented for tests',
      why: { en: 'a test needs it' },
      when: { fact: first?.fact ?? 'date', is: 'yes' },
      text: {},
    },
    condition,
    facts: [...new Set(comparisonsIn(condition).map(({ fact }) => fact))],
    parameters: [],
  };
}

/** Some rules, with the facts built in. */
export function rulesOf(rules: readonly CompiledRule[], parameters: Parameters = new Map()): CompiledRules {
  return { rules, parameters, registry: coreFacts };
}
