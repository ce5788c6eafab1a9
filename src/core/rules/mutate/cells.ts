import type { FactDefinition, Resolved } from '../../facts/types.ts';
import { epochSeconds } from '../../units/brands.ts';
import { judgeComparison } from '../judge.ts';
import type { CompiledComparison } from '../types.ts';
import { choicePoints, dayPoints, numberPoints, signPoints } from './points.ts';

/** One value of a fact that stands for all values that the same comparisons judge alike. */
export interface Cell {
  readonly resolved: Resolved;
  /** The value as in a facts file; null where it is not known. */
  readonly given: unknown;
  /** How far it is from a plain value: 0 plain, more for bands, several choices and what is not known. */
  readonly cost: number;
}

/** A value of a fact before it is resolved. */
export interface Point {
  readonly value: DistributedOmit<Extract<Resolved, { known: true }>, 'known' | 'source' | 'at' | 'goodUntil'>;
  readonly given: unknown;
  readonly cost: number;
}

type DistributedOmit<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;

const unknownCell: Cell = { resolved: { known: false, reason: 'not-asked' }, given: null, cost: 3 };

/**
 * The cells of a fact under comparisons that read it: values at each limit and one step of precision off it, bands across
 * limits, choices alone and together, signs there, perhaps and not, and not known. One cell, the plainest, for each way in which
 * the comparisons can come out; a rule cannot tell values of one cell apart. Days of the year fall in `year`; a date is always known.
 */
export function cellsOf(
  comparisons: readonly CompiledComparison[],
  definition: FactDefinition,
  year: number,
): readonly Cell[] {
  const cells = [...pointsOf(comparisons, definition, year).map(resolve), unknownCell];
  const byOutcomes = new Map<string, Cell>();
  for (const cell of cells) {
    if (definition.type === 'date' && !cell.resolved.known) continue;
    const outcomes = comparisons.map((comparison) => judgeComparison(comparison, cell.resolved));
    const key = `${cell.resolved.known} ${outcomes.join()}`;
    const plainest = byOutcomes.get(key);
    if (!plainest || cell.cost < plainest.cost) byOutcomes.set(key, cell);
  }
  return [...byOutcomes.values()].sort((a, b) => a.cost - b.cost);
}

function pointsOf(comparisons: readonly CompiledComparison[], definition: FactDefinition, year: number): Point[] {
  const limits = comparisons.map(({ limit }) => limit);
  if (definition.type === 'number') return numberPoints(limits, definition);
  if (definition.type === 'date') return dayPoints(limits, year);
  return definition.type === 'signs' ? signPoints(limits) : choicePoints(limits, definition);
}

function resolve({ value, given, cost }: Point): Cell {
  return { resolved: { ...value, known: true, source: 'said', at: epochSeconds(0), goodUntil: null }, given, cost };
}
