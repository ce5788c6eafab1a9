import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compiledFor } from '../../../src/core/dialogue/standing.ts';
import { decidingOf } from '../../../src/core/practice/deciding.ts';
import { judgeDay } from '../../../src/core/practice/judge-day.ts';
import { makeDay } from '../../../src/core/practice/make-day.ts';
import { type DayKind, madeKinds, type PracticeDay } from '../../../src/core/practice/types.ts';
import { evaluateChecked } from '../../../src/core/rules/evaluate-checked.ts';
import { comparisonsIn } from '../../../src/core/rules/reads.ts';
import { openRules, usefulFacts } from '../../../src/core/verdict/useful.ts';
import { verdictWord } from '../../../src/core/verdict/verdict-of.ts';
import { world } from './world.ts';

const { pack } = world;
const ids = pack.rules.map(({ id }) => id);
const effectOf = (id: string) => pack.rules.find((one) => one.id === id)?.effect;
const outcomeOf = (day: PracticeDay, rule: string) => judge(day).trace.find((one) => one.rule === rule)?.outcome;
const judge = (day: PracticeDay) => judgeDay(day, pack)!;

/** What the evaluator must say of a day of each kind. */
const holds: Readonly<Record<Exclude<DayKind, 'weather'>, (day: PracticeDay) => void>> = {
  inside: (day) => expect(outcomeOf(day, day.rule)).toBe('met'),
  outside: (day) => expect(outcomeOf(day, day.rule)).toBe('not-met'),
  mixed: (day) => {
    const judged = judge(day);
    expect(judged.met.length).toBeGreaterThan(1);
    expect(judged.met).toContain(day.rule);
    expect(decidingOf(judged).rules).toContain(day.rule);
    expect(judged.verdict).toBe(judged.met.some((id) => effectOf(id) === 'stop') ? 'do-not-spray' : 'wait');
  },
  'unknown-matters': (day) => {
    const judged = judge(day);
    expect(judged.verdict).toBe('wait');
    expect(judged.met).toEqual([]);
    expect(openRules(judged.trace).map(({ rule }) => rule)).toContain(day.rule);
    expect(usefulFacts(judged.trace).size).toBeGreaterThan(0);
  },
  'unknown-spared': (day) => {
    const judged = judge(day);
    expect(decidingOf(judged).rules).toContain(day.rule);
    expect(judged.unknown.length).toBeGreaterThan(0);
    expect(usefulFacts(judged.trace).size).toBe(0);
  },
};

/** How far the deciding fact of a day is from the nearest limit that its rule reads it by; null for choices and signs. */
function distanceOf({ rule, facts, near, at }: PracticeDay): number | null {
  const compiled = compiledFor(pack, judge({ rule, facts, at } as PracticeDay).at).rules.find(
    (one) => one.rule.id === rule,
  )!;
  const value = facts[near!.fact];
  const distances = comparisonsIn(compiled.condition).flatMap(({ fact, limit }) => {
    if (fact !== near!.fact) return [];
    if (limit.kind === 'number' && typeof value === 'number') return [Math.abs(value - limit.value)];
    if (limit.kind !== 'month-day' || typeof value !== 'string') return [];
    const year = Number(value.slice(0, 4));
    const there = Date.UTC(year, Math.floor(limit.value / 100) - 1, limit.value % 100);
    return [Math.abs(Date.parse(`${value}T00:00:00Z`) - there) / 86_400_000];
  });
  return distances.length === 0 ? null : Math.min(...distances);
}

describe('practice days of the shipped pack', () => {
  test('are, whatever the seed, what their kind says, by the evaluator', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ids), fc.constantFrom(...madeKinds), fc.string(), (rule, kind, seed) => {
        const made = makeDay(world, { rule, kind }, seed);
        if ('day' in made) holds[kind](made.day);
        else expect(['only-advice', 'always-known']).toContain(made.none);
      }),
      { numRuns: 250 },
    );
  });

  test('just inside and just outside lie no further from the limit than they say', () => {
    fc.assert(
      fc.property(fc.constantFrom(...ids), fc.constantFrom('inside', 'outside'), fc.string(), (rule, kind, seed) => {
        const made = makeDay(world, { rule, kind }, seed);
        if (!('day' in made)) throw new Error(`${rule} has no day ${kind}`);
        const distance = distanceOf(made.day);
        const { within } = made.day.near!;
        if (distance === null) expect(within).toBeNull();
        else expect(distance).toBeLessThanOrEqual(within! + 1e-9);
      }),
      { numRuns: 150 },
    );
  });

  test.each(ids)('%s has a day just inside and one just outside; each other kind has one or says why not', (rule) => {
    const [inside, outside, ...rest] = madeKinds.map((kind) => makeDay(world, { rule, kind }, 'a'));
    expect(inside).toHaveProperty('day');
    expect(outside).toHaveProperty('day');
    const expected = effectOf(rule) === 'advise' ? 'only-advice' : 'always-known';
    for (const made of rest) if ('none' in made) expect(made.none).toBe(expected);
  });

  test('a day at a limit brings nothing else into the way where that can be', () => {
    const alone = ids.filter((rule) => {
      const made = makeDay(world, { rule, kind: 'inside' }, 'a');
      return 'day' in made && judge(made.day).met.every((id) => id === rule) && judge(made.day).unknown.length === 0;
    });
    expect(ids.filter((id) => !alone.includes(id))).toEqual(['rain-on-unfit-soil']);
  });

  test('both evaluators come to the same verdict', async () => {
    for (const [index, rule] of ids.entries()) {
      const made = makeDay(world, { rule, kind: madeKinds[index % madeKinds.length]! }, 'b');
      if (!('day' in made)) continue;
      const judged = judge(made.day);
      expect(verdictWord(await evaluateChecked(compiledFor(pack, judged.at), judged.facts))).toBe(judged.verdict);
    }
  });

  test('the same seed gives the same day with the same id, another seed other days', () => {
    const all = (seed: string) => ids.map((rule) => makeDay(world, { rule, kind: 'inside' }, seed));
    const [one, again, another] = ['a', 'a', 'b'].map(all);
    expect(one).toEqual(again);
    const idsOf = (made: typeof one = []) => made.map((each) => ('day' in each ? each.day.id : ''));
    const others = idsOf(another);
    expect(new Set(idsOf(one)).size).toBe(ids.length);
    expect(idsOf(one).filter((id) => others.includes(id)).length).toBeLessThan(ids.length - 5);
  });

  test('the wind in gusts is never below the wind, nor the rain of two days below that of their heaviest hour', () => {
    for (const rule of ids) {
      for (const kind of madeKinds) {
        const made = makeDay(world, { rule, kind }, 'c');
        if (!('day' in made)) continue;
        const { facts } = made.day;
        const number = (id: string) => (typeof facts[id] === 'number' ? facts[id] : Number.NaN);
        expect(number('wind.gustKmh') < number('wind.boomKmh')).toBe(false);
        expect(number('rain.next48hMm') < number('rain.next48hMaxMmPerH')).toBe(false);
      }
    }
  });

  test('a pack without a day on which all is well says so', () => {
    expect(makeDay({ ...world, plain: null }, { rule: 'too-windy', kind: 'inside' }, 'a')).toEqual({
      none: 'no-plain-day',
    });
  });
});
