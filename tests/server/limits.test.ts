import { request } from 'node:http';
import { json } from 'node:stream/consumers';
import { describe, expect, test } from 'vitest';
import type { WebSocket } from 'ws';
import { heartbeatMs } from '../../src/server/chat/heartbeat.ts';
import { closeGraceMs } from '../../src/server/chat/sender.ts';
import { greet, openChat, stampAt } from './support/chat-client.ts';
import { plainDialogue } from './support/plain-dialogue.ts';
import { startTestServer } from './support/test-server.ts';

const at = 1_795_600_000;

/** The HTTP answer to an upgrade that is refused. */
async function refusedUpgrade(url: string, headers: Record<string, string>, path = '/chat') {
  const { hostname, port } = new URL(url);
  const asked = request({
    hostname,
    port,
    path,
    headers: {
      connection: 'upgrade',
      upgrade: 'websocket',
      'sec-websocket-version': '13',
      'sec-websocket-key': 'AAAAAAAAAAAAAAAAAAAAAA==',
      ...headers,
    },
  });
  asked.end();
  return new Promise<{ status: number | undefined; code: string }>((resolve, reject) => {
    asked.on('error', reject);
    asked.on('upgrade', (_reply, socket) => {
      socket.destroy();
      resolve({ status: 101, code: '' });
    });
    asked.on('response', async (reply) => {
      resolve({ status: reply.statusCode, code: ((await json(reply)) as { code: string }).code });
    });
  });
}

describe('who may open the chat', () => {
  const own = (url: string) => url;
  test.each([
    ['the page of the server itself', own, {}, 101],
    ['an origin that is named', () => 'https://farm.example', {}, 101],
    ['another origin', () => 'https://elsewhere.example', {}, 403],
    ['another scheme and port', (url: string) => url.replace('http:', 'https:').replace(/:\d+$/, ''), {}, 403],
    ['an opaque origin', () => 'null', {}, 403],
    ['no origin', () => '', {}, 403],
    ['a name elsewhere pointed at this machine', () => 'http://rebound.example', { host: 'rebound.example' }, 403],
  ])('%s', async (_who, origin, more, status) => {
    const { url } = await startTestServer({ settings: { origins: ['https://farm.example'] } });
    const from = origin(url);
    const answer = await refusedUpgrade(url, { ...(from ? { origin: from } : {}), ...more });
    expect(answer).toEqual({ status, code: status === 403 ? 'ORIGIN_REFUSED' : '' });
  });

  test('there is no socket at another address', async () => {
    const { url } = await startTestServer();
    expect(await refusedUpgrade(url, { origin: url }, '/other')).toEqual({ status: 404, code: 'ROUTE_UNKNOWN' });
  });

  test('connections are capped overall and by address, and a place comes free again', async () => {
    const { url, log } = await startTestServer({ settings: { connections: 2, behindProxy: true } });
    const from = (address: string) => ({ origin: url, headers: { 'x-forwarded-for': `203.0.113.9, ${address}` } });
    const first = await openChat(url, from('192.0.2.1'));
    await openChat(url, from('192.0.2.2'));
    const third = { origin: url, 'x-forwarded-for': '192.0.2.3' };
    expect(await refusedUpgrade(url, third)).toEqual({ status: 503, code: 'CONNECTIONS_FULL' });
    first.socket.close();
    await first.closed;
    while (!log.some(({ event }) => event === 'disconnected')) await turn();
    await turn();
    expect((await refusedUpgrade(url, third)).status).toBe(101);
  });

  test('connections from one address are capped', async () => {
    const { url } = await startTestServer({ settings: { connectionsPerAddress: 1 } });
    await openChat(url);
    expect(await refusedUpgrade(url, { origin: url, 'x-forwarded-for': '192.0.2.8' })).toEqual({
      status: 429,
      code: 'CONNECTIONS_FULL_HERE',
    });
  });
});

describe('what one connection may do', () => {
  test('8 kB in a frame are taken, one byte more closes with 1009', async () => {
    const { url } = await startTestServer();
    const client = await openChat(url);
    client.sendText('x'.repeat(8192));
    expect((await client.next('error')).error.code).toBe('MESSAGE_NOT_JSON');
    client.sendText('x'.repeat(8193));
    expect((await client.closed).code).toBe(1009);
    await greet(url);
  });

  test('bad UTF-8 closes with 1007 and a broken frame with 1002', async () => {
    const { url } = await startTestServer();
    const bad = await openChat(url);
    bad.socket.send(Buffer.from([0xff, 0xfe]), { binary: false });
    expect((await bad.closed).code).toBe(1007);
    const broken = await openChat(url);
    (broken.socket as unknown as { _socket: { write: (bytes: Buffer) => void } })._socket.write(
      Buffer.from([0xff, 0xff, 0, 0]),
    );
    expect((await broken.closed).code).toBe(1002);
    await greet(url);
  });

  test('messages beyond the rate are dropped by a code, and pass again a second later', async () => {
    const { url, time } = await startTestServer({ settings: { messagesPerSecond: 1, messageBurst: 3 } });
    const { client } = await greet(url);
    for (let sent = 0; sent < 3; sent += 1) client.send({ type: 'alive' });
    expect((await client.next('error')).error.code).toBe('MESSAGES_TOO_FAST');
    time.advance(1000);
    client.send({ type: 'hello', protocol: 2, resume: null });
    expect((await client.next('error')).error.code).toBe('HELLO_TWICE');
  });

  test('a flood closes with 1008', async () => {
    const { url } = await startTestServer({ settings: { messagesPerSecond: 1, messageBurst: 1 } });
    const client = await openChat(url);
    for (let sent = 0; sent < 300; sent += 1) client.send({ type: 'alive' });
    expect(await client.closed).toEqual({ code: 1008, reason: 'MESSAGES_FLOOD' });
  });

  test('a reader that takes nothing is closed with 1013 before answers pile up', async () => {
    const { url, time, log } = await startTestServer({ dialogue: plainDialogue(100_000) });
    const { client, welcome } = await greet(url);
    client.send({ type: 'start', ...stampAt(at), field: null });
    await client.next('view');
    client.socket.pause();
    const other = await greet(url, welcome.token);
    for (let said = 0; said < 400 && !log.some(({ code }) => code === 'READER_TOO_SLOW'); said += 1) {
      other.client.send({ type: 'say', ...stampAt(at), text: 'more' });
      await other.client.next('view');
    }
    expect(log.map(({ code }) => code)).toContain('READER_TOO_SLOW');
    client.socket.resume();
    expect(await client.closed).toEqual({ code: 1013, reason: 'READER_TOO_SLOW' });
    time.advance(closeGraceMs);
  });

  test('a slow reader that never wakes is cut off', async () => {
    const { url, time, log } = await startTestServer({ dialogue: plainDialogue(6_000_000) });
    const { client } = await greet(url);
    client.socket.pause();
    client.send({ type: 'start', ...stampAt(at), field: null });
    const other = await openChat(url);
    while (!log.some(({ code }) => code === 'READER_TOO_SLOW')) await ping(other.socket);
    time.advance(closeGraceMs);
    while (!log.some(({ event }) => event === 'disconnected')) await ping(other.socket);
    expect(log.findLast(({ event }) => event === 'disconnected')).toMatchObject({ closeCode: 1006 });
  });
});

describe('peers that are gone', () => {
  test('one that does not answer a ping is cut off at the next, one that answers stays', async () => {
    const { url, time, log } = await startTestServer();
    const silent = await openChat(url, { autoPong: false });
    const lively = await openChat(url);
    const ponged = new Promise((resolve) => lively.socket.once('ping', resolve));
    time.advance(heartbeatMs);
    await ponged;
    await ping(lively.socket);
    time.advance(heartbeatMs);
    expect((await silent.closed).code).toBe(1006);
    lively.send({ type: 'hello', protocol: 2, resume: null });
    await lively.next('welcome');
    expect(log.filter(({ event }) => event === 'silent')).toHaveLength(1);
  });
});

describe('closing', () => {
  test('clients are told by 1001 and the port is free', async () => {
    const server = await startTestServer();
    const { client } = await greet(server.url);
    const ended = client.next('error');
    await server.close();
    expect((await ended).error.code).toBe('SERVER_CLOSING');
    expect(await client.closed).toEqual({ code: 1001, reason: 'SERVER_CLOSING' });
    await expect(fetch(`${server.url}/health`)).rejects.toThrow();
  });

  test('a client that does not answer the close is cut off after 2 s', async () => {
    const server = await startTestServer();
    const { client } = await greet(server.url);
    client.socket.pause();
    const closing = server.close();
    while (server.log.filter(({ event }) => event === 'closing').length < 2) await turn();
    server.time.advance(closeGraceMs);
    await closing;
    expect(server.log.findLast(({ event }) => event === 'disconnected')).toMatchObject({ closeCode: 1006 });
    client.socket.resume();
    await client.closed;
  });
});

/** One turn of the event loop. */
const turn = () => new Promise((resolve) => setImmediate(resolve));

/** One round trip through the server. */
async function ping(socket: WebSocket): Promise<void> {
  const pong = new Promise((resolve) => socket.once('pong', resolve));
  socket.ping();
  await pong;
}
