import { describe, expect, test } from 'vitest';
import { createMemoryStore } from '../../src/adapters/store/memory-store.ts';
import type { ConversationView } from '../../src/core/dialogue/view-types.ts';
import { hollinBankFarm } from '../../src/demo/hollin-bank-farm.ts';
import { type ChatClient, greet, stampAt } from './support/chat-client.ts';
import { startReal } from './support/talk-alone.ts';
import type { TestServer } from './support/test-server.ts';

/** The invented farm before anybody said in which country it lies. */
const fields = hollinBankFarm.map((field) => ({
  ...field,
  profile: {
    ...field.profile,
    observations: field.profile.observations.filter(({ fact }) => fact !== 'field.country'),
  },
}));

/** The next view in which nothing is under way; of a field where one is named. */
async function calmView(client: ChatClient, field?: string): Promise<ConversationView> {
  for (;;) {
    const { view } = await client.next('view');
    if (view.busy === null && (field === undefined || view.field?.name === field)) return view;
  }
}

const sendIn = (client: ChatClient, { time }: TestServer) => {
  return async (message: object): Promise<ConversationView> => {
    time.advance(5000);
    client.send({ ...stampAt(time.clock.now()), ...message });
    return calmView(client);
  };
};

const answer = (question: string, choices: readonly string[], numbers = {}) => ({
  type: 'answer',
  question,
  choices,
  numbers,
  doesNotKnow: false,
});

/** At Mill Piece: the country and the wind told, the feel of the soil too. */
async function atMillPiece(server: TestServer) {
  const { client, welcome } = await greet(server.url);
  const send = sendIn(client, server);
  const first = await send({ type: 'start', field: 'mill-piece' });
  await send(answer('country', ['england']));
  await send(answer('wind', [], { 'wind.boomKmh': 6 }));
  const before = await send(answer('soil-feel', ['moist']));
  return { client, send, first, before, token: welcome.token };
}

const factsOf = ({ said }: ConversationView) => said.map(({ fact }) => fact);

describe('going on to another field over the socket', () => {
  test('"do the same for Top Brow" begins there with what holds for the farm today, which is not asked again', async () => {
    const server = await startReal({ fields });
    const { send, first, before } = await atMillPiece(server);
    expect(first.question?.id).toBe('country');
    const view = await send({ type: 'say', text: 'do the same for Top Brow' });
    expect(view.field?.name).toBe('Top Brow');
    expect(view.question?.id).not.toBe('country');
    expect(view.said.find(({ fact }) => fact === 'field.country')?.from).toContain('for Mill Piece');
    expect(view.said.find(({ fact }) => fact === 'wind.boomKmh')?.from).toContain('for Mill Piece');
    expect(factsOf(before)).toContain('soil.feel');
    expect(factsOf(view)).not.toContain('soil.feel');
    expect(view.fields.map(({ text }) => text.split(':')[0])).toEqual(['Mill Piece', 'Top Brow']);
  });

  test('the button goes on to each field not looked at yet, then lets the person choose, and that start carries over too', async () => {
    const server = await startReal({ fields });
    const { client, send } = await atMillPiece(server);
    for (const name of ['Long Ing', 'Top Brow']) {
      const view = await send({ type: 'request', request: 'same-for' });
      expect(view.field?.name).toBe(name);
      expect(factsOf(view)).toEqual(expect.arrayContaining(['field.country', 'wind.boomKmh']));
    }
    server.time.advance(5000);
    client.send({ type: 'request', ...stampAt(server.time.clock.now()), request: 'same-for' });
    expect((await client.next('notice')).notice).toBe('choose-next');
    server.time.advance(5000);
    client.send({ type: 'start', ...stampAt(server.time.clock.now()), field: 'mill-piece', carry: true });
    const view = await calmView(client, 'Mill Piece');
    expect(view.question?.id).not.toBe('country');
  });

  test('a start that does not carry over asks anew', async () => {
    const server = await startReal({ fields });
    const { send } = await atMillPiece(server);
    const view = await send({ type: 'start', field: 'top-brow' });
    expect(view.question?.id).toBe('country');
    expect(factsOf(view)).not.toContain('wind.boomKmh');
  });

  test('what was carried over is still there after the server was started anew over the same store', async () => {
    const store = createMemoryStore();
    const server = await startReal({ fields, store });
    const { send, token } = await atMillPiece(server);
    const view = await send({ type: 'say', text: 'do the same for Top Brow' });
    await server.close();
    const after = await startReal({ fields, store });
    const { client } = await greet(after.url, token);
    const back = await calmView(client);
    expect([back.field, factsOf(back), back.fields.length]).toEqual([view.field, factsOf(view), 2]);
  });
});
