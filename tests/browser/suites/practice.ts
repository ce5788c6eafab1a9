import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readPackFolder } from '../../../src/adapters/pack-files/read-pack-folder.ts';
import { loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import { findings } from '../axe.ts';
import { onPage, pageServer, viewports } from '../session.ts';

const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent ?? '');
const told = (page: Page) => page.locator('.practice dl').allTextContents();

/** Moves the focus on by Tab until it is on what is wanted. */
async function tabTo(page: Page, text: RegExp): Promise<void> {
  for (let presses = 0; presses < 60; presses += 1) {
    if (text.test(await focused(page))) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not reach ${text}`);
}

/** Waits until a heading has the focus. */
async function headingHasFocus(page: Page, text: RegExp): Promise<void> {
  await page.waitForFunction((source) => {
    const at = document.activeElement;
    return /^H[1-6]$/.test(at?.tagName ?? '') && new RegExp(source).test(at?.textContent ?? '');
  }, text.source);
}

/** Decides and gives the first reason, with the keyboard alone; gives the result. */
async function decide(page: Page, verdict: RegExp): Promise<string> {
  await tabTo(page, verdict);
  await page.keyboard.press('Enter');
  await headingHasFocus(page, /What decides it/);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await page.locator('#answer-heading').waitFor();
  await headingHasFocus(page, /Right|Not so|is right/);
  return (await page.locator('#answer-heading').getAttribute('data-result')) ?? '';
}

/** Opens the practice page with the keyboard; time stands at the test's call from then on. */
async function openPracticePage(page: Page): Promise<void> {
  await page.clock.install({ time: Date.now() });
  await page.getByRole('link', { name: 'Practice days' }).first().press('Enter');
  await headingHasFocus(page, /^The day/);
}

/** Puts an answer among those kept on the device, as a page kept it that knew of one treatment only. */
const keepOldAnswer = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('loamward');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const change = request.result.transaction('reviews', 'readwrite');
          const answer = { rule: 'too-windy', kind: 'inside', at: 1e9, day: 'd', result: 'right', verdict: 'wait' };
          change.objectStore('reviews').add({ ...answer, reason: 'too-windy' });
          change.oncomplete = () => resolve();
        };
      }),
  );

/** Practice days on the page. */
export function practiceSuite(): void {
  describe('a practice day', () => {
    test('answered wrong with the keyboard alone shows verdict, margin and trace, and comes back sooner than another', async () => {
      await onPage({}, async (page) => {
        await openPracticePage(page);
        const first = await told(page);
        expect(await decide(page, /^Do not spray$/)).toBe('wrong');
        const answer = page.locator('.practice .verdict');
        expect(await answer.locator('h3').first().textContent()).toMatch(/^(Spray today|Wait)/);
        expect(await answer.textContent()).toContain('Why this rule is there');
        expect(await answer.textContent()).toContain('A day like this comes again in a minute.');
        expect(await answer.locator('.trace summary').first().textContent()).toMatch(/\d+ rules|rule/);
        await tabTo(page, /^Next day$/);
        await page.keyboard.press('Enter');
        await headingHasFocus(page, /^The day/);
        expect(await told(page)).not.toEqual(first);
        await page.clock.fastForward(61_000);
        await decide(page, /^Wait$/);
        await tabTo(page, /^Next day$/);
        await page.keyboard.press('Enter');
        await headingHasFocus(page, /^The day/);
        await page.getByText('How far you are').click();
        const progress = () => page.locator('.practice li').allTextContents();
        expect((await progress()).filter((line) => line.endsWith('due now'))).toHaveLength(1);
        await decide(page, /^Wait$/);
        expect((await progress()).filter((line) => /seen 2/.test(line))).toHaveLength(1);
      });
    });

    test('is kept: after the page is opened again, and without a connection, the answers and the rules are there', async () => {
      await onPage({}, async (page) => {
        await openPracticePage(page);
        await decide(page, /^Wait$/);
        const seen = async () =>
          (await page.locator('.practice li').allTextContents()).filter((line) => /seen 1/.test(line));
        expect(await seen()).toHaveLength(1);
        await pageServer().closeFor(async () => {
          await page.evaluate(() => {
            location.hash = '#start';
          });
          await page.locator('.practice').waitFor({ state: 'detached' });
          await page.evaluate(() => {
            location.hash = '#practice';
          });
          await page.locator('#day-heading').waitFor();
          expect(await seen()).toHaveLength(1);
        });
      });
    });

    test('keeps what an older page had kept: its database is brought to the newer form', async () => {
      const older = async (page: Page): Promise<void> => {
        await page.addInitScript(() => {
          const request = indexedDB.open('loamward', 1);
          request.onupgradeneeded = () => {
            const { result } = request;
            result.createObjectStore('events', { keyPath: ['token', 'id'] }).createIndex('token', 'token');
            result.createObjectStore('conversations', { keyPath: 'token' });
            result.createObjectStore('packs', { keyPath: 'hash' });
            result.createObjectStore('forecasts').put('kept', 'old place');
            result.createObjectStore('supplies');
          };
          request.onsuccess = () => request.result.close();
        });
      };
      await onPage(
        {},
        async (page) => {
          await openPracticePage(page);
          await decide(page, /^Wait$/);
          const found = await page.evaluate(
            () =>
              new Promise((resolve, reject) => {
                const request = indexedDB.open('loamward');
                request.onerror = () => reject(request.error);
                request.onsuccess = () => {
                  const { result } = request;
                  const change = result.transaction(['forecasts', 'reviews']);
                  const old = change.objectStore('forecasts').get('old place');
                  const reviews = change.objectStore('reviews').count();
                  change.oncomplete = () => resolve([result.version, old.result, reviews.result]);
                };
              }),
          );
          expect(found).toEqual([2, 'kept', 1]);
        },
        older,
      );
    });

    test('takes a typed reason, asks where it may mean several, and opens a file of days only where it is one', async () => {
      await onPage({}, async (page) => {
        await openPracticePage(page);
        await page.getByRole('button', { name: 'Wait', exact: true }).click();
        await page.getByLabel('Or say it in your own words').fill('warm');
        await page.getByRole('button', { name: 'Take this' }).click();
        await page.getByText('Which of these do you mean?').waitFor();
        await page.getByRole('button', { name: 'Soil too warm' }).click();
        expect(await page.locator('.practice .verdict').textContent()).toContain('Your words: “warm”');
        const name = 'days.json';
        const buffer = (text: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
        await page.locator('.practice input[type="file"]').setInputFiles(buffer('{}'));
        await page.getByText('The file was not taken').waitFor();
        const [pack] = pageServer().rules();
        const set = {
          format: 'loamward-practice-days',
          pack: { id: pack.id, hash: pack.hash },
          place: 'Invented',
          season: 2021,
          days: [
            { id: 'one', rule: 'too-windy', kind: 'weather', facts: pack.plainDay?.facts, at: '2026-11-06T12:00:00Z' },
          ],
        };
        await page.locator('.practice input[type="file"]').setInputFiles(buffer(JSON.stringify(set)));
        await page.getByText('Days of real weather: Invented, season 2021').waitFor();
      });
    });

    test.each(['light', 'dark'] as const)(
      'has no fault that axe finds, and targets for a finger (%s)',
      async (colorScheme) => {
        await onPage({ colorScheme, viewport: viewports[0] }, async (page) => {
          await openPracticePage(page);
          expect(await findings(page)).toEqual([]);
          await decide(page, /^Wait$/);
          expect(await findings(page)).toEqual([]);
          const small = await page
            .locator('.practice button, .practice summary')
            .evaluateAll(
              (all) => all.filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 48).length,
            );
          expect(small).toBe(0);
        });
      },
    );
  });

  describe('practice days of two treatments', () => {
    const [rapeTitle, wheatTitle] = ['Propyzamide on winter oilseed rape', 'Fluroxypyr on winter wheat'];
    let alone: ReturnType<ReturnType<typeof pageServer>['rules']>;
    beforeAll(async () => {
      const folder = new URL('../../../rules/fluroxypyr-winter-wheat', import.meta.url).pathname;
      const { pack: wheat } = loadPack(await readPackFolder(folder));
      alone = pageServer().rules();
      await pageServer().closeFor(async () => pageServer().useRules([...alone, wheat]));
    });
    afterAll(() => pageServer().closeFor(async () => pageServer().useRules(alone)));

    test.each(viewports)(
      'at $width are of the one that is chosen, and so is how far one is; what was kept before is of the first',
      async (viewport) => {
        await onPage({ viewport }, async (page) => {
          const seen = async () =>
            (await page.locator('.practice li').allTextContents()).filter((line) => /seen 1/.test(line));
          const choice = page.getByRole('combobox', { name: 'Treatment' });
          await page.evaluate(() => {
            location.hash = '#practice';
          });
          await page.locator('#day-heading').waitFor();
          await keepOldAnswer(page);
          await page.reload();
          await page.locator('#day-heading').waitFor();
          expect(await seen()).toEqual([expect.stringMatching(/^Too windy: seen 1, right 1/)]);
          await choice.focus();
          await choice.selectOption(wheatTitle);
          await page.getByText('Growth stage of the wheat').first().waitFor();
          expect(await choice.evaluate((one) => one === document.activeElement)).toBe(true);
          expect(await seen()).toEqual([]);
          await decide(page, /^Wait$/);
          expect(await seen()).toHaveLength(1);
          expect(await findings(page)).toEqual([]);
          await choice.selectOption(rapeTitle);
          await page.getByText('Growth stage of the wheat').first().waitFor({ state: 'detached' });
          expect(await seen()).toEqual([expect.stringMatching(/^Too windy: seen 1, right 1/)]);
          await page.reload();
          await choice.selectOption(wheatTitle);
          await page.getByText('Growth stage of the wheat').first().waitFor();
          expect(await seen()).toHaveLength(1);
        });
      },
    );
  });
}
