import { randomBytes, randomUUID } from 'node:crypto';
import { expect } from 'vitest';
import { createConversation } from '../../../src/adapters/conversation/create-conversation.ts';
import { dialogueOver } from '../../../src/adapters/conversation/dialogue-over.ts';
import type { EventMessage } from '../../../src/core/protocol/messages.ts';
import { hollinBankFarm } from '../../../src/demo/hollin-bank-farm.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { goodChoices, goodNumbers } from '../../demo/support.ts';
import { startTestServer, type TestServer } from './test-server.ts';

const dialogue = dialogueOver(() => [shipped.pack]);

/** A server with the shipped rules and their own conversation. */
export const startReal = (more: Parameters<typeof startTestServer>[0] = {}) =>
  startTestServer({ packs: [shipped.pack], dialogue, ...more });

/** A conversation that a page runs by itself to its verdict on the invented field. */
export async function talkAlone({ time }: TestServer, field = 'mill-piece') {
  const conversation = createConversation({
    dialogue,
    clock: time.clock,
    newId: randomUUID,
    fields: hollinBankFarm,
    packs: [shipped.pack],
    forecastService: { forecastFor: () => Promise.reject(new TypeError('no signal')) },
  });
  let count = 0;
  const stamp = () => ({ id: randomUUID(), at: time.clock.now(), device: 'phone', count: ++count });
  const send = async (message: EventMessage) => {
    expect(await conversation.receive(message)).toBeNull();
    await conversation.settled();
    time.advance(5000);
  };
  await send({ type: 'start', ...stamp(), field });
  for (let question = conversation.view()?.question; question && count < 20; question = conversation.view()?.question) {
    const numbers = Object.fromEntries(question.boxes.map(({ fact }) => [fact, goodNumbers[fact] ?? 0]));
    const choices = [...(goodChoices[question.id] ?? [])];
    await send({ type: 'answer', ...stamp(), question: question.id, choices, numbers, doesNotKnow: false });
  }
  return conversation;
}

/** A token as a page without a server makes its own. */
export const newToken = () => randomBytes(32).toString('hex');

/** Asks the server by HTTP; with `events` by POST. Gives status and body. */
export async function callServer(server: TestServer, path: string, token: string | null, events?: unknown) {
  const response = await fetch(`${server.url}${path}`, {
    ...(events === undefined ? {} : { method: 'POST', body: JSON.stringify(events) }),
    headers: {
      ...(token === null ? {} : { authorization: `Bearer ${token}` }),
      ...(events === undefined ? {} : { 'content-type': 'application/json' }),
    },
  });
  return { status: response.status, body: await response.json() };
}
