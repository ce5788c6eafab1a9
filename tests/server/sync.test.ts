import { describe, expect, test } from 'vitest';
import { createMemoryStore } from '../../src/adapters/store/memory-store.ts';
import type { ConversationEvent } from '../../src/core/dialogue/events.ts';
import { eventSchemas } from '../../src/core/protocol/events/event-schema.ts';
import { shipped } from '../cases/shipped-pack.ts';
import { greet } from './support/chat-client.ts';
import { callServer as call, newToken, startReal, talkAlone } from './support/talk-alone.ts';
import { rapeFields } from './support/test-server.ts';

const ids = (events: readonly ConversationEvent[]) => events.map(({ id }) => id).sort();

describe('handing over what was said without a connection', () => {
  test('every event is kept exactly once, however often it is handed over, and the verdict is the one that was given', async () => {
    const server = await startReal();
    const alone = await talkAlone(server);
    const events = alone.events();
    expect(events.some(({ kind }) => kind === 'verdict-given')).toBe(true);
    const token = newToken();
    const first = await call(server, '/events', token, { events: events.slice(0, 4) });
    expect(first).toMatchObject({ status: 200, body: { already: [], refused: [], count: expect.any(Number) } });
    const second = await call(server, '/events', token, { events });
    expect(second.body).toMatchObject({ refused: [] });
    const third = await call(server, '/events', token, { events: [...events].reverse() });
    expect(third.body).toMatchObject({ taken: [], refused: [], serverTime: server.time.clock.now() });
    expect([...third.body.already].sort()).toEqual(ids(events));

    const kept = await call(server, '/events?have=0', token);
    expect(ids(kept.body.events)).toEqual(ids(events));
    expect(kept.body.count).toBe(events.length);
    const { client, welcome } = await greet(server.url, token);
    expect(welcome.resumed).toBe(true);
    const { view, kept: told } = await client.next('view');
    expect(told).toBe(events.length);
    expect(view.verdict).toEqual(alone.view()?.verdict);
  });

  test('only what is new is sent back', async () => {
    const server = await startReal();
    const events = (await talkAlone(server)).events();
    const token = newToken();
    await call(server, '/events', token, { events });
    const rest = await call(server, `/events?have=${events.length - 2}`, token);
    expect(rest.body.events).toHaveLength(2);
  });

  test('a page that listens sees what another handed over', async () => {
    const server = await startReal();
    const token = newToken();
    const alone = await talkAlone(server);
    await call(server, '/events', token, { events: alone.events().slice(0, 2) });
    const { client } = await greet(server.url, token);
    await client.next('view');
    await call(server, '/events', token, { events: alone.events() });
    expect((await client.next('view')).view.verdict?.headline).toBe(alone.view()?.verdict?.headline);
  });

  test('events of every kind pass their own schema', async () => {
    const server = await startReal();
    const kinds = new Set<string>();
    for (const event of (await talkAlone(server)).events()) {
      kinds.add(event.kind);
      expect(eventSchemas[event.kind].parse(JSON.parse(JSON.stringify(event)))).toEqual(event);
    }
    expect([...kinds].sort()).toEqual(['answered', 'evaluated', 'forecast-attached', 'started', 'verdict-given']);
  });
});

type Change = (event: ConversationEvent) => object;
const verdictOnly =
  (change: (event: Extract<ConversationEvent, { kind: 'verdict-given' }>) => object): Change =>
  (event) =>
    event.kind === 'verdict-given' ? change(event) : event;

describe('what cannot be taken in is refused by code, and nothing of it counts', () => {
  test.each<readonly [string, string, Change]>([
    [
      'a better verdict than its facts give',
      'VERDICT_NOT_REPEATED',
      verdictOnly((event) => ({ ...event, decision: { ...event.decision, verdict: 'spray-today' } })),
    ],
    [
      'a trace with another outcome',
      'VERDICT_NOT_REPEATED',
      verdictOnly((event) => ({
        ...event,
        decision: {
          ...event.decision,
          trace: event.decision.trace.map((one, index) => (index === 0 ? { ...one, outcome: 'unknown' } : one)),
        },
      })),
    ],
    [
      'facts that its tag does not name',
      'VERDICT_NOT_REPEATED',
      verdictOnly((event) => ({ ...event, decision: { ...event.decision, facts: {} } })),
    ],
    [
      'a verdict under rules that the server does not have',
      'CONVERSATION_OTHER_RULES',
      verdictOnly((event) => ({
        ...event,
        decision: { ...event.decision, pack: { ...event.decision.pack, hash: 'f'.repeat(64) } },
      })),
    ],
  ])('%s', async (_what, code, change) => {
    const server = await startReal();
    const events = (await talkAlone(server, 'long-ing')).events();
    expect(events.findLast(({ kind }) => kind === 'verdict-given')).toMatchObject({
      decision: { verdict: 'do-not-spray' },
    });
    const token = newToken();
    const { body } = await call(server, '/events', token, { events: events.map(change) });
    expect(body.refused.length).toBeGreaterThan(0);
    expect(new Set(body.refused.map(({ error }: { error: { code: string } }) => error.code))).toEqual(new Set([code]));
  });

  test('a start under rules that the server does not have bars all that was said after it', async () => {
    const server = await startReal();
    const events = (await talkAlone(server)).events();
    const other = events.map((event) => (event.kind === 'started' ? { ...event, packHash: 'f'.repeat(64) } : event));
    const { body } = await call(server, '/events', newToken(), { events: other });
    expect([body.taken, body.refused.length, body.count]).toEqual([[], events.length, 0]);
  });

  test('an event that is there with other content', async () => {
    const server = await startReal();
    const events = (await talkAlone(server)).events();
    const token = newToken();
    await call(server, '/events', token, { events });
    const [started] = events;
    const { body } = await call(server, '/events', token, { events: [{ ...started, device: 'another' }] });
    expect(body).toMatchObject({ taken: [], refused: [{ id: started!.id, error: { code: 'EVENT_CHANGED' } }] });
  });

  test.each<readonly [string, string, string | null, unknown, number, string]>([
    ['no token', '/events', null, { events: [] }, 401, 'TOKEN_MISSING'],
    ['a token of another form', '/events', 'short', { events: [] }, 401, 'TOKEN_MISSING'],
    ['no list', '/events', newToken(), {}, 400, 'EVENTS_UNREADABLE'],
    ['an event of no kind', '/events', newToken(), { events: [{ kind: 'sayd' }] }, 400, 'EVENTS_UNREADABLE'],
    [
      'a field that is wrong',
      '/events',
      newToken(),
      { events: [{ kind: 'undone', of: 3 }] },
      400,
      'MESSAGE_FIELD_WRONG',
    ],
    ['too much', '/events', newToken(), { events: 'x'.repeat(1_100_000) }, 413, 'EVENTS_TOO_LARGE'],
    ['a conversation that is not kept', '/events?have=0', newToken(), undefined, 404, 'CONVERSATION_GONE'],
    ['a count that is none', '/events?have=-1', newToken(), undefined, 400, 'REQUEST_WRONG'],
    ['a place that is none', '/forecast?latitude=91&longitude=0', null, undefined, 400, 'REQUEST_WRONG'],
    ['no forecast to be had', '/forecast?latitude=52&longitude=-1.5', null, undefined, 502, 'FORECAST_OFF'],
  ])('%s', async (_what, path, token, body, status, code) => {
    const server = await startReal();
    const answer = await call(server, path, token, body);
    expect([answer.status, answer.body.error?.code ?? answer.body.code]).toEqual([status, code]);
  });

  test('what the store cannot keep', async () => {
    const store = createMemoryStore({ conversations: 10, idleHours: 1, events: 3, allEvents: 100 });
    const server = await startReal({ store });
    const events = (await talkAlone(server)).events();
    const { status, body } = await call(server, '/events', newToken(), { events });
    expect([status, body.error.code]).toEqual([400, 'CONVERSATION_FULL']);
  });

  test('requests that come too fast', async () => {
    const server = await startReal({ settings: { messagesPerSecond: 1, messageBurst: 2 } });
    const answers = [];
    for (let count = 0; count < 3; count += 1) answers.push((await call(server, '/fields', null)).status);
    expect(answers).toEqual([200, 200, 429]);
  });

  test('a page of another origin', async () => {
    const server = await startReal();
    const response = await fetch(`${server.url}/fields`, { headers: { origin: 'https://elsewhere.example' } });
    expect([response.status, (await response.json()).error.code]).toEqual([403, 'ORIGIN_REFUSED']);
  });
});

describe('what a page needs to answer by itself', () => {
  test('the packs come whole, and once', async () => {
    const server = await startReal({ coreVersion: '1.2.3' });
    const response = await fetch(`${server.url}/packs`);
    const body = await response.json();
    expect(body.coreVersion).toBe('1.2.3');
    expect(body.packs).toEqual(JSON.parse(JSON.stringify([shipped.pack])));
    const again = await fetch(`${server.url}/packs`, { headers: { 'if-none-match': response.headers.get('etag')! } });
    expect(again.status).toBe(304);
  });

  test('the fields come with what is known of them', async () => {
    const server = await startReal();
    const { body } = await call(server, '/fields', null);
    expect(body.fields).toEqual(
      JSON.parse(JSON.stringify(rapeFields.map(({ profile, inventedNow }) => ({ profile, inventedNow })))),
    );
  });
});
