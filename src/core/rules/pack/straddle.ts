import type { FactId } from '../../facts/registry/index.ts';
import type { Reading } from '../../facts/types.ts';
import type { Parameter } from '../../units/parameter.ts';
import { isOrderOperator } from '../operators.ts';
import { comparisonsOf, operatorOf } from '../reads.ts';
import type { OrderOperator, Rule } from '../types.ts';
import type { Place, Report } from './findings.ts';
import { bandOf } from './parse-reading.ts';

/** A number that some comparison of a fact has as its limit. */
export interface NumberLimit {
  readonly op: OrderOperator;
  readonly parameter: string;
  readonly value: number;
}

/** The limits of a fact. */
export type LimitsOf = (fact: FactId) => readonly NumberLimit[];

/** The limits by fact: of every comparison in the rules, of every version of its parameter, and of the severe dose. */
export function collectLimits(
  rules: ReadonlyMap<string, Rule>,
  parameters: ReadonlyMap<string, readonly Parameter[]>,
): LimitsOf {
  const limits: (NumberLimit & { readonly fact: FactId })[] = [];
  const add = (fact: FactId, op: OrderOperator, parameter: string): void => {
    for (const { value } of parameters.get(parameter) ?? []) {
      if (typeof value === 'number') limits.push({ fact, op, parameter, value });
    }
  };
  for (const rule of rules.values()) {
    for (const comparison of comparisonsOf(rule.when, new Map())) {
      const { op, operand } = operatorOf(comparison);
      if (isOrderOperator(op)) add(comparison.fact, op, String(operand));
    }
  }
  add('weed.plantsPerM2', 'atLeast', 'severeDensityPlantsPerM2');
  return (fact) => limits.filter((limit) => limit.fact === fact);
}

/** Reports a number reading whose band does not lie wholly on one side of a limit, for each such limit. */
export function checkStraddle(
  reading: Reading,
  fact: FactId,
  limits: readonly NumberLimit[],
  answer: { readonly question: string; readonly choice: string },
  place: Place,
  report: Report,
): void {
  if (reading.type !== 'number') return;
  const band = bandOf(reading);
  const [low, high] = band;
  for (const limit of limits) {
    const { op, parameter, value } = limit;
    if (!straddles(band, limit)) continue;
    report('CHOICE_STRADDLES_LIMIT', place, {
      expected: `a band on one side of ${parameter} = ${value} (${op})`,
      came: `${low} to ${high}, in answer ${answer.choice} of question ${answer.question}`,
      fact,
      parameter,
    });
  }
}

/** True where a closed band does not lie wholly on one side of a limit. */
export function straddles([low, high]: readonly [number, number], limit: Pick<NumberLimit, 'op' | 'value'>): boolean {
  const { value } = limit;
  return isLowerSide(limit) ? low <= value && value < high : low < value && value <= high;
}

/** True where the limit's own value lies with the numbers below it. */
export function isLowerSide({ op }: Pick<NumberLimit, 'op'>): boolean {
  return op === 'atMost' || op === 'above';
}
