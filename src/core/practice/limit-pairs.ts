import { DateTime } from 'luxon';
import type { FactId } from '../facts/registry/index.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import type { FactDefinition } from '../facts/types.ts';
import type { Cell } from '../rules/mutate/cells.ts';
import type { DefinitionOf } from '../rules/mutate/change-conditions.ts';
import { assignmentsOf, type RuleCells, ruleCells } from '../rules/mutate/tell-apart.ts';
import { outcomeOf } from '../rules/outcome.ts';
import { comparisonsIn } from '../rules/reads.ts';
import type { CompiledCondition, CompiledRule } from '../rules/types.ts';
import { epochSeconds } from '../units/brands.ts';
import { roundTo } from '../units/round.ts';

/** Facts on which a rule is just met or just not: one fact, at its limit, decides. */
export interface LimitPair {
  readonly pivot: FactId;
  /** Values as in a facts file of every fact that the rule reads; null for one that is not known, absent for one left as it is. */
  readonly givens: Readonly<Record<string, unknown>>;
  /** Values of the pivot with which the rule is met, and with which it is not, all near its limit. */
  readonly met: readonly unknown[];
  readonly notMet: readonly unknown[];
  /** Most that the pivot is off the limit; null for choices and signs. */
  readonly within: number | null;
}

/** A number is put at most so many shown steps off its limit, a date so many days. */
const mostSteps = 3;

/** Most pairs that are looked at for one rule. */
const mostPairs = 400;

/**
 * Ways in which one fact alone decides a rule: numbers and dates first, those that leave most facts as they are on the plain day
 * first. Values that the rule cannot tell apart are not tried twice.
 */
export function limitPairs(
  rule: CompiledRule,
  plain: ResolvedFacts,
  definitionOf: DefinitionOf,
  year: number,
): readonly LimitPair[] {
  const cells = cellsFrom(rule, plain, definitionOf, year);
  const found: { readonly pair: LimitPair; readonly rank: number }[] = [];
  for (const { cells: chosen, outcome } of assignmentsOf(rule.condition, cells)) {
    if (outcome !== 'met') continue;
    for (const [pivot, others] of cells) {
      const pair = pairAt(rule, chosen, pivot, others, definitionOf);
      if (pair === null) continue;
      const changed = Object.keys(pair.givens).length;
      found.push({ pair, rank: changed * 2 + (pair.within === null ? 1 : 0) });
    }
    if (found.length >= mostPairs) break;
  }
  return found.sort((a, b) => a.rank - b.rank).map(({ pair }) => pair);
}

type Chosen = Readonly<Partial<Record<FactId, Cell>>>;

/**
 * The plainest cells of each fact, that of the plain day first. Of several ways to know the same thing any may stay unknown, so that
 * no two of them contradict each other.
 */
function cellsFrom(rule: CompiledRule, plain: ResolvedFacts, definitionOf: DefinitionOf, year: number): RuleCells {
  const ways = waysToKnow(rule.condition);
  return ruleCells(rule, definitionOf, year).map(([fact, cells]) => {
    const here = plain[fact];
    const kept: readonly Cell[] = here?.known ? [{ resolved: here, given: undefined, cost: 0 }] : [];
    return [fact, [...kept, ...cells.filter(({ cost, given }) => cost === 0 || (given === null && ways.has(fact)))]];
  });
}

/** Facts that stand in an eitherOf. */
function waysToKnow(condition: CompiledCondition, inside = false): ReadonlySet<FactId> {
  if (condition.kind === 'comparison') return new Set(inside ? [condition.fact] : []);
  if ('member' in condition) return waysToKnow(condition.member, inside);
  const either = inside || condition.kind === 'eitherOf';
  return new Set(condition.members.flatMap((member) => [...waysToKnow(member, either)]));
}

/** True where two ways to know the same thing, of which one is moved, are both known. */
function contradicts(condition: CompiledCondition, chosen: Chosen, pivot: FactId): boolean {
  if (condition.kind === 'comparison') return false;
  if ('member' in condition) return contradicts(condition.member, chosen, pivot);
  if (condition.kind !== 'eitherOf') return condition.members.some((member) => contradicts(member, chosen, pivot));
  const facts = new Set(comparisonsIn(condition).map(({ fact }) => fact));
  const moved = [...facts].some((fact) => fact === pivot || chosen[fact]?.given !== undefined);
  return moved && [...facts].filter((fact) => fact === pivot || chosen[fact]?.resolved.known).length > 1;
}

function pairAt(
  { condition }: CompiledRule,
  chosen: Chosen,
  pivot: FactId,
  cells: readonly Cell[],
  definitionOf: DefinitionOf,
): LimitPair | null {
  if (contradicts(condition, chosen, pivot)) return null;
  const definition = definitionOf(pivot);
  const limits = comparisonsIn(condition).flatMap(({ fact, limit }) => (fact === pivot ? [limit] : []));
  const others = Object.fromEntries(
    Object.entries(chosen).map(([fact, cell]) => [fact, (cell as Cell).resolved]),
  ) as ResolvedFacts;
  const isNumeric = limits.some(({ kind }) => kind === 'number');
  const isDate = limits.some(({ kind }) => kind === 'month-day');
  const values: readonly Cell[] = isNumeric
    ? limits.flatMap((limit) => (limit.kind === 'number' ? numbersNear(limit.value, definition) : []))
    : isDate
      ? daysNear(cells)
      : cells.filter(({ given }) => given !== undefined && given !== null);
  const by = (outcome: string) =>
    values
      .filter(({ resolved }) => outcomeOf(condition, { ...others, [pivot]: resolved }) === outcome)
      .map(({ given }) => given);
  const [met, notMet] = [by('met'), by('not-met')];
  if (met.length === 0 || notMet.length === 0) return null;
  const givens = Object.fromEntries(
    Object.entries(chosen).flatMap(([fact, cell]) =>
      fact === pivot || (cell as Cell).given === undefined ? [] : [[fact, (cell as Cell).given]],
    ),
  );
  const { precision = 1 } = definition;
  const within = isNumeric ? roundTo(mostSteps * stepOf(definition), precision) : isDate ? mostSteps : null;
  return { pivot, givens, met, notMet, within };
}

/** The step in which people read a number. */
function stepOf({ precision = 1, shownDecimals = 0 }: FactDefinition): number {
  return Math.max(precision, Number(`1e-${shownDecimals}`));
}

function numbersNear(limit: number, definition: FactDefinition): Cell[] {
  const { precision = 1, range } = definition;
  const [least, most] = range ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const offs = Array.from({ length: 2 * mostSteps + 1 }, (_, index) => index - mostSteps);
  return offs
    .map((off) => roundTo(limit + off * stepOf(definition), precision))
    .filter((value) => value >= least && value <= most)
    .map((value) => ({
      resolved: { ...origin, type: 'number', value, low: value, high: value },
      given: value,
      cost: 0,
    }));
}

function daysNear(cells: readonly Cell[]): Cell[] {
  const days = cells.flatMap(({ given }) => (typeof given === 'string' ? [given] : []));
  const offs = [-(mostSteps - 1), 0, mostSteps - 1];
  const all = days.flatMap((day) =>
    offs.map((days) => DateTime.fromISO(day, { zone: 'utc' }).plus({ days }).toISODate()),
  );
  return [...new Set(all)].flatMap((iso) =>
    iso === null ? [] : [{ resolved: { ...origin, type: 'date' as const, iso }, given: iso, cost: 0 }],
  );
}

const origin = { known: true, source: 'said', at: epochSeconds(0), goodUntil: null } as const;
