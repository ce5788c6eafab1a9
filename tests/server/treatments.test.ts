import { randomUUID } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { createConversation } from '../../src/adapters/conversation/create-conversation.ts';
import { dialogueOver } from '../../src/adapters/conversation/dialogue-over.ts';
import { createMemoryStore } from '../../src/adapters/store/memory-store.ts';
import { protocolVersion } from '../../src/core/protocol/messages.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { hollinBankFarm } from '../../src/demo/hollin-bank-farm.ts';
import { shipped } from '../cases/shipped-pack.ts';
import { filesOf } from '../fixtures/mini-pack.ts';
import { springPack } from '../fixtures/spring-pack.ts';
import { type ChatClient, openChat, stampAt } from './support/chat-client.ts';
import { callServer, newToken } from './support/talk-alone.ts';
import { startTestServer, type TestServer } from './support/test-server.ts';

const rape = shipped.pack.id;
const { pack: spring } = loadPack(filesOf(springPack()));
const fields = hollinBankFarm;

/** A server with two treatments and the core's own conversation. */
const startTwo = (packs: readonly [Pack, ...Pack[]] = [shipped.pack, spring], store = createMemoryStore()) =>
  startTestServer({ packs, dialogue: dialogueOver(() => packs), fields, store });

/** Says hello as a client that lets people choose. */
async function choose({ url }: TestServer, resume: string | null = null, language = 'en') {
  const client = await openChat(url);
  client.send({ type: 'hello', protocol: protocolVersion, resume, language, treatments: true });
  return { client, welcome: await client.next('welcome') };
}

async function start(client: ChatClient, { time }: TestServer, more: object) {
  time.advance(1000);
  client.send({ type: 'start', ...stampAt(time.clock.now()), field: null, ...more });
  return client.next('view');
}

describe('the choice of a treatment', () => {
  test('each treatment is offered with title and note in the language asked for, and with the fields that belong to it', async () => {
    const server = await startTwo();
    const { welcome } = await choose(server, null, 'de');
    expect(welcome.treatments).toEqual([
      {
        id: rape,
        title: 'Propyzamid in Winterraps',
        note: expect.stringMatching(/^Propyzamid in Winterraps gegen/),
        fields: ['mill-piece', 'long-ing', 'top-brow'],
      },
      { id: 'spring-pack', title: 'Frühjahr, erfunden', note: 'Erfunden, für Tests', fields: [] },
    ]);
  });

  test('a client that does not ask hears of the first alone, as if there were no other', async () => {
    const server = await startTwo([spring, shipped.pack]);
    const client = await openChat(server.url);
    client.send({ type: 'hello', protocol: protocolVersion, resume: null });
    const welcome = await client.next('welcome');
    expect([welcome.fields, welcome.treatments, welcome.packTitle]).toEqual([[], undefined, 'Spring, invented']);
    const told = await start(client, server, {});
    expect([told.view.packTitle, told.pack]).toEqual(['Spring, invented', undefined]);
  });

  test.each([
    [undefined, 'Propyzamide on winter oilseed rape', rape],
    [rape, 'Propyzamide on winter oilseed rape', rape],
    ['spring-pack', 'Spring, invented', 'spring-pack'],
  ])(
    'a start for %s is asked about under that treatment, and goes on under it after a reconnection',
    async (pack, title, id) => {
      const server = await startTwo();
      const { client, welcome } = await choose(server);
      const told = await start(client, server, pack ? { pack } : {});
      expect([told.view.packTitle, told.pack, told.view.question === null]).toEqual([title, id, false]);
      client.socket.terminate();
      const again = await choose(server, welcome.token);
      expect(await again.client.next('view')).toMatchObject({ pack: id, view: { packTitle: title } });
      again.client.send({ type: 'say', ...stampAt(server.time.clock.now()), text: 'start again' });
      const anew = await again.client.next('view');
      expect([anew.view.packTitle, anew.pack]).toEqual([title, id]);
      expect(await start(again.client, server, {})).toMatchObject({ pack: id });
    },
  );

  test.each([
    ['a treatment that is not there', { pack: 'spring-pak' }, { code: 'TREATMENT_UNKNOWN', nearest: 'spring-pack' }],
    ['a field of another treatment', { pack: 'spring-pack', field: 'mill-piece' }, { code: 'FIELD_UNKNOWN' }],
  ])('%s is refused, and says what to do', async (_, more, error) => {
    const server = await startTwo();
    const { client } = await choose(server);
    client.send({ type: 'start', ...stampAt(server.time.clock.now()), field: null, ...more });
    const refusal = await client.next('error');
    expect(refusal.error).toMatchObject(error);
    expect(refusal.error.next).toMatch(/^Choose one of/);
  });

  test('a conversation keeps its treatment: a start for another is refused, and nothing of it is lost', async () => {
    const server = await startTwo();
    const { client } = await choose(server);
    await start(client, server, { pack: 'spring-pack' });
    client.send({ type: 'start', ...stampAt(server.time.clock.now()), field: 'mill-piece', pack: rape });
    expect((await client.next('error')).error).toMatchObject({
      code: 'TREATMENT_OTHER',
      expected: 'spring-pack',
      came: rape,
    });
    client.send({ type: 'say', ...stampAt(server.time.clock.now()), text: 'growth stage 21' });
    const { view } = await client.next('view');
    expect([view.packTitle, view.said.map(({ fact }) => fact)]).toEqual(['Spring, invented', ['crop.growthStage']]);
  });

  test('the same start sent twice counts once, though the rules have changed in between', async () => {
    const store = createMemoryStore();
    const before = await startTwo([shipped.pack, spring], store);
    const { client, welcome } = await choose(before);
    const begun = { type: 'start', ...stampAt(before.time.clock.now()), field: null, pack: 'spring-pack' };
    client.send(begun);
    await client.next('view');
    const renewed = { ...spring, hash: 'f'.repeat(64) };
    const after = await startTwo([shipped.pack, renewed, spring], store);
    const again = await choose(after, welcome.token);
    const { kept } = await again.client.next('view');
    again.client.send(begun);
    again.client.send({ type: 'say', ...stampAt(after.time.clock.now()), text: 'growth stage 21' });
    expect(await again.client.next('view')).toMatchObject({ kept: kept + 1, pack: 'spring-pack' });
  });

  test('where its rules have gone, a conversation is looked at under the present ones of its own treatment', async () => {
    const store = createMemoryStore();
    const before = await startTwo([shipped.pack, spring], store);
    const { client, welcome } = await choose(before);
    await start(client, before, { pack: 'spring-pack' });
    const after = await startTwo([shipped.pack, { ...spring, hash: 'f'.repeat(64) }], store);
    const again = await choose(after, welcome.token);
    expect(await again.client.next('view')).toMatchObject({ view: { packTitle: 'Spring, invented' } });
  });

  test('a conversation whose treatment the server no longer has is not begun anew under another', async () => {
    const store = createMemoryStore();
    const before = await startTwo([shipped.pack, spring], store);
    const { client, welcome } = await choose(before);
    await start(client, before, { pack: 'spring-pack' });
    const after = await startTwo([shipped.pack], store);
    const again = await choose(after, welcome.token);
    again.client.send({ type: 'start', ...stampAt(after.time.clock.now()), field: null });
    expect((await again.client.next('error')).error).toMatchObject({ code: 'TREATMENT_UNKNOWN', came: 'spring-pack' });
  });
});

describe('what was said without a connection', () => {
  test('is taken in under its own treatment; a start for another is refused with all that follows it', async () => {
    const server = await startTwo();
    const packs = [spring, shipped.pack] as const;
    const alone = createConversation({
      dialogue: dialogueOver(() => packs),
      clock: server.time.clock,
      newId: randomUUID,
      fields: [],
      packs,
      forecastService: { forecastFor: () => Promise.reject(new TypeError('no signal')) },
    });
    const say = (message: object) =>
      alone.receive({ ...stampAt(server.time.clock.now(), 'phone'), ...message } as never);
    expect(await say({ type: 'start', field: null })).toBeNull();
    expect(await say({ type: 'say', text: 'growth stage 21' })).toBeNull();
    await alone.settled();
    const token = newToken();
    const events = alone.events();
    expect((await callServer(server, '/events', token, { events })).body).toMatchObject({
      refused: [],
      count: events.length,
    });
    const { client } = await choose(server, token);
    expect(await client.next('view')).toMatchObject({
      pack: 'spring-pack',
      view: { said: [{ fact: 'crop.growthStage' }] },
    });
    const [begun] = events;
    const other = { ...begun, id: 'other', packId: rape, packHash: shipped.pack.hash, at: server.time.clock.now() };
    const answer = await callServer(server, '/events', token, { events: [other] });
    expect(answer.body.refused).toMatchObject([{ id: 'other', error: { code: 'TREATMENT_OTHER' } }]);
  });

  test('a page is handed the rules of every treatment, those in force first, and which field is for which', async () => {
    const older = { ...shipped.pack, hash: 'a'.repeat(64) };
    const server = await startTwo([shipped.pack, spring, older]);
    const { packs } = (await callServer(server, '/packs', null)).body as { packs: Pack[] };
    expect(packs.map(({ id, hash }) => [id, hash === older.hash])).toEqual([
      [rape, false],
      ['spring-pack', false],
      [rape, true],
    ]);
    const offered = (await callServer(server, '/fields', null)).body as { fields: { packs: string[] }[] };
    expect(offered.fields.map((field) => field.packs)).toEqual([[rape], [rape], [rape], ['fluroxypyr-winter-wheat']]);
    expect((await choose(server)).welcome.treatments).toHaveLength(2);
  });
});
