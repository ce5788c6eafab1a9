import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createConversation } from '../../src/adapters/conversation/create-conversation.ts';
import { createMemoryStore } from '../../src/adapters/store/memory-store.ts';
import { errorTable } from '../../src/core/errors/table.ts';
import { clientMessageSchemas, type ServerMessage } from '../../src/core/protocol/messages.ts';
import { createHub } from '../../src/server/chat/hub.ts';
import { createChatSession } from '../../src/server/chat/session.ts';
import { silentLog } from '../../src/server/log.ts';
import { openChat } from './support/chat-client.ts';
import { fakeTime } from './support/fake-time.ts';
import { emptyPack } from './support/pack.ts';
import { plainDialogue } from './support/plain-dialogue.ts';
import { startTestServer } from './support/test-server.ts';

const types = Object.keys(clientMessageSchemas);
const fields = ['protocol', 'resume', 'id', 'at', 'device', 'count', 'field', 'text', 'of', '__proto__', 'constructor'];

/** A frame in the form of the protocol with a value or two that do not belong. */
const nearMessage = fc
  .tuple(
    fc.constantFrom(...types),
    fc.dictionary(fc.constantFrom(...fields), fc.oneof(fc.string(), fc.double(), fc.integer(), fc.constant(null))),
  )
  .map(([type, rest]) => JSON.stringify({ ...rest, type }));

/** Frames of every sort: noise, JSON, near messages, cut ones, nested ones. */
const frame = fc.oneof(
  fc.string({ maxLength: 200, unit: 'binary' }),
  fc.json({ maxDepth: 3 }),
  nearMessage,
  nearMessage.chain((text) => fc.nat(text.length).map((end) => text.slice(0, end))),
  fc.integer({ min: 1, max: 3000 }).map((depth) => '['.repeat(depth)),
);

describe('random frames', () => {
  test('100,000 of them are each answered by a code of the table or a message of the protocol', async () => {
    const time = fakeTime();
    const answers: ServerMessage[] = [];
    let ids = 0;
    const newId = () => `id-${++ids}`;
    const means = { dialogue: plainDialogue(), clock: time.clock, newId, fields: [], packs: [emptyPack] as const };
    const hub = createHub({
      store: createMemoryStore(),
      now: time.clock.now,
      newId,
      run: (keep, restored) =>
        createConversation(
          { ...means, keep, forecastService: { forecastFor: () => Promise.reject(new TypeError('planted')) } },
          restored,
        ),
    });
    const fresh = () =>
      createChatSession({
        hub,
        offers: () => ({ fields: [], treatments: [{ id: 'empty', title: 'Nothing', note: '', fields: [] }] }),
        now: time.clock.now,
        timers: time.timers,
        bucket: { take: () => true },
        log: silentLog,
        send: (message) => answers.push(message),
        close: () => {},
      });
    let session = fresh();
    let tried = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(frame, { minLength: 100, maxLength: 100 }), fc.boolean(), async (frames, greets) => {
        session.end();
        session = fresh();
        if (greets) await session.receive('{"type":"hello","protocol":1,"resume":null}', false);
        for (const [index, text] of frames.entries()) {
          answers.length = 0;
          await session.receive(text, index % 10 === 9);
          tried += 1;
          expect(answers.length).toBeGreaterThan(0);
          for (const answer of answers)
            if (answer.type === 'error') expect(errorTable).toHaveProperty(answer.error.code);
        }
      }),
      { numRuns: 1000, seed: 20_261_112, interruptAfterTimeLimit: 50_000, markInterruptAsFailure: true },
    );
    expect(tried).toBe(100_000);
  });

  test('thousands over a real socket leave the server up, each answered', async () => {
    const { url } = await startTestServer();
    const client = await openChat(url);
    const frames = fc.sample(frame, { numRuns: 3000, seed: 7 }).filter((text) => Buffer.byteLength(text) <= 8192);
    let answered = 0;
    const all = new Promise<void>((resolve) => {
      client.socket.on('message', () => {
        answered += 1;
        if (answered === frames.length) resolve();
      });
    });
    for (const text of frames) client.sendText(text);
    await all;
    expect((await fetch(`${url}/health`)).status).toBe(200);
  });

  test('raw bytes instead of frames end connections and never the server', async () => {
    const { url } = await startTestServer();
    const noises = fc.sample(fc.uint8Array({ minLength: 2, maxLength: 64 }), { numRuns: 200, seed: 11 });
    for (const noise of noises) {
      const client = await openChat(url);
      const raw = (client.socket as unknown as { _socket: import('node:net').Socket })._socket;
      raw.end(Buffer.from(noise));
      await client.closed;
    }
    expect((await fetch(`${url}/health`)).status).toBe(200);
  });
});
