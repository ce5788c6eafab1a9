import type { Browser, Page } from 'playwright-core';
import { answerOnce, chooseField, fitDay, questionHeading } from '../browser/answers.ts';
import { launchBrowser } from '../browser/browser.ts';
import { untilAlone, untilReady } from '../browser/offline-waits.ts';
import { type PageServer, startPageServer } from '../browser/page-server.ts';

/** A slow mobile connection: 400 kbit/s both ways, 400 ms there and back. */
const slow3g = { offline: false, latency: 400, downloadThroughput: 50_000, uploadThroughput: 50_000 };
const runs = 5;
const phone = { width: 390, height: 844 };

/** `npm run speed`: how soon the first question is there on a slow connection, and the next one without any. */
export async function main(): Promise<number> {
  const [browser, server] = await Promise.all([launchBrowser(), startPageServer(process.cwd())]);
  const say = (line: string) => process.stdout.write(`${line}\n`);
  try {
    const choices: number[] = [];
    const questions: number[] = [];
    for (let run = 0; run < runs; run += 1) {
      const [choice, question] = await firstQuestion(browser, server);
      choices.push(choice);
      questions.push(question);
    }
    say(`first question (which field), slow 3G: ${summary(choices)}`);
    say(`from the field pressed to the question about it, slow 3G: ${summary(questions)}`);
    const answers: Answered[] = [];
    for (let run = 0; run < runs; run += 1) answers.push(...(await answersAlone(browser, server)));
    const of = (isVerdict: boolean) =>
      summary(answers.filter((one) => one.isVerdict === isVerdict).map(({ ms }) => ms));
    say(`answer to the next question, no connection: ${of(false)}`);
    say(`last answer to the verdict with the days ahead, no connection: ${of(true)}`);
  } finally {
    await browser.close();
    await server.end();
  }
  return 0;
}

/** How long one answer took, and whether the verdict came of it. */
interface Answered {
  readonly ms: number;
  readonly isVerdict: boolean;
}

/** In a fresh profile, ms: from opening the address to the choice of a field, and from pressing it to the question about it. */
async function firstQuestion(browser: Browser, server: PageServer): Promise<readonly [number, number]> {
  const context = await browser.newContext({ viewport: phone });
  const page = await context.newPage();
  const network = await context.newCDPSession(page);
  await network.send('Network.enable');
  await network.send('Network.emulateNetworkConditions', slow3g);
  await page.addInitScript(watchFor, 'Mill Piece');
  await page.goto(server.url(), { waitUntil: 'commit' });
  await page.getByRole('button', { name: 'Mill Piece' }).waitFor();
  const choice = await page.evaluate(() => (globalThis as unknown as { shownAt: number }).shownAt);
  await page.evaluate(watchNext, [questionHeading, '[data-heading="verdict"]'] as const);
  await chooseField(page, 'Mill Piece');
  const [question] = await timesOf(page);
  await context.close();
  return [choice, question?.ms ?? Number.NaN];
}

/** Every answer of a conversation that is held without a connection, ms from the press to what follows on the screen. */
async function answersAlone(browser: Browser, server: PageServer): Promise<Answered[]> {
  const context = await browser.newContext({ viewport: phone });
  const page = await context.newPage();
  await page.goto(server.url());
  await chooseField(page, 'Mill Piece');
  await untilReady(page);
  const times: Answered[] = [];
  await server.closeFor(async () => {
    await untilAlone(page);
    await page.evaluate(watchNext, [questionHeading, '[data-heading="verdict"]'] as const);
    while ((await page.locator(questionHeading).count()) > 0) await answerOnce(page, fitDay);
    times.push(...(await timesOf(page)));
  });
  await context.close();
  return times;
}

/** In the page: notes when a text was first there and drawn, ms from opening the address. A wait from outside looks only now and then. */
function watchFor(text: string): void {
  const observer = new MutationObserver(() => {
    if (!document.body?.textContent?.includes(text)) return;
    observer.disconnect();
    requestAnimationFrame(() => Object.assign(globalThis, { shownAt: performance.now() }));
  });
  observer.observe(document, { childList: true, subtree: true, characterData: true });
}

/** In the page: notes for each press how long it took until another question or verdict was there and drawn. */
function watchNext([question, verdict]: readonly [string, string]): void {
  const times: Answered[] = [];
  Object.assign(globalThis, { answerTimes: times });
  const shown = () =>
    document.querySelector(question)?.textContent ?? document.querySelector(verdict)?.textContent ?? '';
  let pressed = Number.NaN;
  let before = shown();
  addEventListener(
    'click',
    () => {
      pressed = performance.now();
      before = shown();
    },
    { capture: true },
  );
  new MutationObserver(() => {
    if (Number.isNaN(pressed) || shown() === before || shown() === '') return;
    const from = pressed;
    pressed = Number.NaN;
    const isVerdict = document.querySelector(question) === null;
    requestAnimationFrame(() => times.push({ ms: performance.now() - from, isVerdict }));
  }).observe(document.body, { childList: true, subtree: true, characterData: true });
}

async function timesOf(page: Page): Promise<Answered[]> {
  await page.waitForFunction(() => (globalThis as unknown as { answerTimes: Answered[] }).answerTimes.length > 0);
  return page.evaluate(() => (globalThis as unknown as { answerTimes: Answered[] }).answerTimes);
}

function summary(times: readonly number[]): string {
  const ordered = [...times].sort((a, b) => a - b);
  const at = (share: number) => Math.round(ordered[Math.min(ordered.length - 1, Math.floor(ordered.length * share))]!);
  return `median ${at(0.5)} ms, worst ${at(1)} ms (${ordered.length})`;
}
