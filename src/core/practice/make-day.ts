import type { FactId } from '../facts/registry/index.ts';
import { openRules, usefulFacts } from '../verdict/useful.ts';
import { type AtLimit, changedDay, dayAtLimit } from './at-limit.ts';
import { dayOf } from './day-id.ts';
import { tryDay } from './judge-day.ts';
import { seeded } from './seeded.ts';
import type { Card, JudgedDay, NoDayReason, PracticeDay, PracticeWorld } from './types.ts';

/** A day, or why there is none. */
export type MadeDay = { readonly day: PracticeDay } | { readonly none: NoDayReason };

/** Most other rules, or facts, that are tried to make a day of several things. */
const mostTried = 12;

/**
 * A day of one kind for one rule, the same for the same seed: proved by judging it. Kind `weather` is never made; such days come
 * from a file.
 */
export function makeDay(world: PracticeWorld, { rule, kind }: Card, seed: string): MadeDay {
  const { pack, plain } = world;
  const written = pack.rules.find(({ id }) => id === rule);
  if (plain === null || tryDay(plain, pack) === null) return { none: 'no-plain-day' };
  if (!written || kind === 'weather') return { none: 'not-reached' };
  if (kind === 'inside' || kind === 'outside') {
    const found = dayAtLimit(world, rule, kind, seed);
    return found ? finished(world, { rule, kind }, found.changed, found.judged, found) : { none: 'not-reached' };
  }
  if (written.effect === 'advise') return { none: 'only-advice' };
  const inside = dayAtLimit(world, rule, 'inside', seed);
  if (!inside) return { none: 'not-reached' };
  const make = { mixed, 'unknown-matters': unknownMatters, 'unknown-spared': unknownSpared }[kind];
  if (kind === 'unknown-matters' && factsOf(world, rule).every((fact) => world.definitionOf(fact).type === 'date')) {
    return { none: 'always-known' };
  }
  return make(world, rule, inside, seed) ?? { none: 'not-reached' };
}

function finished(
  world: PracticeWorld,
  card: Card,
  changed: Readonly<Record<string, unknown>>,
  judged: JudgedDay,
  near: Partial<Pick<AtLimit, 'near'>> = {},
): { readonly day: PracticeDay } {
  const facts = changedDay(world, changed)?.facts ?? {};
  const made = { ...card, facts, ...(near.near ? { near: near.near } : {}) };
  return { day: dayOf(made, judged, world.pack) };
}

/** Its rule is one of those that decide; one or two more stops or holds are met beside it, by facts of their own. */
function mixed(world: PracticeWorld, rule: string, inside: AtLimit, seed: string): MadeDay | null {
  const chance = seeded(`${seed} ${rule} mixed`);
  const more = 2 + chance.below(2);
  const others = world.pack.rules.filter(({ id, effect }) => id !== rule && effect !== 'advise').map(({ id }) => id);
  let best = { changed: inside.changed, judged: inside.judged };
  for (const other of chance.shuffled(others).slice(0, mostTried)) {
    const beside = dayAtLimit(world, other, 'inside', seed);
    if (!beside || Object.keys(beside.changed).some((fact) => fact in best.changed)) continue;
    const changed = { ...best.changed, ...beside.changed };
    const judged = judgeChanged(world, changed);
    if (!judged || ![rule, other].every((one) => judged.met.includes(one))) continue;
    if (judged.unknown.length > 0 || !decides(world, rule, judged)) continue;
    best = { changed, judged };
    if (judged.met.length >= more) break;
  }
  return best.judged.met.length > 1 && decides(world, rule, best.judged)
    ? finished(world, { rule, kind: 'mixed' }, best.changed, best.judged)
    : null;
}

/** One fact that its rule reads is not known, and all that is known leaves the answer open because of it. */
function unknownMatters(world: PracticeWorld, rule: string, inside: AtLimit, seed: string): MadeDay | null {
  const chance = seeded(`${seed} ${rule} unknown`);
  const read = factsOf(world, rule);
  const ways = [...chance.shuffled(read).map((fact) => [fact]), read];
  for (const base of [{}, inside.changed]) {
    for (const left of ways) {
      const changed = { ...base, ...Object.fromEntries(left.map((fact) => [fact, null])) };
      const judged = judgeChanged(world, changed);
      if (!judged || judged.met.length > 0 || !openRules(judged.trace).some((one) => one.rule === rule)) continue;
      return finished(world, { rule, kind: 'unknown-matters' }, changed, judged);
    }
  }
  return null;
}

/** Its rule is met; something else is not known that can change nothing then. */
function unknownSpared(world: PracticeWorld, rule: string, inside: AtLimit, seed: string): MadeDay | null {
  const chance = seeded(`${seed} ${rule} spared`);
  const own = factsOf(world, rule);
  const given = Object.keys(world.plain?.facts ?? {}).filter(
    (fact) => fact !== 'date' && !own.some((one) => one === fact),
  );
  for (const fact of chance.shuffled(given)) {
    const changed = { ...inside.changed, [fact]: null };
    const judged = judgeChanged(world, changed);
    if (!judged || !decides(world, rule, judged) || judged.verdict !== inside.judged.verdict) continue;
    if (judged.unknown.length === 0 || usefulFacts(judged.trace).size > 0) continue;
    return finished(world, { rule, kind: 'unknown-spared' }, changed, judged);
  }
  return null;
}

function judgeChanged(world: PracticeWorld, changed: Readonly<Record<string, unknown>>): JudgedDay | null {
  const day = changedDay(world, changed);
  return day && tryDay(day, world.pack);
}

/** True where a rule that is met has the effect of the verdict: a hold beside a stop decides nothing. */
function decides({ pack }: PracticeWorld, rule: string, { met }: JudgedDay): boolean {
  const effectOf = (id: string | undefined) => pack.rules.find((one) => one.id === id)?.effect;
  return met.includes(rule) && effectOf(rule) === effectOf(met[0]);
}

/** The facts that a rule reads. */
function factsOf({ pack, plain }: PracticeWorld, rule: string): readonly FactId[] {
  const judged = plain && tryDay(plain, pack);
  return judged?.trace.find((one) => one.rule === rule)?.facts ?? [];
}
