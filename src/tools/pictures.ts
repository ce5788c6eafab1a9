import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { answerAll, answerOnce, chooseField, fitDay, questionHeading } from '../../tests/browser/answers.ts';
import { launchBrowser } from '../../tests/browser/browser.ts';
import { startPageServer } from '../../tests/browser/page-server.ts';

const folder = join('docs', 'pictures');
const phone = { width: 390, height: 844 };
const desktop = { width: 1280, height: 900 };

/** One picture of the page: how it is looked at and what is done before. */
interface Shot {
  readonly name: string;
  readonly options?: BrowserContextOptions;
  readonly look?: 'day' | 'night' | 'sun';
  readonly does: (page: Page) => Promise<void>;
  readonly media?: 'print';
}

const unfold = (page: Page, title: string) => page.getByText(title, { exact: true }).first().click();

async function toQuestion(page: Page, words: RegExp): Promise<void> {
  while (!words.test((await page.locator(questionHeading).textContent()) ?? '')) await answerOnce(page, fitDay);
}

async function toVerdict(page: Page, field: string): Promise<void> {
  await chooseField(page, field);
  await answerAll(page, fitDay);
}

async function withDrawing(page: Page, words: RegExp): Promise<void> {
  await chooseField(page, 'Mill Piece');
  await toQuestion(page, words);
  await unfold(page, 'How do I find out?');
  await page.locator('.picture').first().waitFor();
  await page.locator('.picture, .picture-table').first().scrollIntoViewIfNeeded();
}

const shots: readonly Shot[] = [
  { name: 'start-phone', does: async () => {} },
  {
    name: 'question-phone',
    does: async (page) => {
      await chooseField(page, 'Mill Piece');
      await toQuestion(page, /how warm/i);
    },
  },
  { name: 'drawing-phone', does: (page) => withDrawing(page, /how warm/i) },
  {
    name: 'feel-phone',
    does: async (page) => {
      await chooseField(page, 'Mill Piece');
      await page.locator('.question-part', { hasText: /feel/ }).getByText('How do I find out?').click();
      await page.locator('.picture-table').first().waitFor();
      await page.locator('.picture-table thead').evaluate((one) => one.scrollIntoView());
    },
  },
  { name: 'conversation-phone', does: (page) => toVerdict(page, 'Mill Piece') },
  { name: 'wait-night', look: 'night', does: (page) => toVerdict(page, 'Top Brow') },
  { name: 'do-not-spray-sun', look: 'sun', does: (page) => toVerdict(page, 'Long Ing') },
  {
    name: 'question-sun',
    look: 'sun',
    does: async (page) => {
      await chooseField(page, 'Mill Piece');
      await toQuestion(page, /surface/);
    },
  },
  { name: 'desktop', options: { viewport: desktop }, does: (page) => toVerdict(page, 'Mill Piece') },
  {
    name: 'print',
    options: { viewport: { width: 720, height: 1018 } },
    media: 'print',
    does: async (page) => {
      await toVerdict(page, 'Mill Piece');
      await unfold(page, 'Print, send or show this answer');
      await page.locator('.print-only').waitFor({ state: 'attached' });
    },
  },
  {
    name: 'shown-phone',
    does: async (page) => {
      await toVerdict(page, 'Mill Piece');
      await unfold(page, 'Print, send or show this answer');
      await page.getByRole('button', { name: 'Make a link' }).click();
      const address = await page.locator('.address').getAttribute('href');
      await page.goto(new URL(address ?? '/', page.url()).href);
    },
  },
  {
    name: 'speaking-phone',
    look: 'day',
    does: async (page) => {
      await chooseField(page, 'Mill Piece');
      await page.getByRole('button', { name: 'Settings' }).click();
      await page.getByLabel('Let me speak').check();
      await page.getByLabel('Read questions').check();
      await page.locator(questionHeading).evaluate((one) => one.closest('section')?.scrollIntoView());
    },
  },
  {
    name: 'hand-over-phone',
    does: async (page) => {
      await toVerdict(page, 'Mill Piece');
      await unfold(page, 'Print, send or show this answer');
      await page.getByRole('button', { name: 'Make a link' }).click();
      await page.locator('.address').waitFor();
      await page.getByText('Print, send or show this answer').evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'practice-phone',
    does: async (page) => {
      await page.getByRole('link', { name: 'Practice days' }).first().click();
      await page.getByRole('button', { name: 'Wait', exact: true }).click();
      await page.locator('#own-reason').fill('the soil is too warm');
      await page.keyboard.press('Enter');
      await page.locator('#answer-heading').evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'settings-phone',
    does: async (page) => {
      await page.getByRole('button', { name: 'Settings' }).click();
    },
  },
];

/** Takes the pictures of the documents anew, of the invented farm only. Names after the command take those alone. */
export async function main(names: readonly string[]): Promise<number> {
  await mkdir(folder, { recursive: true });
  const [browser, server] = await Promise.all([launchBrowser(), startPageServer(process.cwd())]);
  try {
    for (const shot of shots) {
      if (names.length > 0 && !names.includes(shot.name)) continue;
      const bytes = await take(browser, server.url(), shot);
      process.stdout.write(`${String(bytes).padStart(8)}  ${shot.name}.png\n`);
    }
  } finally {
    await browser.close();
    await server.end();
  }
  return 0;
}

async function take(browser: Browser, url: string, shot: Shot): Promise<number> {
  const context = await browser.newContext({ viewport: phone, reducedMotion: 'reduce', ...shot.options });
  try {
    const page = await context.newPage();
    if (shot.look) {
      await page.addInitScript((look) => localStorage.setItem('loamward.comfort', JSON.stringify({ look })), shot.look);
    }
    await page.goto(url);
    await page.getByRole('heading', { name: 'Which field?' }).waitFor();
    await shot.does(page);
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    if (shot.media) {
      await page.emulateMedia({ media: shot.media });
      await page.evaluate(() => scrollTo(0, 0));
    }
    await page.waitForFunction(() => document.fonts.status === 'loaded');
    const png = await page.screenshot();
    await writeFile(join(folder, `${shot.name}.png`), png);
    return png.length;
  } finally {
    await context.close();
  }
}
