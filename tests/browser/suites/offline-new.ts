import { describe, expect, test } from 'vitest';
import { shipped } from '../../cases/shipped-pack.ts';
import { answerAll, answerOnce, chooseField, fitDay, questionHeading, textOf, verdictHeading } from '../answers.ts';
import { findings } from '../axe.ts';
import { inProfile, tokenOf } from '../offline-steps.ts';
import { untilAlone, untilBack, untilReady } from '../offline-waits.ts';
import { pageServer } from '../session.ts';

/** Newer pages, newer rules, new conversations. */
export function offlineNewSuite(): void {
  describe('what is new waits', () => {
    test('a newer page is announced, used only when the person asks, and never under a question', async () => {
      await inProfile(async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await pageServer().closeFor(() => pageServer().renewPage());
        await page.getByText('A new version of this page is there. It is used after this conversation.').waitFor();
        expect(await page.getByRole('button', { name: 'Use the new version' }).count()).toBe(0);
        await page.reload();
        await page.locator(questionHeading).waitFor();
        const newer = page.locator('meta[name=newer]');
        expect(await newer.count()).toBe(0);
        await answerAll(page, fitDay);
        expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
        const loaded = page.waitForEvent('load');
        await page.getByRole('button', { name: 'Use the new version' }).click();
        await loaded;
        await page.locator(verdictHeading).waitFor();
        expect(await newer.count()).toBe(1);
      });
    });

    test('newer rules are announced, and a conversation without a signal stays with those it was begun under', async () => {
      await inProfile(async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await answerOnce(page, fitDay);
        const rules = pageServer().rules();
        await pageServer().closeFor(async () => {
          await untilAlone(page);
          pageServer().useRules([{ ...shipped.pack, hash: 'f'.repeat(64), version: '99.0.0' }, ...rules]);
        });
        await untilBack(page);
        await page.getByText('There are newer rules.').waitFor();
        await answerAll(page, fitDay);
        const kept = await pageServer().kept(await tokenOf(page));
        const verdict = kept.findLast((event) => event.kind === 'verdict-given');
        expect(verdict).toMatchObject({ decision: { pack: { hash: shipped.pack.hash } } });
      });
    });

    test('a conversation whose rules the server lacks stays on the device and says so; a new start goes to the server', async () => {
      await inProfile(async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await answerOnce(page, fitDay);
        const rules = pageServer().rules();
        const before = await tokenOf(page);
        await pageServer().closeFor(async () => {
          await untilAlone(page);
          pageServer().forget();
          pageServer().useRules([{ ...shipped.pack, hash: 'e'.repeat(64), version: '98.0.0' }]);
        });
        try {
          const notice = page.getByText('The server does not have the rules that this conversation was begun under.');
          await notice.waitFor({ timeout: 60_000 });
          await answerAll(page, fitDay);
          expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
          await page.reload();
          await page.locator(verdictHeading).waitFor();
          await notice.waitFor({ timeout: 60_000 });
          expect(await page.getByRole('alert').count()).toBe(0);
          expect(await pageServer().kept(before)).toEqual([]);
          expect(await findings(page)).toEqual([]);
          await page.getByRole('button', { name: 'Start again on this field' }).click();
          await page.locator(questionHeading).waitFor();
          expect(await notice.count()).toBe(0);
          const begun = (await pageServer().kept(await tokenOf(page))).find(({ kind }) => kind === 'started');
          expect(begun).toMatchObject({ packHash: 'e'.repeat(64) });
        } finally {
          await pageServer().closeFor(async () => pageServer().useRules(rules));
        }
      });
    });

    test('a start on another day begins a conversation of its own; the earlier one can be gone back to', async () => {
      await inProfile(async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await answerAll(page, fitDay);
        const before = await tokenOf(page);
        await pageServer().closeFor(async () => {
          await untilAlone(page);
          pageServer().pass(13 * 3600);
        });
        await untilBack(page);
        await page.getByRole('button', { name: 'Another field' }).click();
        await page.getByRole('button', { name: 'Top Brow' }).click();
        await page.getByRole('heading', { name: /Top Brow/ }).waitFor();
        expect(await tokenOf(page)).not.toBe(before);
        await page.getByRole('button', { name: 'Another field' }).click();
        await page.getByRole('button', { name: /Mill Piece, .*Spray today/ }).waitFor();
        expect(await findings(page)).toEqual([]);
        await page.getByRole('button', { name: /Mill Piece, .*Spray today/ }).click();
        await page.getByRole('heading', { name: /Mill Piece/ }).waitFor();
        expect(await tokenOf(page)).toBe(before);
      });
    });
  });
}
