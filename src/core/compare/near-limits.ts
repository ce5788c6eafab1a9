import { definitionIn, type FactId } from '../facts/registry/index.ts';
import { cellsOf } from '../rules/mutate/cells.ts';
import { comparisonsIn } from '../rules/reads.ts';
import type { CompiledComparison } from '../rules/types.ts';
import { baseOf, type Moved, makeWell } from './base-day.ts';
import { decidersOf, judgePair, type RulePair, wayOf } from './judge-pair.ts';
import { pickPlaces } from './pick-places.ts';
import { changedOf } from './tally.ts';
import type { GivenFacts, Sides, Transition, VerdictPair } from './types.ts';

/** One kind of change near the limits: how often one fact alone brings it about, how often a pair, and the plainest example. */
export interface LimitTransition extends Transition {
  /** Of `count`, those where one fact alone was moved. */
  readonly alone: number;
  readonly example: {
    /** The facts moved, as in a facts file; null where not known. All else is as on the base day. */
    readonly facts: GivenFacts;
    /** Rules by which the verdict changed. */
    readonly by: readonly string[];
  };
}

/** Both rule sets on facts made at the limits of both. */
export interface LimitsCompared {
  /** Case from which all other facts come, and what was moved on it so that both say spray today; null where neither pack has one. */
  readonly base: {
    readonly name: string;
    readonly file: string;
    readonly day: string;
    readonly moved: GivenFacts;
  } | null;
  /** Days judged with one fact moved, and with two. */
  readonly alone: number;
  readonly pairs: number;
  readonly changed: number;
  /** Verdicts that change, the plainest example of each kind. */
  readonly transitions: readonly LimitTransition[];
}

/** How the pairs are sampled, and who hears how far it is. */
export interface LimitOptions {
  readonly seed: number;
  /** Most pairs of facts that are judged. */
  readonly pairs: number;
  /** Called now and then with the days judged and all that there are. */
  readonly onProgress?: (done: number, all: number) => void;
}

/** Between two reports of how far it is. */
const progressEvery = 500;

/**
 * Judges facts near every limit of both rule sets, bands across it and not known: each fact alone moved on a day on which all is
 * well, then a sample of pairs. One value stands for all that no comparison of either can tell apart.
 */
export function compareNearLimits(sides: Sides, { seed, pairs, onProgress }: LimitOptions): LimitsCompared {
  const base = baseOf(sides);
  if (base === null) return { base: null, alone: 0, pairs: 0, changed: 0, transitions: [] };
  const { rules, day, one } = base;
  const moves = movesOf(rules, sides, Number(day.slice(0, 4)));
  const { facts, moved: plainly } = makeWell(rules, base.facts, moves);
  const together = pickPlaces(moves.length, pairs, seed, (at, other) => moves[at]?.fact !== moves[other]?.fact);
  const found = new Map<string, LimitTransition & { readonly cost: number }>();
  const all = moves.length + together.length;
  let done = 0;
  const judge = (moved: readonly Moved[]) => {
    const judged = judgePair(rules, {
      ...facts,
      ...Object.fromEntries(moved.map(({ fact, cell }) => [fact, cell.resolved])),
    });
    const verdicts = { a: judged.a.verdict, b: judged.b.verdict };
    if (verdicts.a !== verdicts.b) note(found, verdicts, moved, () => decidersOf(rules, judged));
    done += 1;
    if (done % progressEvery === 0) onProgress?.(done, all);
  };
  for (const each of moves) judge([each]);
  for (const [at, other] of together) judge([moves[at]!, moves[other]!]);
  const transitions = [...found.values()].map(({ cost: _cost, ...rest }) => rest);
  const { name, file } = one;
  const { changed } = changedOf(transitions);
  return {
    base: { name, file, day, moved: plainly },
    alone: moves.length,
    pairs: together.length,
    changed,
    transitions,
  };
}

function note(
  found: Map<string, LimitTransition & { readonly cost: number }>,
  verdicts: VerdictPair,
  moved: readonly Moved[],
  by: () => readonly string[],
): void {
  const key = `${verdicts.a} ${verdicts.b}`;
  const was = found.get(key);
  const alone = moved.length === 1 ? 1 : 0;
  const cost = moved.reduce((sum, { cell }) => sum + 10 + cell.cost, 0);
  const plainer = !was || cost < was.cost;
  const facts = Object.fromEntries(moved.map(({ fact, cell }) => [fact, cell.given]));
  found.set(key, {
    ...verdicts,
    way: wayOf(verdicts),
    count: (was?.count ?? 0) + 1,
    alone: (was?.alone ?? 0) + alone,
    cost: plainer ? cost : was.cost,
    example: plainer ? { facts, by: by() } : was.example,
  });
}

/** Every fact that either rule set reads, with each of its cells. */
function movesOf({ a, b }: RulePair, sides: Sides, year: number): Moved[] {
  const registry = { ...sides.b.pack.facts, ...sides.a.pack.facts };
  const byFact = new Map<FactId, Map<string, CompiledComparison>>();
  for (const comparison of [...a.rules, ...b.rules].flatMap(({ condition }) => comparisonsIn(condition))) {
    const { fact, op, limit } = comparison;
    const known = byFact.get(fact) ?? new Map<string, CompiledComparison>();
    byFact.set(fact, known.set(JSON.stringify([op, limit]), comparison));
  }
  return [...byFact].flatMap(([fact, comparisons]) =>
    cellsOf([...comparisons.values()], definitionIn(registry, fact), year).map((cell) => ({ fact, cell })),
  );
}
