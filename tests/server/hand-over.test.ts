import { describe, expect, test } from 'vitest';
import { securityHeaders } from '../../src/server/security-headers.ts';
import { greet, stampAt } from './support/chat-client.ts';
import { callServer, newToken, startReal, talkAlone } from './support/talk-alone.ts';
import type { TestServer } from './support/test-server.ts';

const day = 86_400_000;

async function ask(server: TestServer, method: string, path: string, token: string | null) {
  const headers = token === null ? {} : { authorization: `Bearer ${token}` };
  const response = await fetch(`${server.url}${path}`, { method, headers });
  return { status: response.status, body: (await response.json()) as Record<string, unknown> };
}

/** A conversation at its verdict on the server. */
async function talked(server: TestServer, field?: string): Promise<string> {
  const token = newToken();
  const alone = await talkAlone(server, field);
  await callServer(server, '/events', token, { events: alone.events() });
  return token;
}

async function show(server: TestServer, token: string): Promise<{ address: string; until: number; id: string }> {
  const { status, body } = await ask(server, 'POST', '/hand-over', token);
  expect(status).toBe(200);
  return body as { address: string; until: number; id: string };
}

async function page(server: TestServer, address: string) {
  const response = await fetch(`${server.url}${address}`);
  return { status: response.status, headers: response.headers, html: await response.text() };
}

describe('handing an answer over under a link', () => {
  test('the page shows the verdict, its reasons, answers, forecast, cautions and rules, without a script or the token', async () => {
    const server = await startReal();
    const token = await talked(server);
    const { address, until } = await show(server, token);
    expect(address).toMatch(/^\/shown\/[0-9a-f]{64}$/);
    expect(until).toBeCloseTo(server.time.clock.now() + 30 * 86_400, 0);
    const { status, headers, html } = await page(server, address);
    expect(status).toBe(200);
    for (const part of [
      'INVENTED',
      'Spray today',
      'Good until',
      'label in hand',
      'Forecast fetched',
      'version',
      'Dose',
    ]) {
      expect(html).toContain(part);
    }
    expect(html).not.toMatch(/<script|onload=|javascript:/i);
    expect(html).not.toContain(token);
    expect(html).toContain('name="robots" content="noindex, nofollow"');
    expect(headers.get('content-security-policy')).toContain("default-src 'none'");
    expect(headers.get('content-security-policy')).not.toContain('script-src');
    expect(headers.get('referrer-policy')).toBe('no-referrer');
    expect(headers.get('x-robots-tag')).toContain('noindex');
    expect(headers.get('cache-control')).toBe('no-store');
  });

  test('is in the language of the conversation where none is named, in English where the named one is not there', async () => {
    const server = await startReal();
    const token = await talked(server);
    const { client } = await greet(server.url, token);
    client.send({ type: 'request', ...stampAt(server.time.clock.now()), request: 'language', language: 'de' });
    while ((await client.next('view')).view.language !== 'de');
    const shownIn = async (query: string) => {
      const { body } = await ask(server, 'POST', `/hand-over${query}`, token);
      return /<html lang="(\w+)"/.exec((await page(server, String(body['address']))).html)?.[1];
    };
    expect(await shownIn('')).toBe('de');
    expect(await shownIn('?language=en')).toBe('en');
    expect(await shownIn('?language=xx')).toBe('en');
  });

  test('what was shown is never rewritten: what is said later does not change it', async () => {
    const server = await startReal();
    const token = await talked(server, 'long-ing');
    const { address } = await show(server, token);
    const before = (await page(server, address)).html;
    const again = await talkAlone(server, 'mill-piece');
    await callServer(server, '/events', token, { events: again.events() });
    expect((await page(server, address)).html).toBe(before);
  });

  test('a spray-today is struck out once it has grown too old, and an open page withdraws it by itself at that moment', async () => {
    const server = await startReal();
    const { address } = await show(server, await talked(server));
    const { html } = await page(server, address);
    const seconds = Number(/\.once-old\{animation:come 1ms (\d+)s both\}/.exec(html)?.[1]);
    expect(seconds).toBeGreaterThan(60);
    expect(html).toContain('<h2 class="sheet-verdict until-old">Spray today');
    server.time.advance((seconds + 1) * 1000);
    const after = (await page(server, address)).html;
    expect(after).toContain('<s>Spray today');
    expect(after).not.toMatch(/<h2[^>]*>Spray today|<style/);
  });

  test('a link ends on its day, and is gone at once when its maker takes it back', async () => {
    const server = await startReal({ settings: { shownDays: 2 } });
    const token = await talked(server);
    const [first, second] = [await show(server, token), await show(server, token)];
    expect((await ask(server, 'GET', '/hand-over', token)).body).toMatchObject({
      links: [{ id: second.id }, { id: first.id }],
    });
    expect((await ask(server, 'DELETE', `/hand-over/${first.id}`, token)).status).toBe(200);
    const gone = await page(server, first.address);
    expect(gone.status).toBe(404);
    expect(gone.html).toContain('Do not spray on an answer that cannot be read.');
    expect((await page(server, second.address)).status).toBe(200);
    server.time.advance(2 * day);
    expect((await page(server, second.address)).status).toBe(404);
  });

  test("another's link cannot be taken back, and is told apart from none by nothing", async () => {
    const server = await startReal();
    const { id, address } = await show(server, await talked(server));
    const other = await ask(server, 'DELETE', `/hand-over/${id}`, newToken());
    const none = await ask(server, 'DELETE', `/hand-over/${'0'.repeat(64)}`, newToken());
    expect(other).toMatchObject({ status: 404, body: { error: { code: 'SHOWN_GONE' } } });
    expect(none).toEqual(other);
    expect((await page(server, address)).status).toBe(200);
  });

  test.each([
    ['no token', null, 401, 'TOKEN_MISSING'],
    ['a token that is not kept', newToken(), 404, 'CONVERSATION_GONE'],
  ])('%s is refused with a code', async (_, token, status, code) => {
    const server = await startReal();
    expect(await ask(server, 'POST', '/hand-over', token)).toMatchObject({ status, body: { error: { code } } });
  });

  test('where no answer stands there is nothing to hand over', async () => {
    const server = await startReal();
    const token = newToken();
    const alone = await talkAlone(server);
    await callServer(server, '/events', token, { events: alone.events().slice(0, 2) });
    expect(await ask(server, 'POST', '/hand-over', token)).toMatchObject({
      status: 409,
      body: { error: { code: 'HAND_OVER_NOTHING' } },
    });
  });

  test('the microphone is for this page alone', () => {
    expect(securityHeaders('a.example')['permissions-policy']).toMatch(/\bmicrophone=\(self\)/);
  });
});
