import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { reportOf } from '../../../src/core/errors/coded-error.ts';
import { answerAll, chooseField, fitDay, questionHeading, textOf } from '../answers.ts';
import { findings } from '../axe.ts';
import { onPage, withoutWorker } from '../session.ts';

/** Holds back what matches until it is let go. */
async function holdBack(page: Page, what: string): Promise<() => void> {
  let letGo = (): void => {};
  const gate = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  await page.route(what, async (route) => {
    await gate;
    await route.continue();
  });
  return letGo;
}

/** What takes long is told, and what fails says what happened, what is safe and what to do next. */
export function mishapSuite(): void {
  describe('waiting and failing', () => {
    test('a refusal says what happened, what is safe and what to do next, and can be put away', async () => {
      let refuse = (): void => {};
      await onPage(
        {},
        async (page) => {
          await chooseField(page, 'Mill Piece');
          refuse();
          const alert = page.getByRole('alert');
          await alert.waitFor();
          const text = await textOf(alert);
          for (const part of ['That did not go through', 'do not spray', 'Choose one of the fields', 'FIELD_UNKNOWN']) {
            expect(text).toContain(part);
          }
          expect(await findings(page)).toEqual([]);
          await alert.getByRole('button', { name: 'Put away' }).click();
          expect(await page.getByRole('alert').count()).toBe(0);
        },
        async (page) => {
          await page.routeWebSocket('**/chat', (socket) => {
            const server = socket.connectToServer();
            server.onMessage((message) => socket.send(message));
            refuse = () => {
              const error = reportOf('FIELD_UNKNOWN', { expected: 'a field', came: 'another' });
              socket.send(JSON.stringify({ type: 'error', error, of: null }));
            };
          });
        },
      );
    });

    test('before the page is there it says so, and that nothing is to be sprayed on it', async () => {
      await onPage(
        {},
        async (page) => {
          const letGo = await holdBack(page, '**/assets/*.js');
          await page.reload({ waitUntil: 'commit' });
          await page.getByText('Nothing can be answered before the page is there').waitFor();
          letGo();
          await page.getByRole('heading', { name: 'Which field?' }).waitFor();
          expect(await page.getByText('Loading…').count()).toBe(0);
        },
        withoutWorker,
      );
    });

    test('a drawing, the hand-over and the making of a link that take long say that they are on their way', async () => {
      await onPage(
        {},
        async (page) => {
          await chooseField(page, 'Mill Piece');
          const showDrawing = await holdBack(page, '**/assets/*.js');
          await page.getByText('How do I find out?').first().click();
          await page.getByRole('status').getByText('Loading this part…').waitFor();
          showDrawing();
          await page.locator('.picture').first().waitFor();
          await answerAll(page, fitDay);
          await page.getByText('Print, send or show this answer').click();
          const makeLink = await holdBack(page, '**/hand-over?*');
          await page.getByRole('button', { name: 'Make a link' }).click();
          await page.getByRole('status').getByText('Making the link…').waitFor();
          expect(await page.getByRole('button', { name: 'Make a link' }).isDisabled()).toBe(true);
          makeLink();
          await page.getByText('The link is made.').waitFor();
        },
        withoutWorker,
      );
    });

    test('a link that cannot be made says so, and nothing is shown', async () => {
      await onPage(
        {},
        async (page) => {
          await chooseField(page, 'Mill Piece');
          await answerAll(page, fitDay);
          await page.getByText('Print, send or show this answer').click();
          await page.route('**/hand-over?*', (route) => route.abort());
          await page.getByRole('button', { name: 'Make a link' }).click();
          await page.getByText('The server was not reached. Nothing is shown.').waitFor();
          expect(await page.locator('.address').count()).toBe(0);
        },
        withoutWorker,
      );
    });

    test('a page that cannot be drawn says so instead of standing empty', async () => {
      await onPage({}, async (page) => {
        await page.evaluate(() => {
          Array.prototype.findLast = () => {
            throw new RangeError('broken on purpose');
          };
        });
        await page.getByRole('button', { name: /^Mill Piece/ }).click();
        const alert = page.getByRole('alert');
        await alert.getByText('do not spray on it').waitFor();
        await alert.getByRole('button', { name: 'Load the page anew' }).click();
        await page.locator(questionHeading).waitFor();
      });
    });

    test('whatever has the focus is seen, above the box at the bottom of a phone', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        const hidden: string[] = [];
        for (let presses = 0; presses < 25; presses++) {
          await page.keyboard.press('Tab');
          const covered = await page.evaluate(() => {
            const focused = document.activeElement;
            if (!focused || focused === document.body) return null;
            const { left, top, width, height } = focused.getBoundingClientRect();
            const seen = document.elementFromPoint(left + width / 2, top + height / 2);
            const isSeen = seen && (focused.contains(seen) || seen.contains(focused));
            return isSeen ? null : focused.outerHTML.slice(0, 100);
          });
          if (covered) hidden.push(covered);
        }
        expect(hidden).toEqual([]);
      });
    });
  });
}
