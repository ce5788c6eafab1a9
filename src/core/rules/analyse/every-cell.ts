import type { FactId } from '../../facts/registry/index.ts';
import type { ResolvedFacts } from '../../facts/resolved.ts';
import type { FactDefinition, Known } from '../../facts/types.ts';
import { comparisonsIn } from '../reads.ts';
import type { CompiledRule } from '../types.ts';
import { knownCellsOf } from './known-cells.ts';

/** The registry entry of a fact. */
export type DefinitionOf = (fact: FactId) => FactDefinition;

/** Most cells that are looked at for one rule, or two side by side. More is said, never skipped without a word. */
export const mostCells = 50_000;

/** Facts known in every way that makes a difference to some rules: each combination of the cells of the facts that they read. */
export interface CellSpace {
  readonly facts: readonly FactId[];
  readonly cells: readonly (readonly Known[])[];
  /** How many combinations there are; infinite where one fact alone has too many cells. */
  readonly size: number;
}

/** The cells of the facts that these rules read, told apart by the comparisons of all of them. */
export function cellSpaceOf(rules: readonly CompiledRule[], definitionOf: DefinitionOf): CellSpace {
  const comparisons = rules.flatMap(({ condition }) => comparisonsIn(condition));
  const facts = [...new Set(comparisons.map(({ fact }) => fact))];
  const found = facts.map((fact) =>
    knownCellsOf(
      definitionOf(fact),
      comparisons.filter((comparison) => comparison.fact === fact),
    ),
  );
  const size = found.reduce((product, cells) => product * (cells?.length ?? Number.POSITIVE_INFINITY), 1);
  return { facts, cells: found.map((cells) => cells ?? []), size };
}

/** True where the visitor says true of some combination of the cells; it is asked until then. */
export function someCell({ facts, cells, size }: CellSpace, visit: (facts: ResolvedFacts) => boolean): boolean {
  for (let index = 0; index < size; index += 1) {
    const known: Record<FactId, Known> = {};
    let rest = index;
    facts.forEach((fact, at) => {
      const of = cells[at] ?? [];
      const cell = of[rest % of.length];
      rest = Math.floor(rest / of.length);
      if (cell) known[fact] = cell;
    });
    if (visit(known)) return true;
  }
  return false;
}
