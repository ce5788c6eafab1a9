import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import { pageServer, sharedBrowser, viewports } from './session.ts';

/** The token of the conversation that the page holds. */
export async function tokenOf(page: Page): Promise<string> {
  return (await page.evaluate(() => localStorage.getItem('loamward.token'))) ?? '';
}

/** Ids of all events of a conversation that the page keeps in its database, sorted. */
export async function idsInPage(page: Page, token: string): Promise<string[]> {
  return page.evaluate(
    (of) =>
      new Promise<string[]>((resolve, reject) => {
        const opening = indexedDB.open('loamward');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const asked = opening.result.transaction('events').objectStore('events').index('token').getAll(of);
          asked.onsuccess = () => {
            opening.result.close();
            resolve(asked.result.map(({ id }: { id: string }) => id).sort());
          };
        };
      }),
    token,
  );
}

/** Holds that the server keeps each event once, and all that the page has. */
export async function expectOnServerOnce(page: Page): Promise<void> {
  const token = await tokenOf(page);
  const kept = (await pageServer().kept(token)).map(({ id }) => id);
  expect(new Set(kept).size).toBe(kept.length);
  expect(kept).toEqual(expect.arrayContaining(await idsInPage(page, token)));
}

/** Runs `use` in a fresh profile with a page at the start screen; policy violations and script faults fail it. */
export async function inProfile(use: (page: Page, context: BrowserContext) => Promise<void>): Promise<void> {
  const context = await sharedBrowser().newContext({ viewport: viewports[0] });
  context.setDefaultTimeout(30_000);
  const faults: string[] = [];
  context.on('page', (page) => {
    page.on('pageerror', (error) => faults.push(error.message));
    page.on('console', (message) => {
      if (/Content Security Policy|Refused to/i.test(message.text())) faults.push(message.text());
    });
  });
  try {
    const page = await context.newPage();
    await page.goto(pageServer().url());
    await page.getByRole('heading', { name: 'Which field?' }).waitFor();
    await use(page, context);
    expect(faults).toEqual([]);
  } finally {
    await context.close();
  }
}
