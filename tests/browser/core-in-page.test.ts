import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { build } from 'esbuild';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { decideFacts } from '../../src/core/dialogue/decide.ts';
import { parseInstant } from '../../src/core/dialogue/moment.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { securityHeaders } from '../../src/server/security-headers.ts';
import { shipped } from '../cases/shipped-pack.ts';
import { root } from '../repo/files.ts';
import { launchBrowser } from './browser.ts';

const noon = epochSeconds(Date.UTC(2026, 10, 6, 12) / 1000);

/** Every case as the page and Node are asked it. */
const asked = shipped.cases.map(({ name, facts, at }) => ({
  name,
  request: { facts, at: at === undefined ? null : parseInstant(at), now: noon, forecast: null, language: 'en' },
}));

let browser: Browser;
let server: Server;
let page: Page;

beforeAll(async () => {
  const script = await coreForBrowsers();
  server = createServer((request, response) => {
    const isScript = request.url === '/core.js';
    for (const [name, value] of Object.entries(securityHeaders(request.headers.host))) {
      if (value !== undefined) response.setHeader(name, String(value));
    }
    response.setHeader('content-type', isScript ? 'text/javascript' : 'text/html; charset=utf-8');
    response.end(
      isScript ? script : '<!doctype html><title>core</title><script type="module" src="/core.js"></script>',
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  browser = await launchBrowser();
  page = await browser.newPage();
});

afterAll(async () => {
  await browser?.close();
  await new Promise((resolve) => server.close(resolve));
});

test('the core gives every case the same whole answer in the page as in Node, under the strict policy', async () => {
  const broken: string[] = [];
  page.on('console', (message) => broken.push(message.text()));
  page.on('pageerror', (error) => broken.push(String(error)));
  await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  await page.waitForFunction(() => 'decideAll' in globalThis);
  const inPage: string[] = await page.evaluate(
    ([pack, requests]) =>
      (globalThis as unknown as { decideAll: (pack: unknown, requests: unknown) => Promise<string[]> }).decideAll(
        pack,
        requests,
      ),
    [shipped.pack, asked.map(({ request }) => request)] as const,
  );
  const different: string[] = [];
  for (const [index, { name, request }] of asked.entries()) {
    const inNode = JSON.stringify(await decideFacts({ ...request, pack: shipped.pack }));
    if (inPage[index] !== inNode) different.push(`${name}: ${firstDifference(inPage[index] ?? '', inNode)}`);
  }
  expect(broken).toEqual([]);
  expect(different).toEqual([]);
});

/** Where two texts part, with a little on either side. */
function firstDifference(a: string, b: string): string {
  const at = [...a].findIndex((letter, index) => letter !== b[index]);
  return `${a.slice(Math.max(0, at - 60), at + 40)} | ${b.slice(Math.max(0, at - 60), at + 40)}`;
}

/** The core bundled for a browser: a Node module in it would fail the build. */
async function coreForBrowsers(): Promise<Uint8Array> {
  const { outputFiles } = await build({
    stdin: {
      contents: `import { decideFacts } from './src/core/dialogue/decide.ts';
        globalThis.decideAll = (pack, requests) =>
          Promise.all(requests.map(async (request) => JSON.stringify(await decideFacts({ ...request, pack }))));`,
      resolveDir: root,
      loader: 'ts',
    },
    bundle: true,
    platform: 'browser',
    format: 'esm',
    write: false,
    logLevel: 'silent',
  });
  return outputFiles[0]!.contents;
}
