import { describe, expect, test } from 'vitest';
import { createMemoryStore } from '../../../src/adapters/store/memory-store.ts';
import type { ConversationEvent } from '../../../src/core/dialogue/events.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';

const at = (hours: number) => epochSeconds(1_795_600_000 + hours * 3600);
const said = (id: string, text = 'nine'): ConversationEvent => ({
  kind: 'said',
  id,
  at: at(0),
  device: 'test',
  count: 1,
  text,
  asked: null,
});

describe('conversations in memory', () => {
  test('events come back in the order in which they were handed over', async () => {
    const store = createMemoryStore();
    await store.create('t', at(0));
    await store.append('t', [said('b'), said('a')], at(1));
    expect(await store.read('t', at(2))).toEqual({
      token: 't',
      createdAt: at(0),
      usedAt: at(2),
      events: [said('b'), said('a')],
    });
  });

  test('handing over twice changes nothing; the same id with other content is refused and nothing of it kept', async () => {
    const store = createMemoryStore();
    await store.create('t', at(0));
    await store.append('t', [said('a')], at(0));
    await store.append('t', [{ ...said('a') }, said('b')], at(0));
    await expect(store.append('t', [said('c'), said('a', 'ten')], at(0))).rejects.toMatchObject({
      code: 'EVENT_CHANGED',
    });
    expect((await store.read('t', at(0)))?.events.map(({ id }) => id)).toEqual(['a', 'b']);
  });

  test('what was read does not change under the reader', async () => {
    const store = createMemoryStore();
    await store.create('t', at(0));
    const before = await store.read('t', at(0));
    await store.append('t', [said('a')], at(0));
    expect(before?.events).toEqual([]);
  });

  test('the one longest unused goes first when there are too many', async () => {
    const store = createMemoryStore({ conversations: 2, idleHours: 72, events: 10, allEvents: 100 });
    await store.create('a', at(0));
    await store.create('b', at(1));
    await store.read('a', at(2));
    await store.create('c', at(3));
    const left = await Promise.all(['a', 'b', 'c'].map(async (token) => (await store.read(token, at(3))) !== null));
    expect(left).toEqual([true, false, true]);
  });

  test('conversations longest unused make room for events, the one in use stays', async () => {
    const store = createMemoryStore({ conversations: 9, idleHours: 72, events: 9, allEvents: 3 });
    for (const token of ['a', 'b', 'c']) {
      await store.create(token, at(0));
      await store.append(token, [said(`${token}1`)], at(0));
    }
    await store.read('a', at(1));
    await store.append('c', [said('c2')], at(1));
    const left = async () =>
      Promise.all(['a', 'b', 'c'].map(async (token) => (await store.list([token], at(1)))[0]?.eventCount ?? null));
    expect(await left()).toEqual([1, null, 2]);
    await store.append('c', [said('c3'), said('c4')], at(1));
    expect(await left()).toEqual([null, null, 4]);
    await store.create('d', at(2));
    await store.append('d', [said('d1')], at(2));
    expect(await store.list(['c', 'd'], at(2))).toMatchObject([{ token: 'd', eventCount: 1 }]);
  });

  test.each([
    [72, true],
    [72.01, false],
  ])('after %d h unused it is kept: %s', async (hours, kept) => {
    const store = createMemoryStore({ conversations: 2, idleHours: 72, events: 10, allEvents: 100 });
    await store.create('a', at(0));
    expect((await store.read('a', at(hours))) !== null).toBe(kept);
  });

  test('more events than the limit are refused by a code, as is an unknown token', async () => {
    const store = createMemoryStore({ conversations: 2, idleHours: 72, events: 1, allEvents: 100 });
    await store.create('a', at(0));
    await store.append('a', [said('a')], at(0));
    await expect(store.append('a', [said('b')], at(0))).rejects.toMatchObject({ code: 'CONVERSATION_FULL' });
    await expect(store.append('z', [said('b')], at(0))).rejects.toMatchObject({ code: 'CONVERSATION_GONE' });
  });

  test('a token in use is not given out again', async () => {
    const store = createMemoryStore();
    await store.create('a', at(0));
    await expect(store.create('a', at(0))).rejects.toMatchObject({ code: 'SERVER_FAULT' });
  });

  test('a list holds only the tokens asked for, last used first', async () => {
    const store = createMemoryStore();
    for (const token of ['a', 'b', 'c']) await store.create(token, at(0));
    await store.append('b', [said('x')], at(2));
    expect(await store.list(['a', 'b', 'z'], at(3))).toEqual([
      { token: 'b', createdAt: at(0), usedAt: at(2), eventCount: 1, fieldName: null },
      { token: 'a', createdAt: at(0), usedAt: at(0), eventCount: 0, fieldName: null },
    ]);
  });
});
