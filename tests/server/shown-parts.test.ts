import { describe, expect, test } from 'vitest';
import { escapeHtml } from '../../src/server/hand-over/shown-page.ts';
import { createShownStore, type ShownAnswer } from '../../src/server/hand-over/shown-store.ts';

describe('the store of shown answers', () => {
  const answer = (id: string, maker: string, madeAt: number) =>
    ({ id, maker, madeAt, until: madeAt + 10 }) as ShownAnswer;

  test('of one maker and in all the newest are kept', async () => {
    const store = createShownStore({ inAll: 3, ofOne: 2 });
    for (const [id, maker] of [
      ['a', 'x'],
      ['b', 'x'],
      ['c', 'x'],
      ['d', 'y'],
      ['e', 'z'],
    ] as const) {
      await store.add(answer(id, maker, 0));
    }
    expect((await store.listOf('x', 1)).map(({ id }) => id)).toEqual(['c']);
    expect(await store.read('b', 1)).toBeNull();
    expect((await store.read('e', 1))?.id).toBe('e');
  });

  test('what has ended is not read and leaves with the next', async () => {
    const store = createShownStore({ inAll: 3, ofOne: 3 });
    await store.add(answer('a', 'x', 0));
    expect(await store.read('a', 9)).not.toBeNull();
    expect(await store.read('a', 10)).toBeNull();
    expect(await store.listOf('x', 10)).toEqual([]);
  });
});

test.each([
  ['<b class="x">&\'', '&#60;b class=&#34;x&#34;&#62;&#38;&#39;'],
  ['plain', 'plain'],
])('%s stands in a page as %s', (text, html) => {
  expect(escapeHtml(text)).toBe(html);
});
