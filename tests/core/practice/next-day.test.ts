import { describe, expect, test } from 'vitest';
import { cardsOf, nextDay } from '../../../src/core/practice/next-day.ts';
import type { Review } from '../../../src/core/practice/schedule.ts';
import type { PracticeDay } from '../../../src/core/practice/types.ts';
import { smallWorld } from './small-world.ts';
import { world } from './world.ts';

const start = 1_795_000_000;
const dayNamed = (id: string, rule: string): PracticeDay => {
  return { id, rule, kind: 'weather', facts: {}, at: '2026-11-20T12:00:00Z' };
};
/** Days of a file: two of one rule, one of another. */
const days = [dayNamed('w1', 'too-windy'), dayNamed('w2', 'too-windy'), dayNamed('g1', 'gusty')];
const seen = (day: string, rule: string, at: number, result: Review['result']): Review => {
  return { rule, kind: 'weather', at, day, result, verdict: 'wait', reason: null };
};
const next = (reviews: readonly Review[], now: number, of = days) =>
  nextDay({ world, days: of, reviews, now, seed: 's' })?.id ?? null;

describe('the next day of a file', () => {
  test('is the first while none was seen, and none where the file has none', () => {
    expect(next([], start)).toBe('w1');
    expect(next([], start, [])).toBeNull();
  });

  // A mistake is due after 60 s, a right answer after 600 s (FSRS with its published defaults, as ts-fsrs documents them).
  test('is what is due at this very second, before what is new', () => {
    const reviews = [seen('w1', 'too-windy', start, 'wrong')];
    expect(next(reviews, start + 59)).toBe('g1');
    expect(next(reviews, start + 60)).toBe('w2');
  });

  test('is, of two that are due, the one due longer', () => {
    const wind = seen('w1', 'too-windy', start + 5, 'wrong');
    const gust = seen('g1', 'gusty', start, 'wrong');
    expect(next([wind, gust], start + 1000)).toBe('g1');
    expect(next([{ ...wind, at: start - 5 }, gust], start + 1000)).toBe('w2');
  });

  test('is, where nothing is due or new, the one due soonest', () => {
    expect(next([seen('w1', 'too-windy', start, 'right'), seen('g1', 'gusty', start, 'wrong')], start + 1)).toBe('g1');
    expect(next([seen('w1', 'too-windy', start, 'wrong'), seen('g1', 'gusty', start, 'right')], start + 1)).toBe('w2');
  });

  test('is, of several of one kind, the one seen least', () => {
    const twice = [seen('w2', 'too-windy', start, 'wrong'), seen('w2', 'too-windy', start + 60, 'wrong')];
    expect(next([...twice, seen('w1', 'too-windy', start + 120, 'wrong')], start + 9000)).toBe('w1');
  });
});

test('days made from a pack: those at a limit come before all others, each rule and kind once', () => {
  const cards = cardsOf(world, 's');
  const atLimit = cards.map(({ kind }) => kind === 'inside' || kind === 'outside');
  expect(atLimit.lastIndexOf(true)).toBe(2 * world.pack.rules.length - 1);
  expect(atLimit.indexOf(false)).toBe(2 * world.pack.rules.length);
  expect(new Set(cards.map(({ rule, kind }) => `${rule} ${kind}`)).size).toBe(5 * world.pack.rules.length);
  expect(cardsOf(world, 's')).toEqual(cards);
  expect(cardsOf(world, 't')).not.toEqual(cards);
});

test('days made from a pack: a kind that a rule has no day of is passed over for one that there is', () => {
  const small = smallWorld();
  const atLimit = cardsOf(small, 's').filter(({ kind }) => kind === 'inside' || kind === 'outside');
  const reviews = atLimit.map((card): Review => {
    return { ...card, at: start, day: 'd', result: 'right', verdict: 'wait', reason: null };
  });
  for (const seed of 'abcdefgh') {
    const day = nextDay({ world: small, days: null, reviews, now: start + 1, seed });
    expect(['mixed', 'unknown-matters', 'unknown-spared']).toContain(day?.kind);
    expect(day?.rule).not.toBe('late');
  }
  expect(nextDay({ world: { ...small, plain: null }, days: null, reviews, now: start, seed: 's' })).toBeNull();
});
