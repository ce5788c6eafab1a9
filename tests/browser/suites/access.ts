import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { answerAll, answerOnce, chooseField, fitDay, questionHeading, textOf, verdictHeading } from '../answers.ts';
import { findings, unfold } from '../axe.ts';
import { onPage, viewports } from '../session.ts';

/** Presses Tab until what has the focus carries this text. */
async function tabTo(page: Page, text: string): Promise<void> {
  for (let presses = 0; presses < 80; presses++) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate(
      () => document.activeElement?.closest('label')?.textContent ?? document.activeElement?.textContent ?? '',
    );
    if (focused.startsWith(text)) return;
  }
  throw new Error(`"${text}" is not reached with Tab`);
}

const focusIsOn = (page: Page, selector: string) =>
  page.waitForFunction((wanted) => document.activeElement?.matches(wanted), selector);

/** Assistive technology, keyboard, large text, forced colours. */
export function accessSuite(): void {
  describe.each([
    { colorScheme: 'light', viewport: viewports[0] },
    { colorScheme: 'dark', viewport: viewports[0] },
    { colorScheme: 'light', viewport: viewports[1] },
    { colorScheme: 'dark', viewport: viewports[1] },
  ] as const)('in $colorScheme at $viewport.width', (options) => {
    test('axe finds nothing on start, question and the three verdicts, all unfolded', async () => {
      await onPage(options, async (page) => {
        expect(await findings(page)).toEqual([]);
        await chooseField(page, 'My own field');
        expect(await findings(page)).toEqual([]);
        await page.getByRole('button', { name: 'Another field' }).click();
        for (const field of ['Mill Piece', 'Top Brow', 'Long Ing']) {
          await chooseField(page, field);
          await unfold(page);
          expect(await findings(page)).toEqual([]);
          await answerAll(page, fitDay);
          await unfold(page);
          expect(await findings(page)).toEqual([]);
          await page.getByRole('button', { name: 'Another field' }).click();
        }
      });
    });
  });

  test('the keyboard alone leads to a verdict; the focus moves to each new question, then to the verdict', async () => {
    await onPage({}, async (page) => {
      await tabTo(page, 'Mill Piece');
      await page.keyboard.press('Enter');
      await focusIsOn(page, questionHeading);
      await tabTo(page, 'How do I find out?');
      await page.keyboard.press('Enter');
      await tabTo(page, 'Crumbly');
      await page.keyboard.press('Space');
      await tabTo(page, 'Confirm');
      await page.keyboard.press('Enter');
      await focusIsOn(page, '.question-part h3');
      await tabTo(page, 'Slightly moist');
      await page.keyboard.press('Enter');
      await focusIsOn(page, verdictHeading);
      expect(await textOf(page.locator(verdictHeading))).toMatch(/^Wait/);
    });
  });

  test('of two questions asked together, one that is answered gives the focus to the other, and takes it back to be changed', async () => {
    await onPage({}, async (page) => {
      await chooseField(page, 'Mill Piece');
      const parts = page.locator('.question-part');
      const asked = await textOf(parts.last().locator('h3'));
      await parts.last().locator('.choice').first().focus();
      await page.keyboard.press('Enter');
      await focusIsOn(page, questionHeading);
      await tabTo(page, 'Your answer:');
      await page.keyboard.press('Enter');
      await focusIsOn(page, '.question-part h3');
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe(asked);
      expect(await parts.last().locator('.choice').count()).toBeGreaterThan(1);
    });
  });

  test('Escape folds up what is unfolded and leaves the focus on its title', async () => {
    await onPage({}, async (page) => {
      await chooseField(page, 'Mill Piece');
      await page.getByText('How do I find out?').first().click();
      expect(await page.locator('.question details[open]').count()).toBe(1);
      await page.keyboard.press('Escape');
      expect(await page.locator('.question details[open]').count()).toBe(0);
      expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('SUMMARY');
    });
  });

  test('the first Tab offers to skip to the question', async () => {
    await onPage({}, async (page) => {
      await page.keyboard.press('Tab');
      await focusIsOn(page, '.skip');
      await page.keyboard.press('Enter');
      await focusIsOn(page, 'main');
    });
  });

  test.each(['Mill Piece', 'Long Ing'])(
    '%s fits 320 px with text at twice its size, without scrolling sideways',
    async (field) => {
      await onPage({ viewport: { width: 320, height: 800 } }, async (page) => {
        const overflow = () =>
          page.evaluate(() => {
            document.documentElement.style.fontSize = '225%';
            for (const fold of document.querySelectorAll('details')) fold.open = true;
            return document.documentElement.scrollWidth - document.documentElement.clientWidth;
          });
        expect(await overflow()).toBe(0);
        await chooseField(page, field);
        expect(await overflow()).toBe(0);
        await answerAll(page, fitDay);
        expect(await overflow()).toBe(0);
      });
    },
  );

  test('every button, box and fold is at least 48 px high', async () => {
    await onPage({}, async (page) => {
      const small = () =>
        page
          .locator('button:visible, summary:visible, input[type="text"]:visible, .sign:visible')
          .evaluateAll((all) =>
            all.filter((one) => one.getBoundingClientRect().height < 48).map((one) => one.outerHTML.slice(0, 120)),
          );
      expect(await small()).toEqual([]);
      await chooseField(page, 'Mill Piece');
      expect(await small()).toEqual([]);
      await answerOnce(page, fitDay);
      await answerAll(page, fitDay);
      await unfold(page);
      expect(await small()).toEqual([]);
    });
  });

  test('in forced colours every button still has an edge', async () => {
    await onPage({ forcedColors: 'active' }, async (page) => {
      await chooseField(page, 'Mill Piece');
      await page.locator('.sign').first().waitFor();
      const widths = await page
        .locator('.sign, .button.is-main')
        .evaluateAll((all) => all.map((one) => Number.parseFloat(getComputedStyle(one).borderTopWidth)));
      expect(Math.min(...widths)).toBeGreaterThan(1);
    });
  });
}
