import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { shipped } from '../../cases/shipped-pack.ts';
import { answerAll, answerOnce, chooseField, fitDay, questionHeading, textOf, verdictHeading } from '../answers.ts';
import { expectOnServerOnce, inProfile, tokenOf, untilAlone, untilBack, untilReady } from '../offline-steps.ts';
import { pageServer } from '../session.ts';

const twoDays = 2 * 24 * 3600;

/** A forecast that is not invented, fetched so long before now. */
function forecastOf(hoursAgo: number) {
  const {
    invented: _no,
    note: _none,
    ...forecast
  } = inventedForecast(epochSeconds(Date.now() / 1000 - hoursAgo * 3600));
  const place = { ...forecast.place, askedLatitude: 54.1, askedLongitude: -2.2 };
  return { ...forecast, place, attribution: 'A weather service' };
}

/** From now on every write to the page's database ends as on a full disk, until the page hears `disk-freed`. */
async function fillDisk(page: Page): Promise<void> {
  await page.evaluate(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('The disk is full', 'QuotaExceededError');
    };
    addEventListener('disk-freed', () => {
      IDBObjectStore.prototype.put = put;
    });
  });
}

/** What can go wrong while there is no signal. */
export function offlineOddsSuite(): void {
  describe('without a signal, and something else is wrong', () => {
    test.each([
      ['behind', -twoDays],
      ['ahead of', twoDays],
    ])('a clock two days %s the server is said, and the age of the forecast is told right', async (word, seconds) => {
      pageServer().forecastBy(async () => ({ forecast: forecastOf(3) }));
      await inProfile(async (page) => {
        await page.clock.install({ time: Date.now() + seconds * 1000 });
        await page.reload();
        await page.getByText(`The clock of this device is 2 days ${word} the server's.`).waitFor();
        await page.getByRole('button', { name: 'My own field' }).click();
        await page.locator(questionHeading).waitFor();
        await page.getByLabel('Or say it in your own words').fill('lat 54.1 long -2.2');
        await page.getByRole('button', { name: 'Send' }).click();
        await page
          .getByText(/the forecast/i)
          .first()
          .waitFor();
        await untilReady(page);
        await page.context().setOffline(true);
        await pageServer().closeFor(async () => {
          await page.reload();
          await page.getByText(`The clock of this device is 2 days ${word} the server's.`).waitFor();
          await untilAlone(page);
          await page.getByRole('button', { name: 'Give me the answer with what you have' }).click();
          await page.locator(verdictHeading).waitFor();
          expect((await textOf(page.locator('.verdict'))).match(/\(\d+ h ago\)/)?.[0]).toBe('(3 h ago)');
        });
        await page.context().setOffline(false);
        await untilBack(page);
        await expectOnServerOnce(page);
        for (const { at } of await pageServer().kept(await tokenOf(page))) {
          expect(Math.abs(at - Date.now() / 1000)).toBeLessThan(600);
        }
      });
    });

    test('a full disk is said with what is safe and what to do, and the conversation goes on to its verdict', async () => {
      await inProfile(async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await answerOnce(page, fitDay);
        await pageServer().closeFor(async () => {
          await untilAlone(page);
          await fillDisk(page);
          await answerOnce(page, fitDay);
          const notice = page.getByText('The storage of this device is full.');
          await notice.waitFor();
          expect(await textOf(notice)).toMatch(/safe.*Free some space/);
          await answerAll(page, fitDay);
          expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
          await page.evaluate(() => dispatchEvent(new Event('disk-freed')));
        });
        await untilBack(page);
        const kinds = (await pageServer().kept(await tokenOf(page))).map(({ kind }) => kind);
        expect(kinds).toContain('verdict-given');
        expect(await page.getByText('The storage of this device is full.').count()).toBe(0);
      });
    });

    test('a browser without a database says so, and the page that stays open still answers by itself', async () => {
      await inProfile(async (page) => {
        await page.addInitScript(() => {
          Object.defineProperty(globalThis, 'indexedDB', {
            get: () => ({
              open: () => {
                throw new DOMException('refused', 'SecurityError');
              },
            }),
          });
        });
        await page.reload();
        await chooseField(page, 'Mill Piece');
        await page.getByText('This browser keeps nothing for this page').waitFor();
        await page.getByText('as long as it stays open.').first().waitFor();
        await pageServer().closeFor(async () => {
          await untilAlone(page);
          await answerAll(page, fitDay);
          expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
        });
        await untilBack(page);
        const kept = await pageServer().kept(await tokenOf(page));
        expect(new Set(kept.map(({ id }) => id)).size).toBe(kept.length);
        expect(kept.some(({ kind }) => kind === 'verdict-given')).toBe(true);
      });
    });

    test('of two tabs one goes on and the other says so, and can be taken up again where the first left off', async () => {
      await inProfile(async (page, context) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        const first = await answerOnce(page, fitDay);
        const other = await context.newPage();
        await other.goto(pageServer().url());
        await other.locator(questionHeading).waitFor();
        await page.getByText('The conversation goes on in another tab').waitFor();
        const second = await answerOnce(other, fitDay);
        expect(second).not.toBe(first);
        const open = await textOf(other.locator(questionHeading));
        await page.getByRole('button', { name: 'Go on here' }).click();
        await other.getByText('The conversation goes on in another tab').waitFor();
        await page.locator(questionHeading).waitFor();
        expect(await textOf(page.locator(questionHeading))).toBe(open);
        await expectOnServerOnce(page);
      });
    });

    test('a server that takes messages and does not answer is not waited for', async () => {
      await inProfile(async (page) => {
        let isDumb = false;
        await page.routeWebSocket(/chat/, (socket) => {
          const server = socket.connectToServer();
          socket.onMessage((message) => server.send(message));
          server.onMessage((message) => {
            if (!isDumb) socket.send(message);
          });
        });
        await page.reload();
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        isDumb = true;
        const asked = [await answerOnce(page, fitDay)];
        await untilAlone(page);
        asked.push(...(await answerAll(page, fitDay)));
        expect(new Set(asked).size).toBe(asked.length);
        expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
        isDumb = false;
        await untilBack(page);
        await expectOnServerOnce(page);
      });
    });
  });

  describe('what is new waits', () => {
    test('a newer page is announced, used only when the person asks, and never under a question', async () => {
      await inProfile(async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await pageServer().closeFor(() => pageServer().renewPage());
        await page.getByText('A new version of this page is there. It is used after this conversation.').waitFor();
        expect(await page.getByRole('button', { name: 'Use the new version' }).count()).toBe(0);
        await page.reload();
        await page.locator(questionHeading).waitFor();
        const newer = page.locator('meta[name=newer]');
        expect(await newer.count()).toBe(0);
        await answerAll(page, fitDay);
        expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
        const loaded = page.waitForEvent('load');
        await page.getByRole('button', { name: 'Use the new version' }).click();
        await loaded;
        await page.locator(verdictHeading).waitFor();
        expect(await newer.count()).toBe(1);
      });
    });

    test('newer rules are announced, and a conversation without a signal stays with those it was begun under', async () => {
      await inProfile(async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await answerOnce(page, fitDay);
        await pageServer().closeFor(async () => {
          await untilAlone(page);
          pageServer().addRules({ ...shipped.pack, hash: 'f'.repeat(64), version: '99.0.0' });
        });
        await untilBack(page);
        await answerAll(page, fitDay);
        const kept = await pageServer().kept(await tokenOf(page));
        const verdict = kept.findLast((event) => event.kind === 'verdict-given');
        expect(verdict).toMatchObject({ decision: { pack: { hash: shipped.pack.hash } } });
      });
    });

    test('a start on another day begins a conversation of its own; the earlier one can be gone back to', async () => {
      await inProfile(async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await answerAll(page, fitDay);
        const before = await tokenOf(page);
        await pageServer().closeFor(async () => {
          await untilAlone(page);
          pageServer().pass(13 * 3600);
        });
        await untilBack(page);
        await page.getByRole('button', { name: 'Another field' }).click();
        await page.getByRole('button', { name: 'Top Brow' }).click();
        await page.getByRole('heading', { name: /Top Brow/ }).waitFor();
        expect(await tokenOf(page)).not.toBe(before);
        await page.getByRole('button', { name: 'Another field' }).click();
        await page.getByRole('button', { name: /Mill Piece, .*Spray today/ }).click();
        await page.getByRole('heading', { name: /Mill Piece/ }).waitFor();
        expect(await tokenOf(page)).toBe(before);
      });
    });
  });
}
