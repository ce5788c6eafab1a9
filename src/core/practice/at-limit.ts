import { instantText } from '../dialogue/moment.ts';
import { compiledFor } from '../dialogue/standing.ts';
import { noonOf } from '../facts/local-day.ts';
import { hangTogether } from './hang-together.ts';
import { type DayFacts, tryDay } from './judge-day.ts';
import { type LimitPair, limitPairs } from './limit-pairs.ts';
import { seeded } from './seeded.ts';
import type { JudgedDay, Nearness, PracticeWorld } from './types.ts';

/** A day just inside or just outside the limit of a rule, with what was changed on the plain day for it. */
export interface AtLimit {
  readonly judged: JudgedDay;
  readonly changed: Readonly<Record<string, unknown>>;
  readonly near: Nearness;
}

/** Most ways of bringing a rule to its limit that are judged as whole days. */
const mostJudged = 24;

/**
 * The plain day with facts changed; what is null is left out. A day that the changes name has its noon as moment. Null where the
 * changes cannot be true together.
 */
export function changedDay(
  { pack, plain }: PracticeWorld,
  changed: Readonly<Record<string, unknown>>,
): DayFacts | null {
  const given = hangTogether({ ...plain?.facts, ...changed }, changed);
  if (given === null) return null;
  const facts = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== null && value !== undefined));
  const day = dateIn(changed);
  if (day !== null) return { facts, at: instantText(noonOf(day, pack.zone)) };
  return { facts, ...(plain?.at === undefined ? {} : { at: plain.at }) };
}

/**
 * A day on which the rule is just met (`inside`) or just not, all else being as plain as can be: of the ways to get there, one that
 * brings the fewest other rules along. Null where there is no way.
 */
export function dayAtLimit(
  world: PracticeWorld,
  rule: string,
  side: 'inside' | 'outside',
  seed: string,
): AtLimit | null {
  const chance = seeded(`${seed} ${rule} ${side}`);
  const pairs = pairsOf(world, rule);
  const wanted = side === 'inside' ? 'met' : 'not-met';
  const found = pairs.flatMap((pair) => {
    const values = chance.shuffled(side === 'inside' ? pair.met : pair.notMet);
    for (const value of values) {
      const one = judged(world, pair, value);
      if (one?.judged.trace.some((trace) => trace.rule === rule && trace.outcome === wanted)) return [one];
    }
    return [];
  });
  const besides = ({ judged: { met, unknown, advice } }: AtLimit) =>
    met.filter((one) => one !== rule).length * 2 +
    unknown.filter((one) => one !== rule).length * 2 +
    advice.filter((one) => one !== rule).length;
  const least = Math.min(...found.map(besides));
  const fewest = found.filter((one) => besides(one) === least);
  const size = Math.min(...fewest.map(({ changed }) => Object.keys(changed).length));
  const best = fewest.filter(({ changed }) => Object.keys(changed).length === size);
  return best[chance.below(Math.min(best.length, 3))] ?? null;
}

/** The pairs of each rule, found once for a world. */
const pairsFound = new WeakMap<PracticeWorld, Map<string, readonly LimitPair[]>>();

function pairsOf(world: PracticeWorld, rule: string): readonly LimitPair[] {
  const known = pairsFound.get(world) ?? new Map<string, readonly LimitPair[]>();
  pairsFound.set(world, known);
  const pairs = known.get(rule) ?? findPairs(world, rule);
  known.set(rule, pairs);
  return pairs;
}

function findPairs({ pack, plain: day, definitionOf }: PracticeWorld, rule: string): readonly LimitPair[] {
  const plain = day && tryDay(day, pack);
  const compiled = plain && compiledFor(pack, plain.at).rules.find((one) => one.rule.id === rule);
  if (!plain || !compiled) return [];
  const year = Number(instantText(plain.at).slice(0, 4));
  return limitPairs(compiled, plain.facts, definitionOf, year).slice(0, mostJudged);
}

function judged(world: PracticeWorld, { pivot, givens, within }: LimitPair, value: unknown): AtLimit | null {
  const changed = { ...givens, [pivot]: value };
  const day = changedDay(world, changed);
  const one = day && tryDay(day, world.pack);
  return one && { judged: one, changed, near: { fact: pivot, within } };
}

function dateIn(changed: Readonly<Record<string, unknown>>): string | null {
  const { date } = changed;
  return typeof date === 'string' ? date : null;
}
