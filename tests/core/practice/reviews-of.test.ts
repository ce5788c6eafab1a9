import { expect, test } from 'vitest';
import { parseDaySet, parseReview } from '../../../src/core/practice/files.ts';
import { type Review, reviewsOf } from '../../../src/core/practice/schedule.ts';
import { world } from './world.ts';

const row: Review = {
  rule: 'too-windy',
  kind: 'inside',
  at: 1_795_000_000,
  day: 'd',
  result: 'right',
  verdict: 'wait',
  reason: 'too-windy',
};

test('answers count for the treatment that they name; those kept before answers named one, only where that is wanted', () => {
  const rows = [row, { ...row, pack: 'rape' }, { ...row, pack: 'wheat' }].map((one) => parseReview(one, 'kept.jsonl'));
  expect(reviewsOf(rows, 'rape', true)).toEqual([rows[0], rows[1]]);
  expect(reviewsOf(rows, 'wheat', false)).toEqual([rows[2]]);
});

test('a set of days for another treatment is refused, and says for which it is', () => {
  const set = {
    format: 'loamward-practice-days',
    pack: { id: 'another-treatment', hash: 'f' },
    place: 'an invented place',
    season: 2025,
    days: [{ id: 'one', rule: 'too-windy', kind: 'weather', facts: {}, at: '2025-11-06T09:00:00Z' }],
  };
  const { id } = world.pack;
  expect(() => parseDaySet(set, world.pack, 'days.json')).toThrow(
    expect.objectContaining({
      code: 'PRACTICE_FILE_MISFIT',
      details: {
        expected: `days of the treatment ${id}`,
        came: 'another-treatment',
        file: 'days.json',
        pointer: '/pack/id',
      },
    }),
  );
});
