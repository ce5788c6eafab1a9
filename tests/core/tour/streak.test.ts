import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { afterAnswer, newStreaks, nextToAsk, parseStreaks, type Streaks } from '../../../src/core/tour/streak.ts';

const ids = ['dry', 'moist', 'wet', 'saturated', 'slightly-moist', 'at-capacity'];

/** Asks until all is sure; the answers are right or wrong in this order, then right. */
function learn(answers: readonly boolean[], from: Streaks = newStreaks(ids)): string[] {
  const asked: string[] = [];
  let streaks = from;
  for (let next = nextToAsk(streaks, null); next !== null && asked.length < 500; next = nextToAsk(streaks, next)) {
    streaks = afterAnswer(streaks, next, answers[asked.length] ?? true);
    asked.push(next);
  }
  return asked;
}

describe('learning until sure', () => {
  test('ends once each was right twice in a row: twelve questions where nothing is wrong', () => {
    const asked = learn([]);
    expect(asked).toHaveLength(12);
    for (const id of ids) expect(asked.filter((one) => one === id)).toHaveLength(2);
  });

  test('brings a mistake back sooner than what was right', () => {
    const asked = learn([false, true]);
    const again = (id: string) => asked.indexOf(id, asked.indexOf(id) + 1) - asked.indexOf(id);
    expect(again(asked[0]!)).toBeLessThan(again(asked[1]!));
  });

  test('always ends, asks nothing twice running while another is open, and after a mistake asks twice more', () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { maxLength: 60 }), (answers) => {
        const asked = learn(answers);
        expect(asked.length).toBeLessThan(200);
        const turns = asked.map((id, at) => ({ id, isRight: answers[at] ?? true }));
        for (const id of ids) {
          expect(turns.filter((one) => one.id === id).slice(-2)).toEqual([
            { id, isRight: true },
            { id, isRight: true },
          ]);
        }
        const lastNew = Math.max(
          ...ids
            .map((id) => asked.lastIndexOf(id))
            .sort((a, b) => a - b)
            .slice(0, -1),
        );
        for (let at = 1; at <= lastNew; at += 1) expect(asked[at]).not.toBe(asked[at - 1]);
      }),
    );
  });

  test('goes on where it was kept, and begins anew where what was kept is of another form', () => {
    const kept = afterAnswer(newStreaks(ids), 'dry', true);
    expect(parseStreaks(JSON.parse(JSON.stringify(kept)), ids)).toEqual(kept);
    for (const other of [null, 3, {}, { turn: -1, items: [] }, { ...kept, items: kept.items.slice(1) }]) {
      expect(parseStreaks(other, ids)).toBeNull();
    }
    expect(parseStreaks({ ...kept, items: kept.items.map(() => kept.items[0]) }, ids)).toBeNull();
  });
});
