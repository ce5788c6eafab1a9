import { describe, expect, test } from 'vitest';
import { dialogueOver } from '../../src/adapters/conversation/dialogue-over.ts';
import { createMemoryStore } from '../../src/adapters/store/memory-store.ts';
import type { ConversationView, QuestionView } from '../../src/core/dialogue/view-types.ts';
import { shipped } from '../cases/shipped-pack.ts';
import { goodChoices, goodNumbers } from '../demo/support.ts';
import { type ChatClient, greet, stampAt } from './support/chat-client.ts';
import { startTestServer, type TestServer } from './support/test-server.ts';

const startReal = (more: Parameters<typeof startTestServer>[0] = {}) =>
  startTestServer({ packs: [shipped.pack], dialogue: dialogueOver(() => [shipped.pack]), ...more });

/** The next view in which nothing is under way. */
async function calmView(client: ChatClient): Promise<ConversationView> {
  for (;;) {
    const { view } = await client.next('view');
    if (view.busy === null) return view;
  }
}

function answerTo({ id, boxes }: QuestionView, at: number) {
  const numbers = Object.fromEntries(boxes.map(({ fact }) => [fact, goodNumbers[fact] ?? 0]));
  const choices = [...(goodChoices[id] ?? [])];
  return { type: 'answer', ...stampAt(at), question: id, choices, numbers, doesNotKnow: false };
}

/** Answers what is asked until nothing is, with the moments of the server's clock. */
async function answerAll(client: ChatClient, { time }: TestServer, first: ConversationView) {
  let view = first;
  const asked: string[] = [];
  while (view.question && asked.length < 12) {
    asked.push(view.question.id);
    time.advance(5000);
    client.send(answerTo(view.question, time.clock.now()));
    view = await calmView(client);
  }
  return { view, asked };
}

/** Time for the server to see that the client is alive. */
async function roundTrip({ socket }: ChatClient): Promise<void> {
  const pong = new Promise((resolve) => socket.once('pong', resolve));
  socket.ping();
  await pong;
}

describe('a real conversation over the socket', () => {
  test('comes to spray today on a fit day, every frame as the schemas have it', async () => {
    const server = await startReal();
    const { client } = await greet(server.url);
    client.send({ type: 'start', ...stampAt(server.time.clock.now()), field: 'mill-piece' });
    const { view } = await answerAll(client, server, await calmView(client));
    expect(view.verdict).toMatchObject({ verdict: 'spray-today', validUntil: expect.any(String) });
    expect(view.verdict!.rules).toHaveLength(shipped.pack.rules.length);
  });

  test('is withdrawn without a word from the client once its facts are too old', async () => {
    const server = await startReal();
    const { client } = await greet(server.url);
    client.send({ type: 'start', ...stampAt(server.time.clock.now()), field: 'mill-piece' });
    const { view } = await answerAll(client, server, await calmView(client));
    const left = Date.parse(view.verdict!.validUntil!) - Date.parse(view.now);
    for (let passed = 0; passed < left + 2000; passed += 20_000) {
      server.time.advance(20_000);
      await roundTrip(client);
    }
    expect((await client.next('view')).view.verdict).toBeNull();
  });

  test('after a lost connection asks nothing twice', async () => {
    const server = await startReal();
    const one = await greet(server.url);
    one.client.send({ type: 'start', ...stampAt(server.time.clock.now()), field: 'mill-piece' });
    const first = await calmView(one.client);
    const sent = answerTo(first.question!, server.time.clock.now());
    one.client.send(sent);
    const before = await calmView(one.client);
    one.client.socket.terminate();
    await one.client.closed;

    const two = await greet(server.url, one.welcome.token);
    const back = (await two.client.next('view')).view;
    expect(back).toEqual(before);
    two.client.send(sent);
    const { asked, view } = await answerAll(two.client, server, back);
    expect(asked).not.toContain(first.question!.id);
    expect(new Set(asked).size).toBe(asked.length);
    expect(view.verdict?.verdict).toBe('spray-today');
  });

  test('goes on after the server was started anew over the same store', async () => {
    const store = createMemoryStore();
    const before = await startReal({ store });
    const one = await greet(before.url);
    one.client.send({ type: 'start', ...stampAt(before.time.clock.now()), field: 'top-brow' });
    const shown = await calmView(one.client);
    await before.close();
    const after = await startReal({ store });
    const two = await greet(after.url, one.welcome.token);
    expect([two.welcome.resumed, await calmView(two.client)]).toEqual([true, shown]);
  });

  test('of an own field asks for the place, and for the weather by hand where no forecast is to be had', async () => {
    const server = await startReal();
    const { client } = await greet(server.url);
    client.send({ type: 'start', ...stampAt(server.time.clock.now()), field: null });
    const view = await calmView(client);
    expect([view.field, view.verdict, view.question === null]).toEqual([null, null, false]);
  });

  test('leaves nothing of what was typed, no token and no address in the log', async () => {
    const server = await startReal();
    const { client, welcome } = await greet(server.url);
    client.send({ type: 'start', ...stampAt(server.time.clock.now()), field: 'mill-piece' });
    await calmView(client);
    client.send({ type: 'say', ...stampAt(server.time.clock.now()), text: 'Zebedee told me moist' });
    await calmView(client);
    client.sendText('Zebedee');
    await client.next('error');
    const log = JSON.stringify(server.log);
    expect(log).not.toMatch(/zebedee|moist|127\.0\.0\.1|mill-piece/i);
    expect(log).not.toContain(welcome.token);
    expect(server.log.filter(({ event }) => event === 'message').map(({ kind }) => kind)).toEqual([
      'hello',
      'start',
      'say',
    ]);
  });
});
