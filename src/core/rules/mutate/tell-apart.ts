import type { FactId } from '../../facts/registry/index.ts';
import type { ResolvedFacts } from '../../facts/resolved.ts';
import { outcomeOf } from '../outcome.ts';
import { comparisonsIn } from '../reads.ts';
import type { Outcome } from '../trace-types.ts';
import type { CompiledComparison, CompiledCondition, CompiledRule } from '../types.ts';
import { type Cell, cellsOf } from './cells.ts';
import type { DefinitionOf } from './change-conditions.ts';

/** Values of the facts that a rule reads, one cell each, with how the rule comes out on them. */
export interface Assignment {
  readonly cells: Readonly<Partial<Record<FactId, Cell>>>;
  readonly outcome: Outcome;
  /** Sum of the cells' costs: 0 where all are plain. */
  readonly cost: number;
}

/** Most assignments that are gone through for one rule. */
const mostAssignments = 1_000_000;

/** The cells of every fact that a rule reads, under its comparisons and further ones. */
export type RuleCells = readonly (readonly [fact: FactId, cells: readonly Cell[]])[];

/** The facts that a rule reads, references followed, each with its cells. Days of the year fall in `year`. */
export function ruleCells(
  { condition }: Pick<CompiledRule, 'condition'>,
  definitionOf: DefinitionOf,
  year: number,
  further: readonly CompiledComparison[] = [],
): RuleCells {
  const comparisons = [...comparisonsIn(condition), ...further];
  const facts = [...new Set(comparisons.map(({ fact }) => fact))];
  return facts.map((fact) => {
    const reading = comparisons.filter((one) => one.fact === fact);
    return [fact, cellsOf(reading, definitionOf(fact), year)];
  });
}

/**
 * Every way in which the facts that a rule reads can come out, with the rule's outcome: one assignment for each combination of
 * cells, so that whatever holds of all of them holds of all facts. The last fact changes fastest.
 */
export function* assignmentsOf(condition: CompiledCondition, cells: RuleCells): Generator<Assignment> {
  const at = cells.map(() => 0);
  for (;;) {
    const chosen = cells.map(([fact, each], index) => [fact, each[at[index] ?? 0] as Cell] as const);
    const outcome = outcomeOf(condition, resolvedOf(chosen));
    yield { cells: Object.fromEntries(chosen), outcome, cost: chosen.reduce((sum, [, { cost }]) => sum + cost, 0) };
    let turning = cells.length - 1;
    while (turning >= 0) {
      at[turning] = (at[turning] ?? 0) + 1;
      if ((at[turning] ?? 0) < (cells[turning]?.[1].length ?? 0)) break;
      at[turning] = 0;
      turning -= 1;
    }
    if (turning < 0) return;
  }
}

/** How two versions of a rule can be told apart. */
export interface ToldApart {
  /** Assignments on which they come out differently, plainest first; the outcome is that of the first version. */
  readonly ways: readonly Assignment[];
  /** True where every assignment was gone through, so that no way means that no facts can tell the two apart. */
  readonly whole: boolean;
}

/**
 * Ways to tell two versions of a rule apart, at most `most`. Where the facts can come out in too many ways, plain values alone
 * are gone through.
 */
export function tellApart(
  original: CompiledRule,
  changed: CompiledRule,
  definitionOf: DefinitionOf,
  year: number,
  most = 20,
): ToldApart {
  const all = ruleCells(original, definitionOf, year, comparisonsIn(changed.condition));
  const whole = all.reduce((product, [, cells]) => product * cells.length, 1) <= mostAssignments;
  const cells = whole ? all : all.map(([fact, each]) => [fact, each.filter(({ cost }) => cost === 0)] as const);
  const differing: Assignment[] = [];
  let tried = 0;
  for (const assignment of assignmentsOf(original.condition, cells)) {
    tried += 1;
    if (tried > mostAssignments) break;
    const after = outcomeOf(changed.condition, resolvedOf(Object.entries(assignment.cells) as [FactId, Cell][]));
    if (after !== assignment.outcome) differing.push(assignment);
  }
  return { ways: differing.sort((a, b) => a.cost - b.cost).slice(0, most), whole };
}

function resolvedOf(cells: readonly (readonly [FactId, Cell])[]): ResolvedFacts {
  return Object.fromEntries(cells.map(([fact, cell]) => [fact, cell.resolved]));
}
