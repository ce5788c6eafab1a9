import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { textOf, verdictHeading } from '../answers.ts';
import { onPage } from '../session.ts';

/** Words that German sentences do not have. */
const english = /\b(?:the|and|with|not|what|your|you|spray|soil|weather|answer|forecast)\b/i;

/** Notes of the invented farm, notes of what was worked out, sources of numbers, and the languages' own names are left as they are. */
const foreign = /Invented weather|ein erfundenes Feld|berechnet|Grenze|Quelle|Source|English/;

/** Lines of the page that have English words in them. */
async function englishLines(page: Page): Promise<string[]> {
  // biome-ignore lint/performance/useDomNodeTextContent: lines as they are laid out, and only what is shown
  const text = await page.locator('body').innerText();
  return text.split('\n').filter((line) => !foreign.test(line) && english.test(line));
}

/** The page in German: chosen, remembered, and without English from the start screen to an answer. */
export function germanSuite(): void {
  describe('in German', () => {
    test('the language is chosen in the settings, kept, and goes through start, questions and answer', async () => {
      await onPage({}, async (page) => {
        expect(await englishLines(page)).not.toEqual([]);
        await page.getByRole('button', { name: 'Settings' }).click();
        await page.getByLabel('Deutsch').check();
        await page.getByRole('heading', { name: 'Welches Feld?' }).waitFor();
        expect(await page.getAttribute('html', 'lang')).toBe('de');
        expect(await englishLines(page)).toEqual([]);

        await page.getByRole('button', { name: /Mill Piece/ }).click();
        const box = page.getByLabel('Oder sagen Sie es mit eigenen Worten');
        await box.waitFor();
        expect(await englishLines(page)).toEqual([]);
        await box.fill('klebrig, 8,4 in 30 cm');
        await page.getByRole('button', { name: 'Senden' }).click();
        await page.locator(verdictHeading).waitFor();
        expect(await textOf(page.locator(verdictHeading))).toMatch(/^Warten/);
        expect(await englishLines(page)).toEqual([]);

        await page.reload();
        await page.locator(verdictHeading).waitFor();
        expect(await textOf(page.locator(verdictHeading))).toMatch(/^Warten/);
      });
    });

    test('a device that speaks German first is spoken to in German', async () => {
      await onPage({}, async (page) => {
        const other = await page.context().browser()?.newContext({ locale: 'de-AT' });
        const german = await other?.newPage();
        await german?.goto(page.url());
        await german?.getByRole('heading', { name: 'Welches Feld?' }).waitFor();
        await other?.close();
      });
    });
  });
}
