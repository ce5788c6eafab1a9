import { describe, expect, test } from 'vitest';
import type { RunningConversation } from '../../src/adapters/conversation/types.ts';
import { createMemoryStore } from '../../src/adapters/store/memory-store.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { createHub } from '../../src/server/chat/hub.ts';

const turn = () => new Promise((resolve) => setImmediate(resolve));

/** A hub over conversations that do nothing but count, with `settle` to let what they wait for come. */
function countingHub() {
  let made = 0;
  let ids = 0;
  let settle = (): void => {};
  const settled = new Promise<void>((resolve) => {
    settle = resolve;
  });
  const hub = createHub({
    store: createMemoryStore(),
    now: () => epochSeconds(1),
    newId: () => `0000-${++ids}`,
    run: (keep) => {
      made += 1;
      const conversation: RunningConversation = {
        receive: async () => {
          await keep([{ kind: 'undone', id: 'e', at: epochSeconds(1), device: 'd', count: 1, of: 'x' }]);
          return null;
        },
        takeIn: async () => ({ taken: [], already: [], refused: [] }),
        view: () => null,
        listen: () => () => {},
        events: () => [],
        settled: () => settled,
      };
      return conversation;
    },
  });
  return { hub, settle, made: () => made };
}
const message = { type: 'undo', id: 'e', at: 1, device: 'd', count: 1, of: 'x' } as const;

describe('the hub', () => {
  test('keeps a conversation that nobody holds until what it asked for has come, then lets go of it', async () => {
    const { hub, settle, made } = countingHub();
    const first = await hub.open(null);
    await first.conversation.receive(message);
    first.release();
    await turn();
    const again = await hub.open(first.token);
    expect([again.resumed, again.conversation === first.conversation, made()]).toEqual([true, true, 1]);
    again.release();
    settle();
    await turn();
    expect(hub.count()).toBe(0);
    const fromStore = await hub.open(first.token);
    expect([fromStore.resumed, made()]).toEqual([true, 2]);
  });

  test('does not let go of what another connection holds, and counts a release once', async () => {
    const { hub, settle } = countingHub();
    settle();
    const one = await hub.open(null);
    const two = await hub.open(one.token);
    one.release();
    one.release();
    await turn();
    expect(hub.count()).toBe(1);
    two.release();
    await turn();
    expect(hub.count()).toBe(0);
  });

  test('a connection that never said anything leaves nothing behind', async () => {
    const { hub, settle } = countingHub();
    settle();
    const idle = await hub.open(null);
    idle.release();
    await turn();
    expect((await hub.open(idle.token)).resumed).toBe(false);
  });

  test('two that come back at once with one token share one conversation', async () => {
    const { hub, settle, made } = countingHub();
    settle();
    const first = await hub.open(null);
    await first.conversation.receive(message);
    first.release();
    await turn();
    const [one, two] = await Promise.all([hub.open(first.token), hub.open(first.token)]);
    expect([one.conversation === two.conversation, made()]).toEqual([true, 2]);
  });
});
