import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { parseEvents } from '../../../src/core/protocol/events/parse-events.ts';
import { answerAll, answerOnce, chooseField, fitDay, questionHeading, textOf, verdictHeading } from '../answers.ts';
import { expectOnServerOnce, idsInPage, inProfile, tokenOf } from '../offline-steps.ts';
import { untilAlone, untilBack, untilReady } from '../offline-waits.ts';
import { pageServer } from '../session.ts';

/** A whole conversation without a connection, and handing it over. */
export function offlineSuite(): void {
  describe('without a signal', () => {
    test('a page that was loaded once goes on after a reload to its verdict, and hands each event over exactly once', async () => {
      await inProfile(async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        const asked = [await answerOnce(page, fitDay)];
        await pageServer().closeFor(async () => {
          await untilAlone(page);
          await page.reload();
          await untilAlone(page);
          await page.locator(questionHeading).waitFor();
          asked.push(...(await answerAll(page, fitDay)));
          expect(new Set(asked).size).toBe(asked.length);
          expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
          expect(await textOf(page.locator('.verdict'))).toContain('Rules: ');
        });
        await untilBack(page);
        await expectOnServerOnce(page);
        const kept = (await pageServer().kept(await tokenOf(page))).length;
        await pageServer().closeFor(() => untilAlone(page));
        await untilBack(page);
        await expectOnServerOnce(page);
        expect((await pageServer().kept(await tokenOf(page))).length).toBe(kept);
        expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
        expect(await page.getByRole('alert').count()).toBe(0);
      });
    });

    test('all that was said and judged is saved as a file, the verdict with its facts, and can be read again', async () => {
      await inProfile(async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await answerAll(page, fitDay);
        expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
        const token = await tokenOf(page);
        await expect
          .poll(async () => (await idsInPage(page, token)).length)
          .toBe((await pageServer().kept(token)).length);
        await page.evaluate(() => localStorage.removeItem('loamward.token'));
        await page.reload();
        await page.getByRole('heading', { name: 'Which field?' }).waitFor();
        const coming = page.waitForEvent('download');
        await page.getByRole('button', { name: 'Save what was said and judged as a file' }).click();
        const download = await coming;
        expect(download.suggestedFilename()).toBe('loamward-events.json');
        const parsed = parseEvents(JSON.parse(await readFile(await download.path(), 'utf8')));
        expect(parsed).toMatchObject({ ok: true });
        const events = parsed.ok ? parsed.events : [];
        expect(events.map(({ id }) => id).sort()).toEqual((await pageServer().kept(token)).map(({ id }) => id).sort());
        expect(events.find(({ kind }) => kind === 'verdict-given')).toMatchObject({
          decision: { verdict: 'spray-today' },
        });
        await page.getByText(`Saved as loamward-events.json: ${events.length} events.`).waitFor();
      });
    });

    test('a conversation that is begun without a signal, from the choice of the field on, ends up on the server', async () => {
      await inProfile(async (page) => {
        await chooseField(page, 'Top Brow');
        await untilReady(page);
        await page.evaluate(() => localStorage.removeItem('loamward.token'));
        await pageServer().closeFor(async () => {
          await page.reload();
          await page.getByRole('heading', { name: 'Which field?' }).waitFor();
          await chooseField(page, 'Mill Piece');
          await answerAll(page, fitDay);
          expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
        });
        const token = await tokenOf(page);
        expect(token).toMatch(/^[0-9a-f]{64}$/);
        await untilBack(page);
        expect(await tokenOf(page)).toBe(token);
        await expectOnServerOnce(page);
        expect((await pageServer().kept(token)).some(({ kind }) => kind === 'verdict-given')).toBe(true);
      });
    });

    test('a page that is killed in the middle is where it was when it is opened again, and asks nothing twice', async () => {
      await inProfile(async (page, context) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await pageServer().closeFor(async () => {
          await untilAlone(page);
          const asked = [await answerOnce(page, fitDay)];
          const open = await textOf(page.locator(questionHeading));
          const token = await tokenOf(page);
          const before = await idsInPage(page, token);
          await page.close({ runBeforeUnload: false });
          const again = await context.newPage();
          await again.goto(pageServer().url());
          await again.locator(questionHeading).waitFor();
          expect(await textOf(again.locator(questionHeading))).toBe(open);
          expect(await idsInPage(again, token)).toEqual(expect.arrayContaining(before));
          asked.push(...(await answerAll(again, fitDay)));
          expect(new Set(asked).size).toBe(asked.length);
          expect(await textOf(again.locator(verdictHeading))).toMatch(/^Spray today/);
        });
        const last = context.pages().at(-1)!;
        await untilBack(last);
        await expectOnServerOnce(last);
      });
    });

    test('a server that comes back knowing nothing is given the whole conversation again', async () => {
      await inProfile(async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await answerOnce(page, fitDay);
        const token = await tokenOf(page);
        await pageServer().closeFor(async () => {
          await untilAlone(page);
          pageServer().forget();
        });
        await untilBack(page);
        expect(await tokenOf(page)).toBe(token);
        await answerAll(page, fitDay);
        expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
        expect((await pageServer().kept(token))[0]?.kind).toBe('started');
        await expectOnServerOnce(page);
        expect(await page.getByRole('alert').count()).toBe(0);
      });
    });
  });
}
