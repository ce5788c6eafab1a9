import { isLoamwardError } from '../../errors/coded-error.ts';
import { compileRules } from '../../rules/compile.ts';
import type { DefinitionOf } from '../../rules/mutate/change-conditions.ts';
import { type Assignment, assignmentsOf, ruleCells, tellApart } from '../../rules/mutate/tell-apart.ts';
import { applyChange, type Change, type RuleSet } from '../../rules/mutate/types.ts';
import type { Pack, PackCase } from '../../rules/pack-types.ts';
import { fullest, plainDayOf } from '../../rules/plain-day.ts';
import { evaluateReference } from '../../rules/reference.ts';
import { type ResolvedCase, resolveCase } from '../../rules/resolve-case.ts';
import type { Trace } from '../../rules/trace-types.ts';
import type { CompiledRule } from '../../rules/types.ts';
import { verdictWord } from '../verdict-of.ts';
import { caseHolds } from './judge-case.ts';
import { affectedBy } from './trace-cases.ts';

/** A change that no case notices, and what would. */
export interface Survivor {
  readonly change: Change;
  /** A case that would notice it, ready to be added, in the file of the case that its other facts come from; null where none was found. */
  readonly kill: PackCase | null;
  /** The facts of that case that matter, those that the changed rule reads; null where one is not known. */
  readonly facts: PackCase['facts'];
  /** Name of the case that the other facts come from. */
  readonly base: string;
}

/** What a case that would notice a change is made from. */
export interface KillWorld {
  readonly pack: Pack;
  readonly cases: readonly ResolvedCase[];
  readonly definitionOf: DefinitionOf;
}

/** Most ways to tell a change apart that are tried on a plain day. */
const mostTried = 50;

/** Most assignments kept to pick the plainest from. */
const mostSeen = 20_000;

/**
 * A case that comes out otherwise after a change: a day of the pack's cases on which all is well, with the facts put over it that
 * tell the two apart; null where the facts that were tried do not, and `equal` where no facts can.
 */
export function killOf(change: Change, { pack, cases, definitionOf }: KillWorld): 'equal' | Omit<Survivor, 'change'> {
  const base = plainDay(pack, cases);
  const { ways, whole } = waysToTell(change, base.day, pack, definitionOf);
  const [first] = ways;
  if (!first) return whole ? 'equal' : { kill: null, facts: {}, base: base.one.name };
  for (const [rule, assignment] of ways) {
    const kill = caseOf(change, rule, assignment, base.one, pack);
    if (kill) return { kill, facts: givensOf(assignment), base: base.one.name };
  }
  return { kill: null, facts: givensOf(first[1]), base: base.one.name };
}

/** An assignment of the facts that a rule reads on which a change shows, with the rule's id. */
type Way = readonly [rule: string, assignment: Assignment];

/** Ways in which a change shows in the rules that it affects, plainest first for each rule. */
function waysToTell(
  change: Change,
  day: string,
  pack: Pack,
  definitionOf: DefinitionOf,
): { readonly ways: readonly Way[]; readonly whole: boolean } {
  const year = Number(day.slice(0, 4));
  const changed = new Map(compileRules(applyChange(pack, change), day).rules.map((one) => [one.rule.id, one]));
  const affected = affectedBy(pack, change);
  const ways: Way[] = [];
  let whole = true;
  for (const original of compileRules(pack, day).rules) {
    const { id } = original.rule;
    const after = changed.get(id);
    if (!affected.has(id) || !after) continue;
    if (change.kind !== 'effect' && change.kind !== 'lifts') {
      const told = tellApart(original, after, definitionOf, year, mostTried);
      ways.push(...told.ways.map((each): Way => [id, each]));
      whole &&= told.whole;
    } else if (id === change.before.id) {
      const shown = showing(change.kind, original, definitionOf, year);
      ways.push(...shown.map((each): Way => [id, each]));
    }
  }
  return { ways, whole };
}

/** Where a changed effect shows: when the rule is met, or unknown; what lifts it shows only when it is met. */
function showing(
  kind: 'effect' | 'lifts',
  rule: CompiledRule,
  definitionOf: DefinitionOf,
  year: number,
): readonly Assignment[] {
  const shown: Assignment[] = [];
  for (const one of assignmentsOf(rule.condition, ruleCells(rule, definitionOf, year))) {
    if (one.outcome === 'met' || (kind === 'effect' && one.outcome === 'unknown')) shown.push(one);
    if (shown.length === mostSeen) break;
  }
  return shown.sort((a, b) => a.cost - b.cost).slice(0, mostTried);
}

function caseOf(change: Change, rule: string, assignment: Assignment, base: PackCase, pack: Pack): PackCase | null {
  const givens = givensOf(assignment);
  const { at, ...moved } = base;
  const facts = Object.fromEntries(Object.entries({ ...base.facts, ...givens }).filter(([, value]) => value !== null));
  const moment = at === undefined || 'date' in givens ? {} : { at };
  const name = `${rule}: ${Object.entries(givens)
    .map(([fact, given]) => `${fact} ${given === null ? '?' : JSON.stringify(given)}`)
    .join(', ')}`;
  try {
    const resolved = resolveCase({ ...moved, ...moment, name, facts }, pack);
    const traceOf = (set: RuleSet) => evaluateReference(compileRules(set, resolved.day), resolved.facts);
    const one = { ...resolved.one, expect: expectationOf(traceOf(pack), rule, change) };
    return caseHolds(traceOf(applyChange(pack, change)), one) ? null : one;
  } catch (error) {
    if (isLoamwardError(error)) return null;
    throw error;
  }
}

function expectationOf(trace: Trace, id: string, change: Change): PackCase['expect'] {
  const rule = trace.find((one) => one.rule === id);
  const met = trace.filter(
    ({ outcome, effect, rule: name }) => outcome === 'met' && (effect !== 'advise' || name === id),
  );
  return {
    verdict: verdictWord(trace),
    ...(met.length === 0 ? {} : { met: met.map((one) => one.rule) }),
    ...(rule?.outcome === 'not-met' ? { notMet: [id] } : {}),
    ...(rule?.outcome === 'unknown' ? { unknown: [id] } : {}),
    ...(change.kind === 'lifts' && rule?.lifts ? { lifts: { [id]: rule.lifts } } : {}),
  };
}

function givensOf({ cells }: Assignment): PackCase['facts'] {
  return Object.fromEntries(Object.entries(cells).map(([fact, cell]) => [fact, cell?.given ?? null]));
}

/** The case with the most facts among those on which all is well, else among all; a day without facts where there is no case. */
function plainDay({ parameters }: Pack, cases: readonly ResolvedCase[]): Pick<ResolvedCase, 'one' | 'day'> {
  const found = plainDayOf(cases.map(({ one }) => one)) ?? fullest(cases.map(({ one }) => one));
  const best = cases.find(({ one }) => one === found);
  if (best) return best;
  const day =
    parameters
      .map(({ validFrom }) => validFrom)
      .toSorted()
      .at(-1) ?? '2026-01-01';
  return { day, one: { file: '', name: '', facts: { date: day }, expect: { verdict: 'wait' } } };
}
