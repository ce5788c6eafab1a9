import type { FactType } from '../facts/types.ts';
import type { ChoiceOperator, OrderOperator } from './types.ts';

/** Operators with a limit on a scale: numbers and days of the year. */
const orderOperators = ['below', 'atMost', 'above', 'atLeast'] as const satisfies OrderOperator[];

/** Operators over choices and signs. */
const choiceOperators = ['is', 'isNot', 'oneOf', 'noneOf', 'has'] as const satisfies ChoiceOperator[];

/** Every operator of the condition language. */
export const operators = [...orderOperators, ...choiceOperators] as const;

/** Groups of the condition language; each counts as one level. */
export const groups = ['all', 'any', 'not', 'eitherOf'] as const;

const choiceOnly = ['is', 'isNot', 'oneOf', 'noneOf'] as const;

/** The operators that a fact of each type takes. */
export const operatorsOf: Readonly<Record<FactType, readonly (typeof operators)[number][]>> = {
  number: orderOperators,
  date: orderOperators,
  choice: choiceOnly,
  country: choiceOnly,
  signs: ['has'],
};

/** True for an operator with a limit on a scale. */
export function isOrderOperator(op: string): op is OrderOperator {
  return (orderOperators as readonly string[]).includes(op);
}
