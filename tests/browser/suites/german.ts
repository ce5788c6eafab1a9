import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { chooseField, questionHeading, textOf, verdictHeading } from '../answers.ts';
import { untilAlone, untilReady } from '../offline-waits.ts';
import { onPage, pageServer, sharedBrowser, withoutWorker } from '../session.ts';

/** Words that German sentences do not have. */
const english = /\b(?:the|and|with|not|what|your|you|on|of|is|are|from|by|spray|soil|weather|answer|forecast)\b/i;

/** Notes of what was worked out, sources of numbers, and the languages' own names are left as they are. */
const foreign = /berechnet|Grenze|Quelle|Source|English/;

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

    test.each([
      ['de-AT', 'de', 'en'],
      ['en-GB', 'en', 'de'],
    ])(
      'a device in %s loads the words of its own language with the page, and no others before the first question',
      async (locale, own, other) => {
        const context = await sharedBrowser().newContext({ locale });
        try {
          const page = await context.newPage();
          await withoutWorker(page);
          await page.goto(pageServer().url());
          await page.locator('.field-choice').first().waitFor();
          const loaded = await page.evaluate(() =>
            (performance.getEntriesByType('resource') as PerformanceResourceTiming[]).map(
              ({ name, startTime, responseEnd }) => ({ name: name.split('/').at(-1) ?? '', startTime, responseEnd }),
            ),
          );
          const entryCame = loaded.find(({ name }) => /^index-.*js$/.test(name))?.responseEnd ?? 0;
          const named = await page
            .locator('meta[name=words]')
            .evaluateAll((metas) =>
              metas.map((meta) => [meta.getAttribute('lang') ?? '', meta.getAttribute('content') ?? ''] as const),
            );
          const filesOf = (language: string) =>
            (new Map(named).get(language) ?? '').split(' ').map((path) => path.split('/').at(-1) ?? '');
          const wordsOf = (language: string) =>
            loaded.filter(({ name }) => name.startsWith(`${language}-`) || filesOf(language).includes(name));
          expect(wordsOf(own).map(({ name }) => name)).toEqual(expect.arrayContaining(filesOf(own)));
          for (const { startTime } of wordsOf(own)) expect(startTime).toBeLessThan(entryCame);
          expect(wordsOf(other)).toEqual([]);
        } finally {
          await context.close();
        }
      },
    );

    test('changed in the midst of a conversation, it follows each time, without a connection too', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        const heading = page.locator(questionHeading);
        const asked = await textOf(heading);
        const change = async (settings: string, language: string, lang: string) => {
          await page.getByRole('button', { name: settings }).click();
          await page.getByLabel(language).check();
          await page.waitForFunction((code) => document.documentElement.lang === code, lang);
          await heading.waitFor();
        };
        const untilAsked = (isEnglish: boolean) =>
          page.waitForFunction(
            ([selector, before, same]) => (document.querySelector(selector)?.textContent === before) === same,
            [questionHeading, asked, isEnglish] as const,
          );
        for (let round = 0; round < 2; round += 1) {
          await change('Settings', 'Deutsch', 'de');
          await untilAsked(false);
          expect(await englishLines(page)).toEqual([]);
          await change('Einstellungen', 'English', 'en');
          await untilAsked(true);
        }
        await pageServer().closeFor(async () => {
          await untilAlone(page);
          await change('Settings', 'Deutsch', 'de');
          await untilAsked(false);
          expect(await englishLines(page)).toEqual([]);
          await change('Einstellungen', 'English', 'en');
          await untilAsked(true);
        });
      });
    });

    test('a device that speaks German first is spoken to in German, and two questions on one card are answered by pressing', async () => {
      await onPage({}, async (page) => {
        const other = await page.context().browser()?.newContext({ locale: 'de-AT' });
        const german = await other?.newPage();
        await german?.goto(page.url());
        if (!german) throw new Error('no page');
        await german.getByRole('heading', { name: 'Welches Feld?' }).waitFor();
        await german.getByText('Propyzamid in Winterraps').waitFor();
        expect(await englishLines(german)).toEqual([]);
        await chooseField(german, 'Mill Piece');
        const [surface, hand] = await german.locator('.question-part').all();
        await surface?.getByLabel('Klebrig').check();
        await surface?.getByRole('button', { name: /^Bestätigen/ }).click();
        expect(await englishLines(german)).toEqual([]);
        await hand?.getByRole('button', { name: /^Feucht/ }).click();
        await german.locator(verdictHeading).waitFor();
        expect(await textOf(german.locator(verdictHeading))).toMatch(/^Warten/);
        expect(await englishLines(german)).toEqual([]);
        await other?.close();
      });
    });
  });
}
