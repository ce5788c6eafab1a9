import { describe, expect, test } from 'vitest';
import { nextDay } from '../../../src/core/practice/next-day.ts';
import { progressOf, type Review, standingOfCards } from '../../../src/core/practice/schedule.ts';
import { world } from './world.ts';

const start = 1_795_000_000;
const review = (at: number, result: Review['result'], rule = 'too-windy'): Review => ({
  rule,
  kind: 'inside',
  at,
  day: 'd',
  result,
  verdict: 'wait',
  reason: null,
});
const dueAfter = (...reviews: readonly Review[]) => standingOfCards(reviews).get('too-windy inside')!.due;

describe('the schedule', () => {
  // FSRS with its published defaults (learning steps of 1 and 10 minutes, hard between them), as ts-fsrs documents them.
  test('brings a first mistake back in a minute, a wrong reason in six, a right answer in ten', () => {
    expect(dueAfter(review(start, 'wrong')) - start).toBe(60);
    expect(dueAfter(review(start, 'reason-wrong')) - start).toBe(360);
    expect(dueAfter(review(start, 'right')) - start).toBe(600);
  });

  test('goes from minutes to days for what is right again, and back to minutes after a mistake', () => {
    const twice = [review(start, 'right'), review(start + 600, 'right')];
    const due = dueAfter(...twice);
    expect(due - start).toBeGreaterThan(86_400);
    const later = dueAfter(...twice, review(due, 'right'));
    const mistaken = dueAfter(...twice, review(due, 'wrong'));
    expect(later - due).toBeGreaterThan(due - start);
    expect(mistaken - due).toBeLessThan(86_400);
  });

  test('is the same from the same rows, in whatever order they are read', () => {
    const rows = [review(start, 'wrong'), review(start + 90, 'right'), review(start + 900, 'right')];
    expect(standingOfCards(rows.toReversed())).toEqual(standingOfCards(rows));
  });

  test('a day got wrong comes back before a day got right', () => {
    let reviews: readonly Review[] = [];
    const at = (now: number) => nextDay({ world, days: null, reviews, now, seed: 's' })!;
    const first = at(start);
    reviews = [{ ...review(start, 'wrong', first.rule), kind: first.kind }];
    const second = at(start + 1);
    expect([second.rule, second.kind]).not.toEqual([first.rule, first.kind]);
    reviews = [...reviews, { ...review(start + 1, 'right', second.rule), kind: second.kind }];
    const third = at(start + 61);
    expect([third.rule, third.kind]).toEqual([first.rule, first.kind]);
  });

  test('progress is told by rule: seen, right, next due', () => {
    const rows = [review(start, 'wrong'), review(start + 90, 'right'), review(start, 'right', 'gusty')];
    expect(progressOf(['gusty', 'too-windy', 'dark'], rows)).toEqual([
      { rule: 'gusty', seen: 1, right: 1, due: start + 600 },
      { rule: 'too-windy', seen: 2, right: 1, due: expect.any(Number) },
      { rule: 'dark', seen: 0, right: 0, due: null },
    ]);
  });

  test('of a rule seen in two kinds counts both, and is due with the first of them', () => {
    const rows = [review(start, 'right'), { ...review(start + 5, 'wrong'), kind: 'outside' as const }];
    expect(progressOf(['too-windy'], rows)).toEqual([{ rule: 'too-windy', seen: 2, right: 1, due: start + 65 }]);
    expect(standingOfCards(rows).get('too-windy outside')).toEqual({
      rule: 'too-windy',
      kind: 'outside',
      seen: 1,
      right: 0,
      due: start + 65,
      lastSeen: start + 5,
    });
  });
});
