import type { ResolvedFacts } from '../../facts/resolved.ts';
import { outcomeOf } from '../outcome.ts';
import type { Report } from '../pack/findings.ts';
import type { Authority, CompiledRule, Effect, Lifts, Rule } from '../types.ts';
import { cellSpaceOf, type DefinitionOf, mostCells, someCell } from './every-cell.ts';
import type { PlaceOf } from './places.ts';

const effects: readonly Effect[] = ['advise', 'hold', 'stop'];
const authorities: readonly Authority[] = ['practice', 'water', 'label', 'law'];
const lasting: readonly (Lifts | null)[] = [null, 'hours', 'days', 'person', 'season'];

/**
 * Reports each rule that adds nothing to another one: RULE_SAID_TWICE where both have the same effect and come out alike with
 * every value of their facts, RULE_HIDDEN where the other is met whenever it is and weighs at least as much in effect,
 * authority and what lifts it. A rule that another one refers to is a part of it and is left out. Rules that read no fact in
 * common are not compared, nor is one that is too big by itself, which is said elsewhere.
 */
export function findNested(
  rules: readonly CompiledRule[],
  definitionOf: DefinitionOf,
  places: PlaceOf,
  report: Report,
): void {
  const small = rules.filter((rule) => cellSpaceOf([rule], definitionOf).size <= mostCells);
  small.forEach((one, index) => {
    for (const other of small.slice(index + 1)) comparePair(one, other, definitionOf, places, report);
  });
}

function comparePair(
  one: CompiledRule,
  other: CompiledRule,
  definitionOf: DefinitionOf,
  places: PlaceOf,
  report: Report,
): void {
  if (!one.facts.some((fact) => other.facts.includes(fact))) return;
  const may = { oneInOther: weighs(other.rule, one.rule), otherInOne: weighs(one.rule, other.rule) };
  const alike = one.rule.effect === other.rule.effect;
  if (!may.oneInOther && !may.otherInOne && !alike) return;
  const space = cellSpaceOf([one, other], definitionOf);
  const both = [one.rule.id, other.rule.id] as const;
  if (space.size > mostCells) {
    const expected = `at most ${mostCells} combinations of values with ${both[0]}`;
    const came = `${Number.isFinite(space.size) ? space.size : 'far more'}: the two are not compared`;
    report('RULE_TOO_BIG', places.rule(both[1], 'when'), { expected, came, rule: both[1] }, 'warning');
    return;
  }
  const met = (rule: CompiledRule, facts: ResolvedFacts) => outcomeOf(rule.condition, facts) === 'met';
  if (!someCell(space, (facts) => met(one, facts)) || !someCell(space, (facts) => met(other, facts))) return;
  const oneIsIn = !someCell(space, (facts) => met(one, facts) && !met(other, facts));
  const otherIsIn = !someCell(space, (facts) => met(other, facts) && !met(one, facts));
  if (oneIsIn && otherIsIn && alike) {
    const came = `${both[0]} and ${both[1]} come out alike with every value`;
    report(
      'RULE_SAID_TWICE',
      places.rule(both[1], 'when'),
      { expected: 'each rule once', came, rule: both[1] },
      'warning',
    );
  } else if (oneIsIn && may.oneInOther && !refersTo(other, both[0])) {
    hidden(both[0], both[1], places, report);
  } else if (otherIsIn && may.otherInOne && !refersTo(one, both[1])) {
    hidden(both[1], both[0], places, report);
  }
}

function hidden(rule: string, by: string, places: PlaceOf, report: Report): void {
  const expected = 'a value with which only this rule is met';
  const came = `${by} is met whenever ${rule} is, and weighs as much or more`;
  report('RULE_HIDDEN', places.rule(rule, 'when'), { expected, came, rule }, 'warning');
}

/** True where a rule weighs at least as much as another: in effect, in authority and in how long it holds. */
function weighs(rule: Rule, other: Rule): boolean {
  return (
    effects.indexOf(rule.effect) >= effects.indexOf(other.effect) &&
    authorities.indexOf(rule.authority) >= authorities.indexOf(other.authority) &&
    lasting.indexOf(rule.lifts) >= lasting.indexOf(other.lifts)
  );
}

function refersTo({ condition }: CompiledRule, id: string): boolean {
  const walk = (part: CompiledRule['condition']): boolean => {
    if (part.kind === 'comparison') return false;
    if (part.kind === 'rule' && part.rule === id) return true;
    return 'member' in part ? walk(part.member) : part.members.some(walk);
  };
  return walk(condition);
}
