import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { answerAll, chooseField, fitDay, textOf } from '../answers.ts';
import { findings, unfold } from '../axe.ts';
import { onPage, pageServer } from '../session.ts';

const open = async (page: Page, field: string) => {
  await chooseField(page, field);
  await answerAll(page, fitDay);
  await page.getByText('Print, send or show this answer').click();
  await page.getByRole('button', { name: 'Copy as text' }).waitFor();
};

const parts = [
  'INVENTED',
  'Spray today',
  'Good until',
  'Soil temperature at 30 cm: 8.6 C',
  'Forecast fetched',
  'Rules:',
  'label in hand',
];

/** An answer for somebody else: printed, sent, saved, shown. */
export function handOverSuite(): void {
  describe('handing over', () => {
    test('the clipboard, a saved file and the printed sheet hold the same whole answer', async () => {
      await onPage({ permissions: ['clipboard-read', 'clipboard-write'] }, async (page) => {
        await open(page, 'Mill Piece');
        await page.getByRole('button', { name: 'Copy as text' }).click();
        await page.getByText('Copied.').waitFor();
        const copied = await page.evaluate(() => navigator.clipboard.readText());
        const [download] = await Promise.all([
          page.waitForEvent('download'),
          page.getByRole('button', { name: 'Save as text' }).click(),
        ]);
        expect(download.suggestedFilename()).toMatch(/^loamward-mill-piece-\d{4}-\d\d-\d\d\.txt$/);
        expect(await readFile((await download.path())!, 'utf8')).toBe(copied);
        await page.emulateMedia({ media: 'print' });
        const printed = await textOf(page.locator('.print-only'));
        for (const part of parts) {
          expect(copied).toContain(part);
          expect(printed.toLowerCase()).toContain(part.toLowerCase());
        }
        expect(await page.locator('.print-only .sheet').filter({ visible: true }).count()).toBe(1);
        expect(await page.locator('.masthead, .free-text, .outlook, .foot').filter({ visible: true }).count()).toBe(0);
      });
    });

    test('where the device can send, the text goes to it', async () => {
      await onPage(
        {},
        async (page) => {
          await open(page, 'Top Brow');
          await page.getByRole('button', { name: 'Send…' }).click();
          await page.getByText('Handed to the device').waitFor();
          const sent = await page.evaluate(() => (globalThis as unknown as { sent: { text: string } }).sent);
          expect(sent.text).toContain('Wait');
          await page.getByRole('button', { name: 'Make a link' }).click();
          await page.getByRole('button', { name: 'Send the link…' }).click();
          await page.waitForFunction(() =>
            /\/shown\/[0-9a-f]{64}$/.test((globalThis as unknown as { sent: { text: string } }).sent.text),
          );
        },
        async (page) => {
          await page.addInitScript(() => {
            Object.defineProperty(navigator, 'canShare', { value: () => true });
            Object.defineProperty(navigator, 'share', {
              value: async (what: unknown) => void Object.assign(globalThis, { sent: what }),
            });
          });
        },
      );
    });

    test.each(['light', 'dark'] as const)(
      'a link shows it read-only without a script, axe finds nothing there in %s, and it can be taken back',
      async (colorScheme) => {
        await onPage({ colorScheme }, async (page) => {
          await open(page, 'Mill Piece');
          await page.getByRole('button', { name: 'Make a link' }).click();
          await page.getByText('The link is made.').waitFor();
          const address = (await page.locator('.address').getAttribute('href'))!;
          const other = await page.context().browser()!.newContext({ colorScheme });
          try {
            const reader = await other.newPage();
            await reader.goto(pageServer().url() + address);
            const text = await textOf(reader.locator('body'));
            for (const part of parts) expect(text).toContain(part);
            expect(await reader.locator('script, form, input').count()).toBe(0);
            expect(await reader.evaluate(() => getComputedStyle(document.body).fontFamily)).toContain('Segoe');
            expect(await findings(reader)).toEqual([]);
            const verdict = reader.getByRole('heading', { name: /^Spray today/ });
            const withdrawn = reader.getByRole('heading', { name: /^Withdrawn/ });
            expect([await verdict.isVisible(), await withdrawn.isVisible()]).toEqual([true, false]);
            await reader.evaluate(() => {
              for (const animation of document.getAnimations()) animation.finish();
            });
            expect([await verdict.isVisible(), await withdrawn.isVisible()]).toEqual([false, true]);
            await page.reload();
            await page.getByText('Print, send or show this answer').click();
            await page.getByRole('button', { name: 'Take the link back' }).click();
            await page.getByText('Taken back').waitFor();
            await reader.reload();
            await reader.getByText('Do not spray on an answer that cannot be read.').waitFor();
            expect(await findings(reader)).toEqual([]);
          } finally {
            await other.close();
          }
        });
      },
    );

    test.each([
      ['has what was said', false],
      ['has to say again what was said', true],
    ])(
      'without a connection a page that %s keeps it open and copies it, and the link says why it cannot be made',
      async (_, isSaidAgain) => {
        await onPage({ permissions: ['clipboard-read', 'clipboard-write'] }, async (page) => {
          if (isSaidAgain) await page.route('**/events?*', (route) => route.abort());
          await open(page, 'Mill Piece');
          await pageServer().closeFor(async () => {
            await page.getByText('No signal: this page answers by itself').waitFor();
            await page.getByText('A link needs a connection.').waitFor();
            await page.getByRole('button', { name: 'Copy as text' }).click();
            await page.getByText('Copied.').waitFor();
          });
        });
      },
    );

    test('all of it is free of findings', async () => {
      await onPage({}, async (page) => {
        await open(page, 'Long Ing');
        await page.getByRole('button', { name: 'Make a link' }).click();
        await page.getByText('The link is made.').waitFor();
        await unfold(page);
        expect(await findings(page)).toEqual([]);
      });
    });
  });
}
