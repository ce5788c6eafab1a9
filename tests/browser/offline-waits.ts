import type { Page } from 'playwright-core';

/** The foot of a page that can go on without a signal, also after it is opened anew. */
const lasting = 'This page can go on without a signal, also after it is closed and opened again.';

/** Waits until the page has all that it needs to go on alone. */
export async function untilReady(page: Page): Promise<void> {
  await page.getByText(lasting).waitFor({ timeout: 30_000 });
}

/** Waits until the page answers by itself. */
export async function untilAlone(page: Page): Promise<void> {
  await page
    .getByRole('status')
    .getByText(/this page answers by itself/)
    .waitFor({ timeout: 30_000 });
}

/** Waits until what was said is handed over and the server answers again. */
export async function untilBack(page: Page): Promise<void> {
  await page.waitForFunction(() => localStorage.getItem('loamward.alone') === null, undefined, { timeout: 60_000 });
}
