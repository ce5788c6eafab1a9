import type { FactId } from '../facts/registry/index.ts';
import type { FactDefinition, Reading } from '../facts/types.ts';
import { knownNumber } from '../rules/analyse/known-values.ts';
import { judgeComparison } from '../rules/judge.ts';
import type { Question } from '../rules/pack-types.ts';
import { comparisonsIn } from '../rules/reads.ts';
import type { CompiledRules } from '../rules/types.ts';
import type { AnswerShape } from './types.ts';

/** An answer with the readings that it gives. */
export interface GivenAnswer {
  readonly shape: AnswerShape;
  readonly gives: Readonly<Record<FactId, Reading>>;
}

/**
 * The answers of a question that make a difference: its buttons; where it has none and takes a number, one for each stretch between
 * the limits that rules compare the number with. None where no rule reads it.
 */
export function answersOf(
  { facts, choices }: Question,
  compiled: CompiledRules,
  definitionOf: (fact: FactId) => FactDefinition,
): readonly GivenAnswer[] {
  if (choices) return choices.map(({ id, gives }) => ({ shape: { kind: 'choice', choice: id }, gives }));
  const [fact] = facts;
  return fact === undefined ? [] : stretchesOf(fact, definitionOf(fact), compiled);
}

/** A piece of the line of numbers: one limit, or what lies between two. */
interface Piece {
  readonly value: number;
  readonly from: number | null;
  readonly to: number | null;
  readonly withFrom: boolean;
  readonly withTo: boolean;
}

function stretchesOf(fact: FactId, { range }: FactDefinition, compiled: CompiledRules): readonly GivenAnswer[] {
  const comparisons = compiled.rules
    .flatMap(({ condition }) => comparisonsIn(condition))
    .filter((comparison) => comparison.fact === fact);
  const outcomesAt = (value: number) => comparisons.map((one) => judgeComparison(one, knownNumber(value))).join(' ');
  const limits = comparisons.flatMap(({ limit }) => (limit.kind === 'number' ? [limit.value] : []));
  const merged: Piece[] = [];
  for (const piece of piecesBetween(
    [...new Set(limits)].sort((a, b) => a - b),
    range,
  )) {
    const last = merged.at(-1);
    if (last && outcomesAt(last.value) === outcomesAt(piece.value)) {
      merged[merged.length - 1] = { ...last, to: piece.to, withTo: piece.withTo };
    } else merged.push(piece);
  }
  return merged.map(({ value, ...ends }) => ({
    shape: { kind: 'stretch', fact, ...ends },
    gives: { [fact]: { type: 'number', value } },
  }));
}

function piecesBetween(limits: readonly number[], range: readonly [number, number] | undefined): Piece[] {
  if (limits.length === 0) return [];
  const [least, most] = range ?? [Math.min(...limits) - 2, Math.max(...limits) + 2];
  const between = (from: number | null, to: number | null): Piece => {
    const value = ((from ?? least) + (to ?? most)) / 2;
    return { value, from, to, withFrom: false, withTo: false };
  };
  const pieces = limits.flatMap((limit, at): Piece[] => [
    { value: limit, from: limit, to: limit, withFrom: true, withTo: true },
    between(limit, limits[at + 1] ?? null),
  ]);
  return [between(null, limits[0] ?? null), ...pieces].filter(
    ({ from, to, withFrom }) => withFrom || (from ?? least) < (to ?? most),
  );
}
