import { describe, expect, test } from 'vitest';
import { changedDay, dayAtLimit } from '../../../src/core/practice/at-limit.ts';
import { judgeDay } from '../../../src/core/practice/judge-day.ts';
import { makeDay } from '../../../src/core/practice/make-day.ts';
import type { DayKind, PracticeDay } from '../../../src/core/practice/types.ts';
import { good } from '../compare/small-pack.ts';
import { smallAt as at, smallWorld as world } from './small-world.ts';

function made(rule: string, kind: DayKind, seed = 'a', from = world()): PracticeDay | string {
  const found = makeDay(from, { rule, kind }, seed);
  return 'day' in found ? found.day : found.none;
}

describe('the plain day, changed', () => {
  test('leaves out what is null, and keeps its moment unless a date is put', () => {
    expect(changedDay(world(), { 'wind.boomKmh': 12, 'soil.feel': null, 'soil.surface': undefined })).toEqual({
      facts: {
        'field.country': 'GB-ENG',
        'wind.boomKmh': 12,
        'soil.fieldCapacityPercent': 90,
        'soil.temperature30cmC': 8,
      },
      at,
    });
    expect(changedDay(world(), { date: '2026-07-03' })).toMatchObject({ at: '2026-07-03T11:00:00Z' });
    expect(changedDay({ ...world(), plain: { facts: {} } }, { 'wind.boomKmh': 1 })).toEqual({
      facts: { 'wind.boomKmh': 1 },
    });
    expect(changedDay({ ...world(), plain: null }, {})).toEqual({ facts: {} });
  });

  test('is none where what is put cannot be true together', () => {
    expect(changedDay(world(), { 'wind.boomKmh': 9, 'wind.gustKmh': 5 })).toBeNull();
  });
});

describe('a day made for a rule of the small pack', () => {
  const seeds = 'abcdefghijklmnopqrst'.split('');
  const values = (kind: 'inside' | 'outside', rule: string, fact: string) => {
    const all = seeds.map((seed) => dayAtLimit(world(), rule, kind, seed)?.changed[fact]);
    return [...new Set(all)].toSorted((a, b) => Number(a) - Number(b));
  };

  // The limit is 9.6 km/h, wind is shown in steps of 0.1: three steps on each side, the limit itself not above it.
  test('just inside and just outside takes each step next to the limit', () => {
    expect(values('inside', 'too-windy', 'wind.boomKmh')).toEqual([9.7, 9.8, 9.9]);
    expect(values('outside', 'too-windy', 'wind.boomKmh')).toEqual([9.3, 9.4, 9.5, 9.6]);
    const day = made('too-windy', 'inside') as PracticeDay;
    expect(day.near).toEqual({ fact: 'wind.boomKmh', within: 0.3 });
    expect(day.facts).toEqual({ ...good, 'wind.boomKmh': day.facts['wind.boomKmh'] });
    expect([day.at, day.id.length]).toEqual([at, 16]);
  });

  test('of a date lies within days of it, at noon', () => {
    const inside = seeds.map((seed) => made('late', 'inside', seed) as PracticeDay);
    expect([...new Set(inside.map(({ facts }) => facts['date']))].toSorted()).toMatchInlineSnapshot(`
      [
        "2026-10-01",
        "2026-10-02",
        "2026-10-03",
      ]
    `);
    const outside = seeds.map((seed) => made('late', 'outside', seed) as PracticeDay);
    expect([...new Set(outside.map(({ facts }) => facts['date']))].toSorted()).toMatchInlineSnapshot(`
      [
        "2026-09-28",
        "2026-09-29",
        "2026-09-30",
      ]
    `);
    for (const { near, at: moment } of [...inside, ...outside]) {
      expect(near).toEqual({ fact: 'date', within: 3 });
      expect(moment).toMatch(/T1[12]:00:00Z$/);
    }
  });

  test('of a choice is near by that choice alone', () => {
    expect(values('inside', 'elsewhere', 'field.country')).toHaveLength(1);
    expect((made('elsewhere', 'inside') as PracticeDay).near).toEqual({ fact: 'field.country', within: null });
  });

  test('that asks for two things moves the other one too', () => {
    const day = made('warm-and-dry', 'inside') as PracticeDay;
    const judged = dayAtLimit(world(), 'warm-and-dry', 'inside', 'a')!.judged;
    expect(judged.met[0]).toBe('warm-and-dry');
    expect(Object.entries(day.facts).filter(([id, value]) => value !== good[id as 'soil.feel'])).not.toHaveLength(0);
  });

  test.each<[string, DayKind, string]>([
    ['no-such-rule', 'inside', 'not-reached'],
    ['too-windy', 'weather', 'not-reached'],
    ['late', 'mixed', 'only-advice'],
    ['late', 'unknown-matters', 'only-advice'],
    ['late', 'unknown-spared', 'only-advice'],
  ])('%s, %s: there is none, since %s', (rule, kind, why) => {
    expect(made(rule, kind)).toBe(why);
  });

  test('starts from a day on which all is well, and says where there is none', () => {
    expect(made('too-windy', 'inside', 'a', { ...world(), plain: null })).toBe('no-plain-day');
    expect(made('too-windy', 'inside', 'a', { ...world(), plain: { facts: { 'wind.boomKmh': 'much' }, at } })).toBe(
      'no-plain-day',
    );
  });

  test.each<DayKind>(['inside', 'mixed', 'unknown-matters', 'unknown-spared'])(
    'a rule that no facts meet has no day of the kind %s',
    (kind) => {
      const { pack, ...rest } = world();
      const windy = pack.rules.find(({ id }) => id === 'too-windy')!;
      const never = { ...windy, id: 'never', when: { all: [windy.when, { not: windy.when }] } };
      expect(made('never', kind, 'a', { ...rest, pack: { ...pack, rules: [...pack.rules, never] } })).toBe(
        'not-reached',
      );
    },
  );

  test('moves as few facts as it can, and brings along as few other rules', () => {
    for (const seed of seeds) {
      const found = dayAtLimit(world(), 'warm-and-dry', 'inside', seed)!;
      expect(Object.keys(found.changed).toSorted()).toEqual(['soil.surface', 'soil.temperature30cmC']);
      expect(found.judged.met).toEqual(['warm-and-dry']);
    }
  });

  test('together with others is decided by its rule and by others of the same weight, others by another seed', () => {
    const mixed = seeds.map((seed) => made('too-windy', 'mixed', seed) as PracticeDay);
    expect(new Set(mixed.map(({ id }) => id)).size).toBeGreaterThan(2);
    for (const { facts, near } of mixed) {
      expect(near).toBeUndefined();
      expect(judgeDay({ facts, at }, world().pack)?.met.toSorted()).toEqual(['too-dry', 'too-windy']);
    }
    const stops = seeds.map((seed) => made('elsewhere', 'mixed', seed) as PracticeDay);
    for (const { facts } of stops) {
      const judged = judgeDay({ facts, at }, world().pack)!;
      expect([judged.verdict, judged.met.includes('elsewhere'), judged.met.length > 1]).toEqual([
        'do-not-spray',
        true,
        true,
      ]);
    }
  });

  test('on which something is not known leaves its rule open because of that, or spares it', () => {
    for (const seed of seeds.slice(0, 8)) {
      const open = made('too-windy', 'unknown-matters', seed) as PracticeDay;
      expect(open.near).toBeUndefined();
      expect(Object.keys(good).filter((id) => !(id in open.facts))).toEqual(['wind.boomKmh']);
      expect(judgeDay({ facts: open.facts, at }, world().pack)).toMatchObject({
        verdict: 'wait',
        met: [],
        unknown: ['too-windy'],
      });
      const spared = made('elsewhere', 'unknown-spared', seed) as PracticeDay;
      const judged = judgeDay({ facts: spared.facts, at }, world().pack)!;
      expect([judged.verdict, judged.met, judged.unknown.length > 0]).toEqual(['do-not-spray', ['elsewhere'], true]);
      expect(Object.keys(good).filter((id) => !(id in spared.facts))).toHaveLength(1);
    }
  });
});
