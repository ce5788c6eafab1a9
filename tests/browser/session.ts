import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import { launchBrowser } from './browser.ts';
import { type PageServer, startPageServer } from './page-server.ts';

/** A phone held upright, and a desktop. */
export const viewports = [
  { width: 390, height: 844 },
  { width: 1280, height: 900 },
] as const;

let browser: Browser;
let server: PageServer;

/** One browser and one server for all tests of the file that calls it. */
export function shareBrowser(options: Parameters<typeof startPageServer>[1] = {}): void {
  beforeAll(async () => {
    [browser, server] = await Promise.all([launchBrowser(), startPageServer(undefined, options)]);
  });
  afterAll(async () => {
    await browser?.close();
    await server?.end();
  });
}

/** The server of the tests. */
export function pageServer(): PageServer {
  return server;
}

/** The browser of the tests. */
export function sharedBrowser(): Browser {
  return browser;
}

/** For `before`: a browser without service workers, where nothing that was kept comes at once. */
export async function withoutWorker(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Reflect.deleteProperty(Navigator.prototype, 'serviceWorker');
  });
}

/** Runs `use` on the start screen in a fresh profile, and holds that no policy was violated and no script failed. */
export async function onPage(
  options: BrowserContextOptions,
  use: (page: Page) => Promise<void>,
  before: (page: Page) => Promise<void> = async () => {},
): Promise<void> {
  const context = await browser.newContext({ viewport: viewports[0], ...options });
  context.setDefaultTimeout(30_000);
  const faults: string[] = [];
  try {
    const page = await context.newPage();
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => {
      if (/Content Security Policy|Refused to/i.test(message.text())) faults.push(message.text());
    });
    await before(page);
    await page.goto(server.url());
    await page.getByRole('heading', { name: 'Which field?' }).waitFor();
    await use(page);
    expect(faults).toEqual([]);
  } finally {
    await context.close();
  }
}
