import type { Standing } from '../../../src/core/dialogue/standing.ts';
import type { FactId } from '../../../src/core/facts/registry/index.ts';
import { type ResolvedFacts, resolvedFact } from '../../../src/core/facts/resolved.ts';
import type { Resolved } from '../../../src/core/facts/types.ts';
import type { Question } from '../../../src/core/rules/pack-types.ts';
import { evaluateReference } from '../../../src/core/rules/reference.ts';
import type { RuleTrace } from '../../../src/core/rules/trace-types.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { morning } from './talk.ts';

/**
 * Tried out by brute force, apart from the planner: is there a way to fill in what is not known such that two answers to this
 * question make an unknown rule that may be asked about come out differently?
 */
export function canMatter(question: Question, { trace, facts, compiled }: Standing, rest: boolean): boolean {
  if (question.form === 'place') return true;
  const open = new Set(rulesAskedAbout(trace, rest).map(({ rule }) => rule));
  return compiled.rules.some((rule) => {
    if (!open.has(rule.rule.id)) return false;
    const read = trace.find((one) => one.rule === rule.rule.id)?.facts ?? [];
    const asked = read.filter((fact) => question.facts.includes(fact));
    if (asked.length === 0) return false;
    const others = read.filter((fact) => !question.facts.includes(fact) && isOpen(resolvedFact(facts, fact)));
    const outcome = (filled: ResolvedFacts) => evaluateReference({ ...compiled, rules: [rule] }, filled)[0]?.outcome;
    return fillings(others, facts).some((filled) => {
      const ways = fillings(asked, filled);
      const first = outcome(ways[0] ?? filled);
      return ways.some((way) => outcome(way) !== first);
    });
  });
}

/** None past a stop; past a hold the stops of the season and the jobs for a person; all where the rest is checked. */
function rulesAskedAbout(trace: readonly RuleTrace[], rest: boolean): readonly RuleTrace[] {
  const blocking = trace.filter(({ effect }) => effect !== 'advise');
  const unknown = blocking.filter(({ outcome }) => outcome === 'unknown');
  const met = blocking.filter(({ outcome }) => outcome === 'met');
  if (rest || met.length === 0) return unknown;
  if (met.some(({ effect }) => effect === 'stop')) return [];
  return unknown.filter(({ effect, lifts }) => (effect === 'stop' && lifts === 'season') || lifts === 'person');
}

function isOpen(fact: Resolved): boolean {
  return (
    !fact.known ||
    (fact.type === 'number' && fact.low !== fact.high) ||
    (fact.type === 'signs' && fact.present.length < fact.possible.length)
  );
}

/** Every way to fill the facts named with values from the ends and middle of what can be. */
function fillings(names: readonly FactId[], facts: ResolvedFacts): ResolvedFacts[] {
  return names.reduce<ResolvedFacts[]>(
    (so, name) => so.flatMap((one) => valuesOf(name).map((value) => ({ ...one, [name]: value }))),
    [facts],
  );
}

function valuesOf(id: FactId): Resolved[] {
  const { type, choices = ['GB-ENG', 'FR'], range = [0, 1] } = factDefinition(id);
  const origin = { known: true, source: 'said', at: morning, goodUntil: null } as const;
  if (type === 'number') {
    const values = [range[0], 0, 9.5, 30, range[1]].filter((one) => one >= range[0] && one <= range[1]);
    return [...new Set(values)].map((value) => ({ ...origin, type, value, low: value, high: value }));
  }
  if (type === 'signs') {
    return [[], ...choices.map((sign) => [sign])].map((present) => ({ ...origin, type, present, possible: present }));
  }
  if (type === 'date') return [{ ...origin, type, iso: '2026-11-06' }];
  return choices.map((choice) => ({ ...origin, type: 'choice', possible: [choice] }));
}
