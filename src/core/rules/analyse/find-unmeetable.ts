import { outcomeOf } from '../outcome.ts';
import type { Report } from '../pack/findings.ts';
import type { CompiledRule } from '../types.ts';
import { contradictionsOf } from './contradictions.ts';
import { type CellSpace, cellSpaceOf, type DefinitionOf, mostCells, someCell } from './every-cell.ts';
import { type PlaceOf, sayComparisons } from './places.ts';

/**
 * Reports rules that are met whatever the facts, or never, with every value that their facts can have, and bounds of one fact
 * that leave no value between them. A rule of too many cells is reported as not analysed.
 */
export function findUnmeetable(
  rules: readonly CompiledRule[],
  definitionOf: DefinitionOf,
  places: PlaceOf,
  report: Report,
): void {
  for (const one of rules) {
    const { id } = one.rule;
    const contradictions = contradictionsOf(one.condition, definitionOf);
    for (const { comparisons, at } of contradictions) {
      report('RULE_BOUNDS_CONTRADICT', places.comparison(one, at), {
        expected: 'bounds with a value between them',
        came: sayComparisons(comparisons, ' and '),
        fact: at.fact,
        rule: id,
      });
    }
    const space = cellSpaceOf([one], definitionOf);
    if (space.size > mostCells) {
      tooBig(space, id, report, places);
      continue;
    }
    const isMet = (outcome: string) => someCell(space, (facts) => outcomeOf(one.condition, facts) === outcome);
    const came = sayComparisons(one.condition);
    const place = places.rule(id, 'when');
    if (!isMet('met')) {
      if (contradictions.length === 0)
        report('RULE_NEVER_MET', place, { expected: 'a condition that some values meet', came, rule: id });
    } else if (!isMet('not-met')) {
      report('RULE_ALWAYS_MET', place, { expected: 'a condition that some values do not meet', came, rule: id });
    }
  }
}

function tooBig({ size, facts }: CellSpace, rule: string, report: Report, places: PlaceOf): void {
  const expected = `at most ${mostCells} combinations of values`;
  const came = `${Number.isFinite(size) ? size : 'far more'} of ${facts.join(', ')}`;
  report('RULE_TOO_BIG', places.rule(rule, 'when'), { expected, came, rule }, 'warning');
}
