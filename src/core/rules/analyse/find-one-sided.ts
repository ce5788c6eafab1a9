import type { ResolvedFacts } from '../../facts/resolved.ts';
import { resolvedFact } from '../../facts/resolved.ts';
import { judgeComparison } from '../judge.ts';
import { dayNumber } from '../margins.ts';
import { outcomeOf } from '../outcome.ts';
import type { Report } from '../pack/findings.ts';
import type { CompiledComparison, CompiledCondition, CompiledRule } from '../types.ts';
import type { DefinitionOf } from './every-cell.ts';
import type { JudgedCase } from './judged-cases.ts';
import { type PlaceOf, sayComparison } from './places.ts';

/** Steps of a fact's precision within which a case counts as at its limit. */
export const nearSteps = 10;

/**
 * Reports each comparison of a rule that no cases hold from both sides: one in which the rule is met with the fact just inside
 * its limit, and one in which it is not with the fact just outside. Just means at most ten steps of the fact's precision, for a
 * date one day; for choices and signs it means with and without. A rule as a whole needs a case on either side too.
 */
export function findOneSided(
  rules: readonly CompiledRule[],
  cases: readonly JudgedCase[],
  definitionOf: DefinitionOf,
  places: PlaceOf,
  report: Report,
): void {
  for (const compiled of rules) {
    const { id } = compiled.rule;
    const own = ownComparisons(compiled.condition, false);
    for (const { comparison, negated } of own) {
      const near = nearOf(comparison, definitionOf);
      const sides = { met: false, 'not-met': false };
      for (const { facts, rules: ofDay } of cases) {
        const rule = ofDay.get(id);
        if (!rule || !near.holds(facts)) continue;
        const outcome = outcomeOf(rule.condition, facts);
        const here = judgeComparison(sameIn(rule, comparison), resolvedFact(facts, comparison.fact));
        const wanted = negated ? { met: 'not-met', 'not-met': 'met' } : { met: 'met', 'not-met': 'not-met' };
        if (outcome !== 'unknown' && here === wanted[outcome]) sides[outcome] = true;
      }
      if (sides.met && sides['not-met']) continue;
      const expected = `cases with ${comparison.fact} ${near.words}: one in which ${id} is met, one in which it is not`;
      const place = places.comparison(compiled, comparison);
      report(
        'RULE_LIMIT_WITHOUT_CASE',
        place,
        { expected, came: `${sayComparison(comparison)}: ${came(sides)}`, rule: id },
        'warning',
      );
    }
    if (own.length > 0) continue;
    const outcomes = cases.map((one) => outcomeOf(one.rules.get(id)?.condition ?? compiled.condition, one.facts));
    const sides = { met: outcomes.includes('met'), 'not-met': outcomes.includes('not-met') };
    if (sides.met && sides['not-met']) continue;
    const expected = `one case in which ${id} is met, and one in which it is not`;
    report('RULE_LIMIT_WITHOUT_CASE', places.rule(id, 'when'), { expected, came: came(sides), rule: id }, 'warning');
  }
}

interface Own {
  readonly comparison: CompiledComparison;
  /** True under an odd number of `not`. */
  readonly negated: boolean;
}

function ownComparisons(condition: CompiledCondition, negated: boolean): Own[] {
  switch (condition.kind) {
    case 'comparison':
      return [{ comparison: condition, negated }];
    case 'rule':
      return [];
    case 'not':
      return ownComparisons(condition.member, !negated);
    default:
      return condition.members.flatMap((member) => ownComparisons(member, negated));
  }
}

/** The same comparison with the limit of another day. */
function sameIn({ condition }: CompiledRule, { name }: CompiledComparison): CompiledComparison {
  const found = ownComparisons(condition, false).find(({ comparison }) => comparison.name === name);
  return (found as Own).comparison;
}

interface Near {
  readonly words: string;
  readonly holds: (facts: ResolvedFacts) => boolean;
}

function nearOf({ fact, limit }: CompiledComparison, definitionOf: DefinitionOf): Near {
  if (limit.kind === 'choices') return { words: 'on either side', holds: () => true };
  const { precision = 1, unit } = definitionOf(fact);
  if (limit.kind === 'month-day') {
    return {
      words: 'on the day itself and the next to it',
      holds: (facts) => {
        const known = resolvedFact(facts, fact);
        return known.known && known.type === 'date' && daysApart(known.iso, limit.value) <= 1;
      },
    };
  }
  const most = precision * nearSteps;
  return {
    words: `at most ${Number(most.toPrecision(6))}${unit === null ? '' : ` ${unit}`} off ${limit.value}`,
    holds: (facts) => {
      const known = resolvedFact(facts, fact);
      if (!known.known || known.type !== 'number' || known.low !== known.high) return false;
      return Math.abs(known.value - limit.value) <= most * 1.0001;
    },
  };
}

function daysApart(iso: string, monthDay: number): number {
  const year = Number(iso.slice(0, 4));
  const here = dayNumber(year, Number(iso.slice(5, 7)), Number(iso.slice(8)));
  return Math.abs(here - dayNumber(year, Math.floor(monthDay / 100), monthDay % 100));
}

function came({ met, 'not-met': notMet }: { readonly met: boolean; readonly 'not-met': boolean }): string {
  if (!met && !notMet) return 'no such case';
  return met ? 'none in which it is not met' : 'none in which it is met';
}
