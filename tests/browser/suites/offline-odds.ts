import { randomUUID } from 'node:crypto';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { epochSeconds } from '../../../src/core/units/brands.ts';
import { inventedForecast } from '../../../src/demo/invented-weather.ts';
import { answerAll, answerOnce, chooseField, fitDay, questionHeading, textOf, verdictHeading } from '../answers.ts';
import { findings } from '../axe.ts';
import { expectOnServerOnce, inProfile, tokenOf } from '../offline-steps.ts';
import { untilAlone, untilBack, untilReady } from '../offline-waits.ts';
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
          expect(await findings(page)).toEqual([]);
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
        const first = await textOf(page.locator(questionHeading));
        const other = await context.newPage();
        await other.goto(pageServer().url());
        await other.locator(questionHeading).waitFor();
        await page.getByText('The conversation goes on in another tab').waitFor();
        expect(await findings(page)).toEqual([]);
        expect(await answerOnce(other, fitDay)).toBe(first);
        const open = await textOf(other.locator(questionHeading));
        await page.getByRole('button', { name: 'Go on here' }).click();
        await other.getByText('The conversation goes on in another tab').waitFor();
        await page.locator(questionHeading).waitFor();
        expect(await textOf(page.locator(questionHeading))).toBe(open);
        await expectOnServerOnce(page);
      });
    });

    test('two devices that contradict each other on what a stop or hold reads leave it unknown until it is confirmed', async () => {
      await inProfile(async (page, context) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await context.setOffline(true);
        await page.getByLabel('Or say it in your own words').fill('crumbly, moist, 8 at 30 cm');
        await page.getByRole('button', { name: 'Send' }).click();
        await untilAlone(page);
        await page.getByText(/8 °?C/).first().waitFor();
        const at = Date.now() / 1000 - 1;
        const said = {
          kind: 'said',
          id: randomUUID(),
          at,
          device: 'another',
          count: 1,
          text: '12 at 30 cm',
          asked: null,
        };
        const response = await fetch(`${pageServer().url()}/events`, {
          method: 'POST',
          headers: { authorization: `Bearer ${await tokenOf(page)}`, 'content-type': 'application/json' },
          body: JSON.stringify({ events: [said] }),
        });
        expect(await response.json()).toMatchObject({ taken: [said.id] });
        await context.setOffline(false);
        await untilBack(page);
        await page.locator(questionHeading).waitFor();
        expect(await textOf(page.locator('main'))).toMatch(/12.*8|8.*12/);
        expect(await page.locator(verdictHeading).count()).toBe(0);
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
}
