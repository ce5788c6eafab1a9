import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { answerAll, answerOnce, chooseField, fitDay, questionHeading, textOf } from '../answers.ts';
import { findings, thinWords, unfold } from '../axe.ts';
import { onPage, viewports } from '../session.ts';

const ground = (page: Page) => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
const ink = 'rgb(12, 23, 34)';

const setLook = (look: string) => async (page: Page) => {
  const kept = JSON.stringify({ look, listens: true });
  await page.addInitScript((text) => localStorage.setItem('loamward.comfort', text), kept);
};

/** Day, night, strong sun: chosen, remembered, and free of findings. */
export function looksSuite(): void {
  test.each([
    ['day', 4.5],
    ['night', 4.5],
    ['sun', 7],
  ])(
    'by %s axe finds nothing and words are at least %d to 1 on start, every question with its drawing, and the three verdicts, all unfolded',
    async (look, least) => {
      const faults = async (page: Page) => {
        await unfold(page);
        return [...(await findings(page)), ...(await thinWords(page, least))];
      };
      await onPage(
        { viewport: viewports[0] },
        async (page) => {
          expect(await faults(page)).toEqual([]);
          for (const field of ['Mill Piece', 'Top Brow', 'Long Ing']) {
            await chooseField(page, field);
            for (let more = 0; more < 20 && (await page.locator(questionHeading).count()) > 0; more++) {
              expect(await faults(page)).toEqual([]);
              await answerOnce(page, fitDay);
            }
            expect(await faults(page)).toEqual([]);
            await page.getByRole('button', { name: 'Another field' }).click();
          }
        },
        setLook(look),
      );
    },
    60_000,
  );

  describe('the look', () => {
    test('is that of the device until one is chosen, and stays chosen over a reload', async () => {
      await onPage({ colorScheme: 'dark' }, async (page) => {
        expect(await ground(page)).toBe(ink);
        await page.getByText('Screen, sound and speech').click();
        await page.getByLabel('Strong sun').check();
        expect(await ground(page)).toBe('rgb(255, 255, 255)');
        await page.reload();
        await page.getByRole('heading', { name: 'Which field?' }).waitFor();
        expect(await ground(page)).toBe('rgb(255, 255, 255)');
        await page.getByText('Screen, sound and speech').click();
        await page.getByLabel('As the device').check();
        expect(await ground(page)).toBe(ink);
      });
    });

    test('is that of strong sun where the device asks for more contrast', async () => {
      await onPage({ contrast: 'more', colorScheme: 'light' }, async (page) => {
        expect(await ground(page)).toBe('rgb(255, 255, 255)');
      });
    });

    test('never tells a verdict by tone alone: each has a sentence, a pattern and a mark', async () => {
      await onPage({}, async (page) => {
        const patterns = new Set<string>();
        for (const field of ['Mill Piece', 'Top Brow', 'Long Ing']) {
          await chooseField(page, field);
          await answerAll(page, fitDay);
          const head = page.locator('.verdict-head');
          expect(await textOf(head.locator('h2'))).toMatch(/^(Spray today|Wait|Do not spray)/);
          patterns.add(await head.evaluate((one) => getComputedStyle(one).backgroundImage));
          expect(await head.locator('.verdict-mark').count()).toBe(1);
          await page.getByRole('button', { name: 'Another field' }).click();
        }
        expect(patterns.size).toBe(3);
      });
    });

    test('asks for nothing that moves where less motion is wanted', async () => {
      await onPage({ reducedMotion: 'reduce' }, async (page) => {
        await chooseField(page, 'Mill Piece');
        const moving = await page.evaluate(() => document.getAnimations().length);
        expect(moving).toBe(0);
      });
    });
  });
}
