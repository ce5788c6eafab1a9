import type { FactId } from '../facts/registry/index.ts';
import type { Resolved } from '../facts/types.ts';
import type { ReplayDay } from '../outlook/replay/index.ts';
import type { DefinitionOf } from '../rules/mutate/change-conditions.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { RuleTrace } from '../rules/trace-types.ts';
import { roundTo } from '../units/round.ts';
import { comparisonsIn } from '../words/margins.ts';
import { dayOf } from './day-id.ts';
import { decidingOf } from './deciding.ts';
import { tryDay } from './judge-day.ts';
import type { JudgedDay, PracticeDay } from './types.ts';

/** A day nearer to a limit than so many shown steps of its fact teaches that limit. */
const nearSteps = 10;

interface Candidate {
  readonly day: PracticeDay;
  /** What it teaches: a change of the verdict counts most, then nearness to a limit. */
  readonly worth: number;
}

/**
 * The days of a replayed season that teach most, at most `most`, oldest first: those on which the verdict changes and those near a
 * limit, spread over the rules that decide them. A day whose rounded facts would come out otherwise is left out.
 */
export function daysOfWeather(
  replayed: readonly ReplayDay[],
  { pack, definitionOf }: { readonly pack: Pack; readonly definitionOf: DefinitionOf },
  most: number,
): PracticeDay[] {
  const found = replayed.flatMap((one, index): Candidate[] => {
    const facts = givensOf(one, definitionOf);
    const judged = tryDay({ facts }, pack);
    if (!judged || judged.verdict !== one.verdict) return [];
    const before = replayed[index - 1];
    const changes = before !== undefined && before.verdict !== one.verdict;
    const near = nearestRule(judged, one.assumed, definitionOf);
    const leading = judged.verdict === 'spray-today' ? near?.rule : decidingOf(judged).rules[0];
    const rule = leading ?? near?.rule ?? judged.trace[0]?.rule ?? '';
    const worth = (changes ? 2 : 0) + (near === null ? 0 : 1 - near.steps / nearSteps);
    return [{ day: dayOf({ kind: 'weather', rule, facts }, judged, pack), worth }];
  });
  const rules = [...new Set(found.map(({ day }) => day.rule))];
  const ofRule = (rule: string) => found.filter(({ day }) => day.rule === rule);
  const queues = rules.map((rule) => ofRule(rule).toSorted((a, b) => b.worth - a.worth));
  const inTurn = queues
    .flatMap((queue) => queue.map(({ day }, round) => ({ day, round })))
    .toSorted((a, b) => a.round - b.round);
  return inTurn
    .slice(0, most)
    .map(({ day }) => day)
    .sort((a, b) => (a.at < b.at ? -1 : 1));
}

/** The stop or hold whose number lies nearest to a limit, in shown steps of its fact, what was only held left out; null where none is near. */
function nearestRule(
  judged: JudgedDay,
  assumed: ReplayDay['assumed'],
  definitionOf: DefinitionOf,
): { readonly rule: string; readonly steps: number } | null {
  const near = judged.trace
    .filter(({ effect }) => effect !== 'advise')
    .flatMap((trace: RuleTrace) =>
      comparisonsIn(trace.condition).flatMap(({ fact, margin }) => {
        if (margin === null || typeof margin.limit !== 'number' || assumed.includes(fact)) return [];
        const { precision = 1, shownDecimals = 0 } = definitionOf(fact);
        const steps = Math.abs(margin.margin) / Math.max(precision, Number(`1e-${shownDecimals}`));
        return steps <= nearSteps ? [{ rule: trace.rule, steps }] : [];
      }),
    );
  return near.toSorted((a, b) => a.steps - b.steps)[0] ?? null;
}

/** The facts of a replayed day as in a facts file: numbers kept to their precision; what is not known left out. */
function givensOf({ facts, iso }: ReplayDay, definitionOf: DefinitionOf): Readonly<Record<string, unknown>> {
  const given = Object.entries(facts).flatMap(([id, resolved]) => {
    const value = resolved?.known ? givenOf(id as FactId, resolved, definitionOf) : undefined;
    return value === undefined ? [] : [[id, value] as const];
  });
  return { ...Object.fromEntries(given), date: iso };
}

function givenOf(id: FactId, resolved: Resolved & { readonly known: true }, definitionOf: DefinitionOf): unknown {
  if (resolved.type === 'date') return resolved.iso;
  if (resolved.type === 'choice') return resolved.possible.length === 1 ? resolved.possible[0] : resolved.possible;
  if (resolved.type === 'signs') {
    const { present, possible } = resolved;
    return possible.length === present.length ? present : { value: present, possible };
  }
  const { precision = 1 } = definitionOf(id);
  const [value, low, high] = [resolved.value, resolved.low, resolved.high].map((one) => roundTo(one, precision));
  return low === value && high === value ? value : { value, low, high };
}
