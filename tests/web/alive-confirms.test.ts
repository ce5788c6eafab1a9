import { expect, test } from 'vitest';
import { createMemoryStore } from '../../src/adapters/store/memory-store.ts';
import { greet, stampAt } from '../server/support/chat-client.ts';
import { startTestServer } from '../server/support/test-server.ts';

test('an alive is answered only after what was sent before it has taken hold, however slow the store', async () => {
  const memory = createMemoryStore();
  const kept: string[] = [];
  const store = {
    ...memory,
    append: async (...given: Parameters<typeof memory.append>) => {
      for (let turn = 0; turn < 50; turn++) await new Promise((resolve) => setImmediate(resolve));
      await memory.append(...given);
      kept.push(...given[1].map(({ id }) => id));
    },
  };
  const server = await startTestServer({ store });
  const { client, welcome } = await greet(server.url);
  const [start, say] = [stampAt(welcome.serverTime), stampAt(welcome.serverTime)];
  client.send({ type: 'start', ...start, field: null });
  client.send({ type: 'say', ...say, text: 'moist' });
  client.send({ type: 'alive' });
  await client.next('alive');
  expect(kept).toEqual(expect.arrayContaining([start.id, say.id]));
});
