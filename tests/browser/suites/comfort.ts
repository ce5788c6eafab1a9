import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { answerAll, answerOnce, chooseField, fitDay, questionHeading, textOf, verdictHeading } from '../answers.ts';
import { unfold } from '../axe.ts';
import { onPage, viewports, withoutWorker } from '../session.ts';

/** Records what would be felt. */
const feel = async (page: Page): Promise<void> => {
  await page.addInitScript(() => {
    const felt: unknown[] = [];
    Object.assign(globalThis, { felt });
    Object.defineProperty(navigator, 'vibrate', {
      value: (pattern: unknown) => felt.push(pattern),
      configurable: true,
    });
  });
};
const felt = (page: Page) => page.evaluate(() => (globalThis as unknown as { felt: number[][] }).felt);

/** What can be pressed, ticked, typed into or followed. */
const targets =
  'button:visible, summary:visible, input[type="text"]:visible, label.sign:visible, a[href]:visible:not(.skip)';

/** One hand, gloves, touch, and the tree that assistive technology reads. */
export function comfortSuite(): void {
  describe('comfort', () => {
    test.each(viewports)(
      'every target is at least 48 px high and wide at $width px, all unfolded',
      async (viewport) => {
        await onPage({ viewport }, async (page) => {
          const small = () =>
            page.locator(targets).evaluateAll((all) =>
              all
                .filter((one) => {
                  const { width, height } = one.getBoundingClientRect();
                  return width < 48 || height < 48;
                })
                .map((one) => one.outerHTML.slice(0, 120)),
            );
          await unfold(page);
          expect(await small()).toEqual([]);
          await chooseField(page, 'Mill Piece');
          await unfold(page);
          expect(await small()).toEqual([]);
          await answerAll(page, fitDay);
          await unfold(page);
          expect(await small()).toEqual([]);
        });
      },
    );

    test('on a phone the box and its button lie in the lower third, and the open question begins at the top', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        await answerOnce(page, fitDay);
        const box = await page.getByLabel('Or say it in your own words').boundingBox();
        expect(box!.y).toBeGreaterThan((viewports[0].height * 2) / 3);
        const heading = await page.locator(questionHeading).boundingBox();
        expect(heading!.y).toBeLessThan(viewports[0].height / 3);
      });
    });

    test.each(['what if the soil were 11?', 'crumbly, moist, 8.6 at 30 cm', 'tell me a joke'])(
      'what was typed and what came of it stand on the screen of a phone: "%s"',
      async (text) => {
        await onPage({}, async (page) => {
          await chooseField(page, 'Top Brow');
          await page.locator('.verdict').evaluate((one) => one.scrollIntoView({ block: 'end' }));
          await page.getByLabel('Ask, or say what has changed').fill(text);
          await page.keyboard.press('Enter');
          await page.locator('.line.is-person + .line').waitFor();
          const lines = page.locator('.line.is-person, .line.is-person ~ .line');
          await page.waitForFunction(
            () => (document.querySelector('.line.is-person')?.getBoundingClientRect().top ?? -1) >= 0,
          );
          const bottom = (await page.locator('.free-text').boundingBox())!.y;
          for (const line of await lines.all()) {
            const box = await line.boundingBox();
            expect(box!.y).toBeGreaterThanOrEqual(0);
            expect(box!.y + box!.height).toBeLessThanOrEqual(bottom);
          }
        });
      },
    );

    test('taking back an answer shows what was taken back above the question that stands, which has the focus', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        await answerOnce(page, fitDay);
        await page.getByRole('button', { name: /^Undo: .*soil feels moist/ }).click();
        const line = page.locator('.line', { hasText: /^Taken back: .*soil feels moist/ });
        await line.waitFor();
        await page.waitForFunction(() => document.activeElement?.matches('[data-heading="question"]'));
        const [told, heading] = [await line.boundingBox(), await page.locator(questionHeading).boundingBox()];
        expect(told!.y).toBeGreaterThanOrEqual(0);
        expect(heading!.y + heading!.height).toBeLessThan(viewports[0].height * 0.8);
      });
    });

    test('text at twice its size fits 390 px without scrolling sideways, drawings and hand-over included', async () => {
      await onPage({}, async (page) => {
        const over = async () => {
          await unfold(page);
          return page.evaluate(() => {
            document.documentElement.style.fontSize = '225%';
            return document.documentElement.scrollWidth - document.documentElement.clientWidth;
          });
        };
        expect(await over()).toBe(0);
        await chooseField(page, 'Mill Piece');
        for (let more = 0; more < 20 && (await page.locator(questionHeading).count()) > 0; more++) {
          expect(await over()).toBe(0);
          await answerOnce(page, fitDay);
        }
        expect(await over()).toBe(0);
      });
    });

    test('each verdict buzzes with a pattern of its own, once, and not on a reload', async () => {
      await onPage(
        {},
        async (page) => {
          for (const field of ['Mill Piece', 'Top Brow', 'Long Ing']) {
            await chooseField(page, field);
            await answerAll(page, fitDay);
            await page.getByRole('button', { name: 'Another field' }).click();
          }
          const patterns = await felt(page);
          expect(patterns.map(({ length }) => length)).toEqual([1, 3, 5]);
          await page.reload();
          await page.locator(verdictHeading).waitFor();
          expect(await felt(page)).toEqual([]);
        },
        feel,
      );
    });

    test('nothing buzzes where less motion is asked for', async () => {
      await onPage(
        { reducedMotion: 'reduce' },
        async (page) => {
          await chooseField(page, 'Mill Piece');
          await answerAll(page, fitDay);
          expect(await felt(page)).toEqual([]);
        },
        feel,
      );
    });

    test('by roles and names alone a conversation leads to its verdict', async () => {
      await onPage({}, async (page) => {
        const tree = () => page.locator('body').ariaSnapshot();
        expect(await tree()).toMatch(/heading "Is today the day\?"/);
        await page.getByRole('button', { name: /^Mill Piece/ }).press('Enter');
        const region = (name: RegExp) => page.getByRole('region', { name });
        await region(/surface/).waitFor();
        expect(await tree()).toMatch(/group.*\n.*\n?.*checkbox "Crumbly/s);
        await region(/surface/)
          .getByRole('checkbox', { name: /^Crumbly/ })
          .press('Space');
        await region(/surface/)
          .getByRole('button', { name: 'Confirm: 1 sign' })
          .press('Enter');
        await region(/feel in the hand/)
          .getByRole('button', { name: /^Moist/ })
          .press('Enter');
        await region(/How warm/)
          .getByRole('textbox', { name: 'Soil temperature at 30 cm' })
          .fill('8.6');
        await page.keyboard.press('Enter');
        const answer = region(/^Spray today/);
        await answer.getByRole('heading', { name: /^Spray today/, level: 2 }).waitFor();
        expect(await page.getByRole('log').getByText('Understood: soil at 30 cm 8.6 C.').count()).toBe(1);
        expect(await page.getByRole('status').count()).toBeGreaterThan(0);
      });
    });

    test('each drawing is loaded only when it is wanted and says what it shows', async () => {
      await onPage(
        {},
        async (page) => {
          await chooseField(page, 'Mill Piece');
          const drawings = page.waitForRequest(/\/assets\/pictures-.*\.js$|\/assets\/index-.*\.js$/);
          expect(await page.locator('.picture').count()).toBe(0);
          await unfold(page);
          await drawings;
          await page.locator('.picture').first().waitFor();
          expect(await textOf(page.locator('.picture figcaption').first())).toMatch(/\w/);
        },
        withoutWorker,
      );
    });

    test('a part that does not come says what is safe and is fetched at the next press', async () => {
      await onPage(
        {},
        async (page) => {
          await chooseField(page, 'Mill Piece');
          await page.route('**/assets/*.js', (route) => route.abort());
          await page.getByText('How do I find out?').first().click();
          const alert = page.getByRole('alert');
          await alert.getByText('This part of the page did not come.').waitFor();
          expect(await page.locator(questionHeading).count()).toBe(1);
          expect(await alert.getByRole('button', { name: 'Try again' }).count()).toBe(1);
        },
        withoutWorker,
      );
    });
  });
}
