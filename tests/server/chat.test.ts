import { describe, expect, test } from 'vitest';
import { greet, openChat, stampAt } from './support/chat-client.ts';
import { startTestServer } from './support/test-server.ts';

const at = 1_795_600_000;

describe('a conversation over the socket', () => {
  test('begins with welcome, and every change brings the whole view', async () => {
    const { url } = await startTestServer();
    const { client, welcome } = await greet(url);
    expect(welcome).toMatchObject({ protocol: 2, resumed: false, serverTime: at, packTitle: 'Nothing' });
    expect(welcome.token).toMatch(/^[0-9a-f]{64}$/);
    expect(welcome.fields.map(({ id, invented }) => [id, invented])).toEqual([
      ['mill-piece', true],
      ['long-ing', true],
      ['top-brow', true],
    ]);
    client.send({ type: 'start', ...stampAt(at), field: 'mill-piece' });
    const first = (await client.next('view')).view;
    expect(first.field).toMatchObject({ name: 'Mill Piece', invented: true });
    expect((await client.next('view')).view.entries.map((entry) => 'text' in entry && entry.text)).toEqual([
      'started',
      'forecast-attached',
    ]);
  });

  test('goes on where it was after a lost connection, with nothing lost and nothing twice', async () => {
    const { url } = await startTestServer();
    const { client, welcome } = await greet(url);
    const start = { type: 'start', ...stampAt(at), field: 'top-brow' };
    const said = { type: 'say', ...stampAt(at), text: 'nine point two' };
    client.send(start);
    await client.next('view');
    await client.next('view');
    client.send(said);
    const before = (await client.next('view')).view;
    client.socket.terminate();
    await client.closed;

    const back = await greet(url, welcome.token);
    expect(back.welcome).toMatchObject({ token: welcome.token, resumed: true });
    expect((await back.client.next('view')).view).toEqual(before);
    back.client.send(start);
    back.client.send(said);
    back.client.send({ type: 'say', ...stampAt(at), text: 'more' });
    const after = (await back.client.next('view')).view;
    expect(after.entries.map((entry) => 'text' in entry && entry.text)).toEqual([
      'started',
      'forecast-attached',
      'nine point two',
      'more',
    ]);
  });

  test('the same event id with other content is refused', async () => {
    const { url } = await startTestServer();
    const { client } = await greet(url);
    const start = { type: 'start', ...stampAt(at), field: null };
    client.send(start);
    client.send({ ...start, field: 'mill-piece' });
    expect(await client.next('error')).toMatchObject({ of: start.id, error: { code: 'EVENT_CHANGED' } });
  });

  test('a token that is not kept begins anew and says so', async () => {
    const { url } = await startTestServer();
    const { client, welcome } = await greet(url, 'f'.repeat(64));
    expect([welcome.resumed, welcome.token === 'f'.repeat(64)]).toEqual([false, false]);
    expect((await client.next('error')).error.code).toBe('CONVERSATION_GONE');
  });

  test('"another field" is told to the page, and "start again" begins the same field anew', async () => {
    const { url } = await startTestServer();
    const { client } = await greet(url);
    client.send({ type: 'start', ...stampAt(at), field: 'mill-piece' });
    client.send({ type: 'say', ...stampAt(at), text: 'start again' });
    for (;;) {
      const { view } = await client.next('view');
      const started = view.entries.filter((entry) => 'text' in entry && entry.text === 'started');
      if (started.length === 2) break;
    }
    client.send({ type: 'say', ...stampAt(at), text: 'another field' });
    expect(await client.next('notice')).toEqual({ type: 'notice', notice: 'choose-field' });
  });

  test('two pages with one token see the same', async () => {
    const { url } = await startTestServer();
    const one = await greet(url);
    one.client.send({ type: 'start', ...stampAt(at), field: null });
    await one.client.next('view');
    await one.client.next('view');
    const two = await greet(url, one.welcome.token);
    await two.client.next('view');
    two.client.send({ type: 'say', ...stampAt(at), text: 'from the other page' });
    expect((await one.client.next('view')).view).toEqual((await two.client.next('view')).view);
  });

  test('50 at once never mix', async () => {
    const { url } = await startTestServer();
    const clients = await Promise.all(Array.from({ length: 50 }, () => greet(url)));
    expect(new Set(clients.map(({ welcome }) => welcome.token)).size).toBe(50);
    const seen = await Promise.all(
      clients.map(async ({ client }, index) => {
        client.send({ type: 'start', ...stampAt(at, `device-${index}`), field: null });
        const mine = Array.from({ length: 20 }, (_, turn) => `judge ${index}.${turn}`);
        for (const text of mine) client.send({ type: 'say', ...stampAt(at, `device-${index}`), text });
        for (;;) {
          const { view } = await client.next('view');
          const texts = view.entries.map((entry) => ('text' in entry ? entry.text : ''));
          if (texts.filter((text) => text.startsWith('evaluated')).length === 20) return { index, texts, mine };
        }
      }),
    );
    for (const { index, texts, mine } of seen) {
      expect(texts.filter((text) => text.startsWith('judge'))).toEqual(mine);
      const tags = texts.filter((text) => text.startsWith('evaluated')).sort();
      expect(tags).toEqual(mine.map((text) => text.replace('judge', 'evaluated')).sort());
      expect(texts.every((text) => !/\d/.test(text) || text.includes(` ${index}.`))).toBe(true);
    }
  });
});

describe('what is no right message', () => {
  test.each([
    ['no JSON', 'hello', 'MESSAGE_NOT_JSON'],
    ['a list', '[]', 'MESSAGE_NOT_JSON'],
    ['an unknown kind', '{"type":"hallo"}', 'MESSAGE_TYPE_UNKNOWN'],
    ['a kind of the prototype', '{"type":"constructor"}', 'MESSAGE_TYPE_UNKNOWN'],
    ['a field too few', '{"type":"hello"}', 'MESSAGE_FIELD_WRONG'],
    ['a field too many', '{"type":"alive","more":1}', 'MESSAGE_FIELD_WRONG'],
    ['no hello', '{"type":"alive"}', 'HELLO_MISSING'],
  ])('%s is answered by its code and the connection stays', async (_what, text, code) => {
    const { url } = await startTestServer();
    const client = await openChat(url);
    client.sendText(text);
    expect((await client.next('error')).error.code).toBe(code);
    client.send({ type: 'hello', protocol: 2, resume: null });
    await client.next('welcome');
  });

  test.each([
    ['a second hello', { type: 'hello', protocol: 2, resume: null }, 'HELLO_TWICE'],
    ['a word before the start', { type: 'say', ...stampAt(at), text: 'nine' }, 'CONVERSATION_MISSING'],
    ['a field that is not there', { type: 'start', ...stampAt(at), field: 'mill-pice' }, 'FIELD_UNKNOWN'],
  ])('%s is answered by its code', async (_what, message, code) => {
    const { url } = await startTestServer();
    const { client } = await greet(url);
    client.send(message);
    expect((await client.next('error')).error.code).toBe(code);
  });

  test('bytes are refused', async () => {
    const { url } = await startTestServer();
    const { client } = await greet(url);
    client.socket.send(Buffer.from('{"type":"alive"}'));
    expect((await client.next('error')).error.code).toBe('MESSAGE_NOT_TEXT');
  });

  test('another version of the protocol is told to reload and closed', async () => {
    const { url } = await startTestServer();
    const client = await openChat(url);
    client.send({ type: 'hello', protocol: 999, resume: null });
    expect((await client.next('error')).error).toMatchObject({ code: 'PROTOCOL_VERSION', next: 'Reload the page.' });
    expect(await client.closed).toEqual({ code: 4001, reason: 'PROTOCOL_VERSION' });
  });

  test('a fault inside is answered and ends neither the connection nor the process', async () => {
    const { url } = await startTestServer();
    const { client } = await greet(url);
    client.send({ type: 'start', ...stampAt(at), field: null });
    for (const [text, code] of [
      ['throw', 'SERVER_FAULT'],
      ['refuse', 'FIELD_UNKNOWN'],
    ]) {
      client.send({ type: 'say', ...stampAt(at), text });
      expect((await client.next('error')).error.code).toBe(code);
    }
    client.send({ type: 'say', ...stampAt(at), text: 'judge break' });
    for (;;) {
      const texts = (await client.next('view')).view.entries.map((entry) => ('text' in entry ? entry.text : ''));
      if (texts.includes('evaluation-failed UNEXPECTED')) break;
    }
    client.send({ type: 'alive' });
    await client.next('alive');
  });
});
