import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startTestServer } from './support/test-server.ts';

let folder = '';
let webRoot = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'web-'));
  webRoot = join(folder, 'web');
  await mkdir(join(webRoot, 'assets'), { recursive: true });
  await writeFile(join(folder, 'secret.txt'), 'SECRET');
  await writeFile(join(folder, 'secret.html'), 'SECRET');
  await symlink(join(folder, 'secret.txt'), join(webRoot, 'linked.txt'));
  await symlink(folder, join(webRoot, 'up'));
  await writeFile(join(webRoot, 'index.html'), `<!doctype html><title>Loamward</title>${' '.repeat(500)}`);
  await writeFile(join(webRoot, '.env'), 'SECRET');
  await writeFile(join(webRoot, 'notes.map'), 'SECRET');
  await writeFile(join(webRoot, 'assets', 'index-DfG3h_k2.js'), 'export {};');
  await writeFile(join(webRoot, 'assets', 'plain.css'), 'body{}');
  await writeFile(join(webRoot, 'app.webmanifest'), '{}');
});
afterAll(() => rm(folder, { recursive: true }));

/** One request exactly as written: fetch would tidy the path. */
async function rawGet(url: string, target: string, method = 'GET'): Promise<string> {
  const { hostname, port } = new URL(url);
  const socket = connect(Number(port), hostname);
  socket.write(`${method} ${target} HTTP/1.1\r\nhost: ${hostname}:${port}\r\nconnection: close\r\n\r\n`);
  return text(socket);
}

describe('pages', () => {
  test.each([
    ['/', 'text/html; charset=utf-8', 'no-cache'],
    ['/index.html', 'text/html; charset=utf-8', 'no-cache'],
    ['/assets/index-DfG3h_k2.js', 'text/javascript; charset=utf-8', 'public, max-age=31536000, immutable'],
    ['/assets/plain.css', 'text/css; charset=utf-8', 'no-cache'],
    ['/app.webmanifest', 'application/manifest+json; charset=utf-8', 'no-cache'],
  ])('%s is served as %s, kept as %s', async (path, type, kept) => {
    const { url } = await startTestServer({ webRoot });
    const reply = await fetch(url + path);
    expect([reply.status, reply.headers.get('content-type'), reply.headers.get('cache-control')]).toEqual([
      200,
      type,
      kept,
    ]);
    const again = await fetch(url + path, { headers: { 'if-none-match': reply.headers.get('etag')! } });
    expect([again.status, await again.text()]).toEqual([304, '']);
  });

  test.each([
    ['br', 'br'],
    ['gzip, deflate, br', 'br'],
    ['gzip', 'gzip'],
    ['gzip;q=0.5, br;q=0', 'gzip'],
    ['GZIP ; q=1', 'gzip'],
    ['identity', null],
    ['gzip;q=0', null],
    ['x-gzipped, broken', null],
  ])('a client that takes %s gets the smallest form of those: %s', async (takes, encoding) => {
    const { url } = await startTestServer({ webRoot });
    const reply = await fetch(url, { headers: { 'accept-encoding': takes } });
    const plain = await fetch(url, { headers: { 'accept-encoding': 'identity' } });
    expect(reply.headers.get('content-encoding')).toBe(encoding);
    expect(await reply.text()).toBe(await plain.text());
  });

  test.each([
    '/../secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/%2e%2e%2fsecret.html',
    '/assets/../../secret.html',
    '/assets/..%5c..%5csecret.html',
    '/..\\secret.txt',
    '//secret.txt',
    '/./../secret.html',
    '/linked.txt',
    '/up/secret.txt',
    '/up/secret.html',
    '/.env',
    '/notes.map',
    '/index.html%00.js',
    '/index.html/',
    '/%zz',
    '/assets/',
    '/constructor',
    '/__proto__',
    'http://elsewhere.example/secret.html',
  ])('%s serves no file from outside the page', async (target) => {
    const { url } = await startTestServer({ webRoot });
    const reply = await rawGet(url, target);
    expect(reply).toMatch(/^HTTP\/1\.1 40[04] /);
    expect(reply).not.toContain('SECRET');
    expect(reply).toMatch(/"code":"(ROUTE_UNKNOWN|REQUEST_WRONG)"/);
    expect(reply).toContain("default-src 'none'");
  });

  test.each(['POST', 'PUT', 'DELETE', 'OPTIONS'])('%s finds nothing', async (method) => {
    const { url } = await startTestServer({ webRoot });
    expect(await rawGet(url, '/', method)).toMatch(/^HTTP\/1\.1 404 .*"code":"ROUTE_UNKNOWN"/s);
  });

  test('a page that is not built is said, with what to do', async () => {
    const { url } = await startTestServer();
    const reply = await fetch(url);
    expect([reply.status, await reply.json()]).toEqual([
      503,
      expect.objectContaining({ code: 'PAGE_NOT_BUILT', next: expect.stringContaining('npm run build') }),
    ]);
  });
});

describe('every answer', () => {
  test.each(['/', '/health', '/nothing', '/chat'])('%s carries the strict headers', async (path) => {
    const { url } = await startTestServer({ webRoot });
    const { headers } = await fetch(url + path);
    const policy = headers.get('content-security-policy')!;
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    expect(Object.fromEntries(policy.split('; ').map((each) => each.split(/ (.*)/, 2)))).toEqual({
      'default-src': "'none'",
      'script-src': "'self'",
      'style-src': "'self'",
      'img-src': "'self' data:",
      'connect-src': `'self' ws://${new URL(url).host} wss://${new URL(url).host}`,
      'manifest-src': "'self'",
      'worker-src': "'self'",
      'base-uri': "'none'",
      'form-action': "'none'",
      'frame-ancestors': "'none'",
    });
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('referrer-policy')).toBe('no-referrer');
    expect(headers.get('cross-origin-opener-policy')).toBe('same-origin');
    expect(headers.get('permissions-policy')).toContain('camera=()');
    expect(headers.get('x-powered-by')).toBeNull();
  });

  test('health names the pack by its hash', async () => {
    const { url } = await startTestServer();
    const reply = await fetch(`${url}/health`);
    expect([reply.status, await reply.json()]).toEqual([
      200,
      {
        status: 'ok',
        pack: { id: 'empty', version: '0.0.0', hash: '0'.repeat(64) },
        rules: { overlays: [], refused: null },
        others: [],
      },
    ]);
  });

  test('a plain request for the socket is told to upgrade', async () => {
    const { url } = await startTestServer();
    const reply = await fetch(`${url}/chat`);
    expect([reply.status, ((await reply.json()) as { code: string }).code]).toEqual([426, 'UPGRADE_NEEDED']);
  });
});

describe('listening', () => {
  test('a port that is taken is said by its code', async () => {
    const { url } = await startTestServer();
    const { startServer } = await import('../../src/server/main.ts');
    const { standardServerSettings } = await import('../../src/server/settings.ts');
    const { emptyPack } = await import('./support/pack.ts');
    const taken = startServer({
      settings: { ...standardServerSettings, port: Number(new URL(url).port) },
      packs: [emptyPack],
      webRoot,
      forecastService: { forecastFor: async () => Promise.reject(new Error('not asked')) },
    });
    await expect(taken).rejects.toMatchObject({
      code: 'PORT_TAKEN',
      details: { expected: expect.stringContaining('127.0.0.1:'), came: 'another program listens there' },
    });
  });

  test('the standard address is reached from this machine only', async () => {
    const { url } = await startTestServer();
    expect(new URL(url).hostname).toBe('127.0.0.1');
  });
});
