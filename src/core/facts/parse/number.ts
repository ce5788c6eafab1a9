import { checkRange } from '../plausible.ts';
import type { Reading } from '../types.ts';
import { cameAs, type GivenFact, refuse } from './given.ts';
import { memberStep, membersOf } from './value-object.ts';

function finiteNumber(fact: GivenFact, value: unknown, within?: string): number {
  if (typeof value === 'number' && Number.isFinite(value)) return value === 0 ? 0 : value;
  const unit = fact.definition.unit === null ? '' : ` in ${fact.definition.unit}`;
  throw refuse(fact, 'FACT_WRONG_TYPE', { expected: `a number${unit}`, came: cameAs(value) }, within);
}

/** Reads a number fact: a finite JSON number, or value with low and high around it. Text is never taken as a number. */
export function parseNumber(fact: GivenFact): Reading {
  const members = membersOf(fact, ['low', 'high']);
  const plain = memberStep(fact, 'value');
  const value = finiteNumber(fact, members['value'], plain);
  const low = 'low' in members ? { low: finiteNumber(fact, members['low'], 'low') } : {};
  const high = 'high' in members ? { high: finiteNumber(fact, members['high'], 'high') } : {};
  const reading = { type: 'number', value, ...low, ...high } as const;
  const problem = checkRange(fact.id, fact.definition, reading);
  if (problem) throw refuse(fact, problem.code, problem.details, problem.member === 'value' ? plain : problem.member);
  return reading;
}
