import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { importedIn } from '../../../src/tools/size.ts';
import { answerAll, answerOnce, chooseField, fitDay, questionHeading, textOf, verdictHeading } from '../answers.ts';
import { untilAlone, untilReady } from '../offline-waits.ts';
import { onPage, pageServer } from '../session.ts';

/** Reloads, lost connections, and answers that grow too old. */
export function connectionSuite(): void {
  describe('the way to the first question', () => {
    test.each(['en', 'de'])('on a page in %s no part waits until another has come that names it', async (language) => {
      const text = async (path: string) => {
        const reply = await fetch(new URL(path, pageServer().url()), { headers: { 'accept-language': language } });
        return { body: await reply.text(), link: reply.headers.get('link') ?? '' };
      };
      const { body, link } = await text('/');
      const named = (pattern: RegExp, where: string) => [...where.matchAll(pattern)].map(([, path = '']) => path);
      const ahead = new Set([
        ...named(/<script type="module"[^>]* src="([^"]+)"/g, body),
        ...named(/<link rel="modulepreload"[^>]* href="([^"]+)"/g, body),
        ...named(/<(\/assets\/[^>]+)>/g, link),
      ]);
      expect([...ahead].some((path) => path.startsWith('/assets/start-'))).toBe(true);
      for (const path of ahead) {
        const imports = importedIn((await text(path)).body);
        expect([path, imports.filter((file) => !ahead.has(`/assets/${file}`))]).toEqual([path, []]);
      }
    });
  });

  describe('the conversation over time', () => {
    test('a reload goes on where it was, and nothing is asked twice', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        const asked = [await answerOnce(page, fitDay)];
        const open = await textOf(page.locator(questionHeading));
        await page.reload();
        await page.locator(questionHeading).waitFor();
        expect(await textOf(page.locator(questionHeading))).toBe(open);
        asked.push(...(await answerAll(page, fitDay)));
        expect(new Set(asked).size).toBe(asked.length);
        expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
      });
    });

    test('a server that goes and comes back finds the page again; what was said meanwhile counts once', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await pageServer().closeFor(async () => {
          await untilAlone(page);
          await page.getByLabel('Or say it in your own words').fill('crumbly, moist');
          await page.getByRole('button', { name: 'Send' }).click();
          await page.getByRole('log').locator('.is-person', { hasText: 'crumbly, moist' }).waitFor();
          await page.locator('.question').getByRole('button', { name: "I don't know" }).click();
        });
        await page.getByRole('status').getByText('Handed over: 2 things you said.').waitFor({ timeout: 60_000 });
        const said = page.getByRole('log').locator('.is-person', { hasText: 'crumbly, moist' });
        expect(await said.count()).toBe(1);
        expect(await page.getByRole('alert').count()).toBe(0);
      });
    });

    test('before the page can answer by itself, what is said without a connection waits and goes out once', async () => {
      await onPage({}, async (page) => {
        await page.route(/\/(packs|fields)$/, (route) => route.abort());
        await chooseField(page, 'Mill Piece');
        await pageServer().closeFor(async () => {
          await page.getByRole('status').getByText('No connection: trying again.').waitFor();
          await page.getByLabel('Or say it in your own words').fill('crumbly, moist');
          await page.getByRole('button', { name: 'Send' }).click();
          await page.getByText('not sent yet').waitFor();
          await page.locator('.question-part').first().getByRole('button', { name: "I don't know" }).click();
          await page.getByRole('button', { name: 'Send what is answered' }).click();
          await page.getByText('2 things you said are kept').waitFor();
        });
        await page.getByRole('status').getByText('The connection is back.').waitFor({ timeout: 30_000 });
        await page.waitForFunction(() => !document.body.textContent?.includes('not sent yet'));
        const said = page.getByRole('log').locator('.is-person', { hasText: 'crumbly, moist' });
        await said.waitFor();
        expect(await said.count()).toBe(1);
        expect(await page.getByRole('alert').count()).toBe(0);
      });
    });

    describe('a spray-today that has grown too old leaves the screen by the clock of the page alone', () => {
      const threeHours = 3 * 3600;
      const growOld = async (page: Page) => {
        await page.clock.fastForward(threeHours * 1000);
        await page.getByRole('heading', { name: 'That answer is withdrawn' }).waitFor();
        expect(await page.locator('.verdict').count()).toBe(0);
      };
      const lookAgain = async (page: Page) => {
        await page.getByRole('button', { name: 'Look again' }).click();
        await page.locator('.question, .verdict').first().waitFor();
        expect(await page.getByText('That answer is withdrawn').count()).toBe(0);
      };
      const toSprayToday = async (page: Page) => {
        await chooseField(page, 'Mill Piece');
        await answerAll(page, fitDay);
        expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
      };

      test('and is looked at again once the server is back, where the page cannot answer by itself', async () => {
        await onPage(
          {},
          async (page) => {
            await page.route(/\/(packs|fields)$/, (route) => route.abort());
            await toSprayToday(page);
            await pageServer().closeFor(async () => {
              await page.getByRole('status').getByText('No connection: trying again.').waitFor();
              await growOld(page);
              pageServer().pass(threeHours);
            });
            await page.evaluate(() => dispatchEvent(new Event('online')));
            await page.getByRole('status').getByText('No connection').waitFor({ state: 'detached' });
            await lookAgain(page);
          },
          (page) => page.clock.install(),
        );
      });

      test('and is looked at again without a connection, where the page answers by itself', async () => {
        await onPage(
          {},
          async (page) => {
            await toSprayToday(page);
            await untilReady(page);
            await pageServer().closeFor(async () => {
              await untilAlone(page);
              await growOld(page);
              await lookAgain(page);
              pageServer().pass(threeHours);
            });
          },
          (page) => page.clock.install(),
        );
      });
    });
  });
}
