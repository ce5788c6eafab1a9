import type { FactId } from '../../../facts/registry/index.ts';
import type { DefinitionOf } from '../../mutate/change-conditions.ts';
import { type Assignment, assignmentsOf, type RuleCells } from '../../mutate/tell-apart.ts';
import { outcomeOf } from '../../outcome.ts';
import { comparisonsIn } from '../../reads.ts';
import type { Outcome } from '../../trace-types.ts';
import type { CompiledCondition } from '../../types.ts';
import { isAtLeast } from './at-least.ts';
import { proofCells } from './proof-cells.ts';

/** Most combinations of cells that are gone through for one condition. */
export const mostCombinations = 1_000_000;

/** Facts on which a changed condition comes out lower than the shipped one. */
export interface Loosened {
  readonly cells: Assignment['cells'];
  readonly shipped: Outcome;
  readonly changed: Outcome;
}

/** Whether a changed condition holds at least as strictly as the shipped one, and how that is known. */
export type Compared =
  | { readonly kind: 'proved'; readonly by: 'structure' | 'every-combination' }
  | { readonly kind: 'loosened'; readonly breach: Loosened }
  | { readonly kind: 'unprovable'; readonly combinations: number };

const height: Readonly<Record<Outcome, number>> = { 'not-met': 0, unknown: 1, met: 2 };

/**
 * Compares a changed condition with the shipped one over everything that facts can be: by structure where that shows it, else by
 * going through every combination of cells. Where there are too many, plain values alone are gone through for a breach to show.
 * Days of the year fall in `year`.
 */
export function compareConditions(
  shipped: CompiledCondition,
  changed: CompiledCondition,
  definitionOf: DefinitionOf,
  year: number,
): Compared {
  if (isAtLeast(changed, shipped)) return { kind: 'proved', by: 'structure' };
  const comparisons = [...comparisonsIn(shipped), ...comparisonsIn(changed)];
  const facts = [...new Set(comparisons.map(({ fact }) => fact))];
  let whole = true;
  const cells = facts.map((fact) => {
    const reading = comparisons.filter((one) => one.fact === fact);
    const found = proofCells(reading, definitionOf(fact), year);
    if (found === null) whole = false;
    return [fact, found ?? []] as const;
  });
  const combinations = whole ? combinationsOf(cells) : Number.POSITIVE_INFINITY;
  if (combinations > mostCombinations) {
    const plain = cells.map(([fact, each]) => [fact, each.filter(({ cost }) => cost === 0)] as const);
    const breach = breachIn(shipped, changed, plain);
    return breach ? { kind: 'loosened', breach } : { kind: 'unprovable', combinations };
  }
  const breach = breachIn(shipped, changed, cells);
  return breach ? { kind: 'loosened', breach } : { kind: 'proved', by: 'every-combination' };
}

/** The plainest facts on which the changed condition comes out lower. */
function breachIn(shipped: CompiledCondition, changed: CompiledCondition, cells: RuleCells): Loosened | null {
  let plainest: (Loosened & { readonly cost: number }) | null = null;
  let tried = 0;
  for (const { cells: chosen, outcome, cost } of assignmentsOf(shipped, cells)) {
    tried += 1;
    if (tried > mostCombinations) break;
    if (outcome === 'not-met' || (plainest && plainest.cost <= cost)) continue;
    const facts = Object.fromEntries(Object.entries(chosen).map(([fact, cell]) => [fact as FactId, cell?.resolved]));
    const after = outcomeOf(changed, facts as Parameters<typeof outcomeOf>[1]);
    if (height[after] < height[outcome]) plainest = { cells: chosen, shipped: outcome, changed: after, cost };
    if (plainest?.cost === 0) break;
  }
  return plainest;
}

function combinationsOf(cells: RuleCells): number {
  return cells.reduce((product, [, each]) => product * each.length, 1);
}
