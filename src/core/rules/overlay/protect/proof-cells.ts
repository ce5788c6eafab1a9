import type { FactDefinition } from '../../../facts/types.ts';
import { epochSeconds } from '../../../units/brands.ts';
import { judgeComparison } from '../../judge.ts';
import { type Cell, cellsOf } from '../../mutate/cells.ts';
import { choicePoints } from '../../mutate/points.ts';
import type { CompiledComparison } from '../../types.ts';

/** Most choices that some comparisons tell apart, beyond which not every set of them is gone through. */
const mostChoices = 10;

const supposed = { source: 'said', at: epochSeconds(0), goodUntil: null } as const;

/**
 * Cells that stand for every value which a fact can have under some comparisons: those of `cellsOf`, an unknown also where the
 * fact is a date, and every set of choices that the comparisons tell apart. Null where there are too many choices to go through.
 */
export function proofCells(
  comparisons: readonly CompiledComparison[],
  definition: FactDefinition,
  year: number,
): readonly Cell[] | null {
  const cells = cellsOf(comparisons, definition, year);
  if (definition.type === 'date') {
    return [...cells, { resolved: { known: false, reason: 'not-asked' }, given: null, cost: 3 }];
  }
  if (definition.type !== 'choice' && definition.type !== 'country') return cells;
  const classes = choiceClasses(comparisons, definition);
  if (classes.length > mostChoices) return null;
  const seen = new Set(cells.map((cell) => outcomesOf(comparisons, cell)));
  const sets = classes.reduce<string[][]>((all, choice) => all.flatMap((set) => [set, [...set, choice]]), [[]]);
  const further = sets.flatMap((possible): Cell[] => {
    if (possible.length === 0) return [];
    const cell: Cell = {
      resolved: { known: true, type: 'choice', possible, ...supposed },
      given: possible.length === 1 ? possible[0] : possible,
      cost: possible.length === 1 ? 0 : 2,
    };
    const outcomes = outcomesOf(comparisons, cell);
    if (seen.has(outcomes)) return [];
    seen.add(outcomes);
    return [cell];
  });
  return [...cells, ...further];
}

/** One choice for each way in which the comparisons come out on a choice alone. */
function choiceClasses(comparisons: readonly CompiledComparison[], definition: FactDefinition): string[] {
  const limits = comparisons.map(({ limit }) => limit);
  const alone = choicePoints(limits, definition).flatMap(({ value }) =>
    value.type === 'choice' && value.possible.length === 1 ? [...value.possible] : [],
  );
  const classes = new Map<string, string>();
  for (const choice of alone) {
    const resolved = { known: true, type: 'choice', possible: [choice], ...supposed } as const;
    const key = outcomesOf(comparisons, { resolved, given: choice, cost: 0 });
    if (!classes.has(key)) classes.set(key, choice);
  }
  return [...classes.values()];
}

function outcomesOf(comparisons: readonly CompiledComparison[], { resolved }: Cell): string {
  return `${resolved.known} ${comparisons.map((comparison) => judgeComparison(comparison, resolved)).join()}`;
}
