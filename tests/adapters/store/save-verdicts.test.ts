import { describe, expect, test } from 'vitest';
import { createMemoryStore } from '../../../src/adapters/store/memory-store.ts';
import { savingVerdicts } from '../../../src/adapters/store/save-verdicts.ts';
import type { ConversationEvent } from '../../../src/core/dialogue/events.ts';
import { epochSeconds } from '../../../src/core/units/brands.ts';

const at = epochSeconds(1_795_600_000);
const stamp = { at, device: 'test', count: 1 };
const undone: ConversationEvent = { kind: 'undone', id: 'u', of: 'x', ...stamp };
const verdict = { kind: 'verdict-given', id: 'v', tag: 't', saw: [], decision: { verdict: 'wait' }, ...stamp };
const events = [undone, verdict as unknown as ConversationEvent];

describe('verdicts saved beside the conversations', () => {
  test('each verdict becomes a line, and nothing else that was said', async () => {
    let file = '';
    const store = savingVerdicts(
      createMemoryStore(),
      async (lines) => {
        file += lines;
      },
      () => expect.unreachable(),
    );
    await store.create('t', at);
    await store.append('t', events, at);
    await store.append('t', [undone], at);
    expect(file).toBe(`${JSON.stringify(verdict)}\n`);
    expect((await store.read('t', at))?.events).toEqual(events);
  });

  test('a line that cannot be added is told and hinders nothing', async () => {
    const faults: unknown[] = [];
    const full = new TypeError('full');
    const store = savingVerdicts(
      createMemoryStore(),
      () => Promise.reject(full),
      (fault) => faults.push(fault),
    );
    await store.create('t', at);
    await store.append('t', events, at);
    expect(faults).toEqual([full]);
    expect((await store.read('t', at))?.events).toEqual(events);
  });

  test('what the store refuses is not saved', async () => {
    const store = savingVerdicts(
      createMemoryStore(),
      () => expect.unreachable(),
      () => expect.unreachable(),
    );
    await expect(store.append('none', events, at)).rejects.toMatchObject({ code: 'CONVERSATION_GONE' });
  });
});
