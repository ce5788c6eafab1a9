import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { createRequire } from 'node:module';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { build } from 'esbuild';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { securityHeaders } from '../../src/server/security-headers.ts';
import { shipped } from '../cases/shipped-pack.ts';
import { root } from '../repo/files.ts';
import { fullView } from '../web/outlook-views.ts';
import { launchBrowser } from './browser.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const shell = `<!doctype html><html lang="en"><title>figures</title><link rel="stylesheet" href="/page.css">
<meta name="viewport" content="width=device-width"><main id="main"></main><script type="module" src="/page.js"></script></html>`;

let browser: Browser;
let server: Server;

/** The figures alone over an invented outlook, with the page's styles and policy. */
beforeAll(async () => {
  const [script, style] = await Promise.all([
    bundle(
      `import { render, h } from 'preact';
       import { Outlook } from './web/figures/outlook.tsx';
       import { loadLaterWords, loadWords } from './web/words.ts';
       import english from './web/words/en/index.ts';
       import later from './web/words/en/later.ts';
       languages['./words/en/index.ts'] = async () => english;
       languages['./words/en/later.ts'] = async () => later;
       await Promise.all([loadWords('en'), loadLaterWords()]);
       render(h('div', { class: 'page' }, h('h1', null, 'Figures'), h(Outlook, { outlook: ${JSON.stringify(fullView(shipped.pack))} })), document.getElementById('main'));`,
      'tsx',
    ),
    bundle('@import "./web/styles/main.css";', 'css'),
  ]);
  server = createServer((request, response) => {
    for (const [name, value] of Object.entries(securityHeaders(request.headers.host))) {
      if (value !== undefined) response.setHeader(name, String(value));
    }
    const [type, body] =
      request.url === '/page.js'
        ? ['text/javascript', script]
        : request.url === '/page.css'
          ? ['text/css', style]
          : ['text/html; charset=utf-8', shell];
    response.setHeader('content-type', type);
    response.end(body);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  browser = await launchBrowser();
});

afterAll(async () => {
  await browser?.close();
  await new Promise((resolve) => server.close(resolve));
});

async function bundle(contents: string, loader: 'tsx' | 'css'): Promise<Uint8Array> {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: root, sourcefile: join(root, `figures.${loader}`), loader },
    bundle: true,
    format: 'esm',
    define: { 'import.meta.glob': 'languageFiles' },
    banner: loader === 'css' ? {} : { js: 'const languages = {}; const languageFiles = () => languages;' },
    jsx: 'automatic',
    jsxImportSource: 'preact',
    write: false,
    logLevel: 'silent',
  });
  return outputFiles[0]!.contents;
}

/** Shows the figures, all unfolded, and holds that no policy was violated and no script failed. */
async function onFigures(options: BrowserContextOptions, use: (page: Page) => Promise<void>): Promise<void> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, ...options });
  const faults: string[] = [];
  try {
    const page = await context.newPage();
    page.on('console', (message) => faults.push(message.text()));
    page.on('pageerror', (error) => faults.push(String(error)));
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    await page.locator('.outlook').first().waitFor();
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll('details')) fold.open = true;
    });
    await use(page);
    expect(faults).toEqual([]);
  } finally {
    await context.close();
  }
}

describe('the figures of the coming days', () => {
  test.each([
    { viewport: { width: 390, height: 844 }, colorScheme: 'light' },
    { viewport: { width: 390, height: 844 }, colorScheme: 'dark' },
    { viewport: { width: 1280, height: 900 }, colorScheme: 'light' },
    { viewport: { width: 390, height: 844 }, forcedColors: 'active' },
  ] as const)('axe finds nothing, and each has a name, a description and a table: %o', async (options) => {
    await onFigures(options, async (page) => {
      await page.evaluate(axe);
      const found = await page.evaluate(async () => {
        const { violations } = await (globalThis as unknown as { axe: typeof import('axe-core') }).axe.run(document);
        return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
      });
      expect(found).toEqual([]);
      const figures = page.locator('.figure');
      expect(await figures.count()).toBe(4);
      for (const figure of await figures.all()) {
        expect(await figure.locator('svg[role="img"] > title').textContent()).toMatch(/\w/);
        expect(await figure.locator('figcaption').textContent()).toMatch(/\d/);
        expect(await figure.locator('tbody tr').count()).toBeGreaterThan(3);
      }
    });
  });

  test.each([1, 2])(
    'fit a phone of 320 px with text at %i times its size, and words in a figure stay readable',
    async (times) => {
      await onFigures({ viewport: { width: 320, height: 800 } }, async (page) => {
        const size = await page.evaluate((factor) => {
          document.documentElement.style.fontSize = `${factor * 112.5}%`;
          const words = [...document.querySelectorAll('.figure text')].map((one) => one.getBoundingClientRect().height);
          return {
            over: document.documentElement.scrollWidth - document.documentElement.clientWidth,
            smallest: Math.min(...words),
          };
        }, times);
        expect(size.over).toBe(0);
        expect(size.smallest).toBeGreaterThan(10);
      });
    },
  );

  test('no words of a figure lie over others or beyond its edge', async () => {
    await onFigures({}, async (page) => {
      const faults = await page.locator('.figure > svg').evaluateAll((all) =>
        all.flatMap((svg) => {
          const edge = svg.getBoundingClientRect();
          const boxes = [...svg.querySelectorAll('.fig-words text')].map((one) => ({
            text: one.textContent,
            box: one.getBoundingClientRect(),
          }));
          const beyond = boxes.filter(
            ({ box }) => box.left < edge.left - 1 || box.right > edge.right + 1 || box.bottom > edge.bottom + 1,
          );
          const over = boxes.filter(({ box }, index) =>
            boxes
              .slice(0, index)
              .some(
                (other) =>
                  box.left < other.box.right &&
                  other.box.left < box.right &&
                  box.top + 3 < other.box.bottom &&
                  other.box.top + 3 < box.bottom,
              ),
          );
          return [...beyond, ...over].map(({ text }) => text);
        }),
      );
      expect(faults).toEqual([]);
    });
  });
});
