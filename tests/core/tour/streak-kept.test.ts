import { expect, test } from 'vitest';
import { parseStreaks } from '../../../src/core/tour/streak.ts';

const ids = ['dry', 'wet'];
const dry = { id: 'dry', right: 1, due: 9 };
const kept = (changed: object | null) => ({ turn: 1, items: [changed, { id: 'wet', right: 0, due: 2 }] });

test('what was kept is read back with what belongs to it, and nothing else', () => {
  expect(parseStreaks({ ...kept({ ...dry, more: 1 }), more: 2 }, ids)).toEqual(kept(dry));
  expect(parseStreaks({ turn: 0, items: kept({ ...dry, due: -1 }).items }, ids)?.turn).toBe(0);
});

test.each([
  ['an entry that is nothing', kept(null)],
  ['an entry of something else', kept({ ...dry, id: 'dusty' })],
  ['right less than never', kept({ ...dry, right: -1 })],
  ['right by halves', kept({ ...dry, right: 0.5 })],
  ['right in words', kept({ ...dry, right: '1' })],
  ['due between two turns', kept({ ...dry, due: 2.5 })],
  ['due at no time', kept({ id: 'dry', right: 1 })],
  ['a turn by halves', { ...kept(dry), turn: 1.5 }],
  ['no list of entries', { turn: 1, items: { length: 2 } }],
  ['more entries than things', { turn: 1, items: [...kept(dry).items, dry] }],
  ['words', 'dry'],
  ['what was never kept', undefined],
])('%s begins anew', (_, read) => {
  expect(parseStreaks(read, ids)).toBeNull();
});
