import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { textOf } from '../answers.ts';
import { findings, thinWords, unfold } from '../axe.ts';
import { onPage, pageServer, viewports } from '../session.ts';

/** Opens the bench by its link, and a rule of a topic. */
async function openRule(page: Page, topic: string, title: string): Promise<void> {
  await page.getByRole('link', { name: 'For advisers: the bench' }).click();
  await page.getByRole('heading', { name: 'Adviser’s bench' }).waitFor();
  await page.locator('.bench summary', { hasText: new RegExp(`^${topic}$`) }).click();
  await page.locator('.bench summary', { hasText: new RegExp(`^${title}$`) }).click();
}

const fillHead = async (page: Page) => {
  await page.getByLabel('Reason').fill('a stricter area, invented');
  await page.getByLabel('Author').fill('A. N. Adviser');
  await page.getByLabel('Place').fill('Hollin Bank Farm, invented');
  await page.getByLabel('Title').fill('Colder soil, invented');
  await page.getByLabel('Short name').fill('colder-soil');
};
const outcome = (page: Page) => page.locator('.bench-outcome');

/** The adviser's bench. */
export function benchSuite(): void {
  describe('the bench', () => {
    test.each(viewports)(
      'at $width: a limit is changed, cases and last season show it, and it is exported as an overlay',
      async (viewport) => {
        await onPage({ viewport, acceptDownloads: true }, async (page) => {
          await openRule(page, 'Soil', 'Soil too warm');
          const box = page.getByLabel('soilTemperatureMaxC').first();
          await box.fill('7');
          await outcome(page).first().waitFor();
          expect(await textOf(outcome(page).first())).toMatch(
            /\d+ of \d+ cases change the verdict.*spray today → wait.*\d+ more/s,
          );
          expect(await textOf(outcome(page).nth(1))).toMatch(/Invented.*spray today\s*\d+\s*\d+.*come out otherwise/s);
          const row = outcome(page).nth(1).locator('tbody tr').filter({ hasText: 'spray today' }).locator('th, td');
          const [, before, after] = await row.allTextContents();
          expect(Number(after)).toBeLessThan(Number(before));
          const exportIt = page.getByRole('button', { name: 'Export as a file' });
          expect(await exportIt.isDisabled()).toBe(true);
          await fillHead(page);
          const [download] = await Promise.all([page.waitForEvent('download'), exportIt.click()]);
          expect(download.suggestedFilename()).toBe('colder-soil.json');
          expect(JSON.parse(await readFile(await download.path(), 'utf8'))).toMatchObject({
            overlay: { id: 'colder-soil', author: 'A. N. Adviser', reason: 'a stricter area, invented', layer: 'farm' },
            parameters: [{ id: 'soilTemperatureMaxC', value: 7 }],
          });
        });
      },
    );

    test('a protected rule that would loosen is refused at once with the facts that show it, and cannot be handed out', async () => {
      await onPage({}, async (page) => {
        await openRule(page, 'Weather', 'Too windy');
        await fillHead(page);
        await page.getByLabel('windMostKmh').first().fill('14.5');
        const refused = page.locator('[data-refused]');
        await refused.waitFor();
        expect(await textOf(refused)).toMatch(/OVERLAY_PARAMETER_LOOSENED · too-windy.*wind\.boomKmh/s);
        expect(await page.getByRole('button', { name: 'Export as a file' }).isDisabled()).toBe(true);
        await page.getByRole('button', { name: 'Take back windMostKmh' }).click();
        await refused.waitFor({ state: 'detached' });
      });
    });

    test('what was typed is there again after a reload, also what is no value yet', async () => {
      await onPage({}, async (page) => {
        await openRule(page, 'Soil', 'Soil too warm');
        await page.getByLabel('soilTemperatureMaxC').first().fill('7');
        await page.getByLabel('Reason').fill('a stricter area, invented');
        await page.reload();
        await page.getByText('soilTemperatureMaxC: 10 C → 7 C').waitFor();
        expect(await page.getByLabel('Reason').inputValue()).toBe('a stricter area, invented');
      });
    });

    test('with the keyboard alone a rule is unfolded, its limit changed and taken back', async () => {
      await onPage({}, async (page) => {
        await page.goto(`${pageServer().url()}#bench`);
        await page.getByRole('heading', { name: 'Adviser’s bench' }).waitFor();
        const tabTo = async (text: RegExp) => {
          for (let presses = 0; presses < 60; presses += 1) {
            const at = await page.evaluate(() => document.activeElement?.textContent ?? '');
            if (text.test(at)) return;
            await page.keyboard.press('Tab');
          }
          expect(`Tab reaches ${text}`).toBe('');
        };
        await tabTo(/^Soil$/);
        await page.keyboard.press('Enter');
        await tabTo(/^Soil too warm$/);
        await page.keyboard.press('Enter');
        await page.keyboard.press('Tab');
        await page.keyboard.press('Control+A');
        await page.keyboard.type('7');
        await outcome(page).first().waitFor();
        await page.getByRole('button', { name: 'Take back soilTemperatureMaxC' }).press('Enter');
        await outcome(page).first().waitFor({ state: 'detached' });
      });
    });

    test.each([
      ['day', 4.5],
      ['night', 4.5],
      ['sun', 7],
    ] as const)('by %s axe finds nothing, all unfolded, and words are at least %d to 1', async (look, least) => {
      await onPage(
        {},
        async (page) => {
          await openRule(page, 'Soil', 'Soil too warm');
          await page.getByLabel('soilTemperatureMaxC').first().fill('7');
          await outcome(page).first().waitFor();
          await unfold(page);
          expect([...(await findings(page)), ...(await thinWords(page, least))]).toEqual([]);
          await page.getByLabel('windMostKmh').first().fill('14.5');
          await page.locator('[data-refused]').waitFor();
          expect([...(await findings(page)), ...(await thinWords(page, least))]).toEqual([]);
        },
        async (page) => {
          await page.addInitScript((text) => localStorage.setItem('loamward.comfort', text), JSON.stringify({ look }));
        },
      );
    });

    test.each(viewports)(
      'at $width it speaks of the treatment that is chosen; what was typed for another is there again, and each file names its own',
      async (viewport) => {
        await onPage({ viewport, acceptDownloads: true }, async (page) => {
          await openRule(page, 'Soil', 'Soil too warm');
          await page.getByLabel('soilTemperatureMaxC').first().fill('7');
          const choice = page.getByRole('combobox', { name: 'Treatment' });
          await choice.selectOption('Fluroxypyr on winter wheat');
          await page.locator('.bench summary', { hasText: /^Too cold$/ }).waitFor({ state: 'attached' });
          await page.locator('.bench summary', { hasText: /^Weather$/ }).click();
          await page.locator('.bench summary', { hasText: /^Too cold$/ }).click();
          expect(await page.getByLabel('soilTemperatureMaxC').count()).toBe(0);
          await page.getByLabel('airTemperatureMinC').first().fill('9');
          await outcome(page).first().waitFor();
          expect(await textOf(outcome(page).first())).toMatch(/\d+ of 105 cases change the verdict/);
          await fillHead(page);
          expect(await findings(page)).toEqual([]);
          const exportIt = page.getByRole('button', { name: 'Export as a file' });
          const [download] = await Promise.all([page.waitForEvent('download'), exportIt.click()]);
          expect(JSON.parse(await readFile(await download.path(), 'utf8'))).toMatchObject({
            overlay: { pack: { id: 'fluroxypyr-winter-wheat' } },
            parameters: [{ id: 'airTemperatureMinC', value: 9 }],
          });
          await choice.focus();
          await choice.selectOption('Propyzamide on winter oilseed rape');
          await page.locator('.bench summary', { hasText: /^Soil too warm$/ }).waitFor({ state: 'attached' });
          expect(await choice.evaluate((one) => one === document.activeElement)).toBe(true);
          await page.locator('.bench summary', { hasText: /^Soil$/ }).click();
          await page.locator('.bench summary', { hasText: /^Soil too warm$/ }).click();
          expect(await page.getByLabel('soilTemperatureMaxC').first().inputValue()).toBe('7');
          expect(await page.getByLabel('Reason').inputValue()).toBe('');
        });
      },
    );

    test.each(viewports)(
      'at $width a limit that lies in the middle of an answer is taken once its parts are offered, by one press, and given back by another',
      async (viewport) => {
        await onPage({ viewport, acceptDownloads: true }, async (page) => {
          await openRule(page, 'Weather', 'Too windy');
          await fillHead(page);
          await page.getByLabel('windMostKmh').first().fill('8');
          const refused = page.locator('[data-refused]');
          await refused.waitFor();
          expect(await textOf(refused)).toMatch(/CHOICE_STRADDLES_LIMIT · windMostKmh/);
          await page.getByRole('button', { name: 'Share the answers out at the new limit' }).press('Enter');
          await outcome(page).first().waitFor();
          expect(await refused.count()).toBe(0);
          const shared = page.locator('.bench-shared');
          expect(await textOf(shared)).toContain(
            '“Gentle breeze” becomes “Gentle breeze, up to 8 km/h” and “Gentle breeze, over 8 km/h”.',
          );
          expect(await findings(page)).toEqual([]);
          const exportIt = page.getByRole('button', { name: 'Export as a file' });
          const [download] = await Promise.all([page.waitForEvent('download'), exportIt.click()]);
          const { questions } = JSON.parse(await readFile(await download.path(), 'utf8'));
          expect(questions.map(({ id }: { id: string }) => id)).toEqual(['wind']);
          await page.reload();
          await page.getByRole('button', { name: 'Take back the shared answers' }).click();
          await refused.waitFor();
          expect(await exportIt.isDisabled()).toBe(true);
        });
      },
    );

    test('on the machine of the server it writes into the folder; the running server takes it', async () => {
      await onPage({}, async (page) => {
        await openRule(page, 'Soil', 'Soil too warm');
        await page.getByLabel('soilTemperatureMaxC').first().fill('7');
        await fillHead(page);
        await page.getByRole('button', { name: 'Write into the server’s folder' }).click();
        await page.getByText('Written as colder-soil.json and in force.').waitFor();
        expect(await readdir(pageServer().overlays)).toEqual(['colder-soil.json']);
        const written = JSON.parse(await readFile(join(pageServer().overlays, 'colder-soil.json'), 'utf8'));
        expect(written.parameters[0].value).toBe(7);
        await page.getByRole('button', { name: 'Go on with “Colder soil, invented”' }).waitFor();
        const health = (await (await fetch(`${pageServer().url()}/health`)).json()) as {
          rules: { overlays: object[] };
        };
        expect(health.rules.overlays).toMatchObject([{ id: 'colder-soil' }]);
      });
    });

    test('a file in the server’s folder that cannot be taken is told with its name, what was expected, what came and what to do', async () => {
      const file = join(pageServer().overlays, 'typing.json');
      await writeFile(file, '{ "overlay": ');
      try {
        await onPage({}, async (page) => {
          await openRule(page, 'Soil', 'Soil too warm');
          const refused = page.locator('.bench-refused');
          await expect
            .poll(
              async () => {
                await page.reload();
                await page.getByRole('heading', { name: 'What you change' }).waitFor();
                return (await refused.count()) === 0 ? '' : textOf(refused);
              },
              { timeout: 60_000 },
            )
            .toMatch(
              /not taken; the rules before them stay in force. typing\.json.*RULES_NOT_JSON.*Expected: .+Found: .+What to do: /s,
            );
          expect(await findings(page)).toEqual([]);
        });
      } finally {
        await rm(file);
      }
    });
  });
}
