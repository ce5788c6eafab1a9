import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { answerAll, chooseField, fitDay, textOf } from '../answers.ts';
import { findings, unfold } from '../axe.ts';
import { onPage, pageServer, viewports } from '../session.ts';

const said = (page: Page, text: string) => page.locator('main').getByRole('button', { name: text, exact: true });

/** Types what is said into the box for own words. */
async function say(page: Page, text: string): Promise<void> {
  await page.locator('.free-line input').fill(text);
  await page.locator('.free-line button[type="submit"]').click();
}

/** Trade terms, explained where they stand. */
export function termsSuite(): void {
  describe('a trade term', () => {
    test('opens its explanation right below the sentence that says it, and closes by a second press or Escape', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        await answerAll(page, fitDay);
        await unfold(page);
        const term = said(page, 'label').first();
        await term.click();
        const told = page.locator('.term-told');
        expect(await textOf(told)).toMatch(/^The text on the product that the law binds to/);
        expect(await term.getAttribute('aria-expanded')).toBe('true');
        expect(await term.getAttribute('aria-controls')).toBe(await told.getAttribute('id'));
        const sentence = await term.evaluate((one) => one.closest('p, li')!.getBoundingClientRect().bottom);
        const below = await told.evaluate((one) => one.getBoundingClientRect());
        expect(below.bottom).toBeLessThanOrEqual(sentence + 40);
        await term.press('Escape');
        expect(await told.count()).toBe(0);
        expect(await term.evaluate((one) => one === document.activeElement)).toBe(true);
        expect(await term.evaluate((one) => one.closest('details')?.open ?? true)).toBe(true);
        await term.press('Enter');
        expect(await told.count()).toBe(1);
        await term.press('Enter');
        expect(await told.count()).toBe(0);
      });
    });

    test.each([320, 360, 390, 430])('keeps its full stop or comma on its own line at %d', async (width) => {
      await onPage({ viewport: { width, height: 844 } }, async (page) => {
        await chooseField(page, 'Long Ing');
        await unfold(page);
        const gone = await page.locator('main').evaluate((main) => {
          const walker = document.createTreeWalker(main, NodeFilter.SHOW_TEXT);
          const range = document.createRange();
          const apart: string[] = [];
          let checked = 0;
          while (walker.nextNode()) {
            const { currentNode: node } = walker;
            const term = node.previousSibling;
            if (!(term instanceof HTMLElement) || !/^[.,;:!?)]/.test(node.nodeValue ?? '')) continue;
            const word = term.querySelector('.term > span') ?? term.firstElementChild;
            if (!word || !term.matches('.term, .term-hold') || !term.checkVisibility()) continue;
            range.setStart(node, 0);
            range.setEnd(node, 1);
            checked += 1;
            const last = [...word.getClientRects()].at(-1)!;
            if (Math.abs(range.getBoundingClientRect().top - last.top) > 6) apart.push(word.textContent ?? '');
          }
          return { apart, isAny: checked > 3 };
        });
        expect(gone).toEqual({ apart: [], isAny: true });
      });
    });

    test('takes a finger, but its line is no higher for it', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        await answerAll(page, fitDay);
        await unfold(page);
        const terms = await page.locator('.term').evaluateAll((all) =>
          all
            .filter((one) => one.checkVisibility())
            .map((one) => {
              const { width, height } = one.getBoundingClientRect();
              const word = one.firstElementChild!.getBoundingClientRect();
              const line = Number.parseFloat(getComputedStyle(one).lineHeight);
              const { marginTop, marginBottom } = getComputedStyle(one);
              const taken = height + Number.parseFloat(marginTop) + Number.parseFloat(marginBottom);
              return { width, height, isTall: taken > Math.max(line, word.height) + 1 };
            }),
        );
        expect(terms.length).toBeGreaterThan(10);
        const lost = await page.locator('.term').evaluateAll((all) =>
          all
            .filter((one) => one.checkVisibility())
            .filter((one) => {
              one.scrollIntoView({ block: 'center' });
              const { left, top, width, height } = one.firstElementChild!.getClientRects()[0]!;
              return !one.contains(document.elementFromPoint(left + width / 2, top + height / 2));
            })
            .map((one) => one.textContent),
        );
        expect(lost).toEqual([]);
        expect(terms.filter(({ width, height, isTall }) => width < 48 || height < 48 || isTall)).toEqual([]);
      });
    });

    test.each([
      ['light', viewports[0]],
      ['dark', viewports[0]],
      ['light', viewports[1]],
      ['dark', viewports[1]],
    ] as const)(
      'in %s, all of them open: axe finds nothing, and nothing is wider than the page',
      async (scheme, size) => {
        await onPage({ colorScheme: scheme, viewport: size }, async (page) => {
          for (const field of ['Mill Piece', 'Top Brow']) {
            await chooseField(page, field);
            await answerAll(page, fitDay);
            await unfold(page);
            await page.evaluate(() => {
              for (const one of document.querySelectorAll<HTMLElement>('.term[aria-expanded="false"]')) one.click();
            });
            expect(await page.locator('.term-told').count()).toBeGreaterThan(5);
            expect(await findings(page)).toEqual([]);
            const wide = await page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
            expect(wide).toBe(false);
            await page.getByRole('button', { name: 'Another field' }).click();
          }
        });
      },
    );

    test('is explained in German on the German page', async () => {
      await onPage({}, async (page) => {
        await page.getByRole('button', { name: 'Settings' }).click();
        await page.getByLabel('Deutsch').check();
        await page.getByRole('heading', { name: 'Welches Feld?' }).waitFor();
        await page.getByRole('button', { name: /Mill Piece/ }).click();
        await page.locator('#question-heading').waitFor();
        await say(page, 'was heißt Feldkapazität?');
        await said(page, 'Drainagen').first().click();
        expect(await textOf(page.locator('.term-told'))).toMatch(/^Rohre oder Gänge unter dem Feld/);
      });
    });

    test('unfolds in a shown answer too, where no script runs', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        await answerAll(page, fitDay);
        await page.getByText('Print, send or show this answer').click();
        await page.getByRole('button', { name: 'Make a link' }).click();
        await page.getByText('The link is made.').waitFor();
        const address = (await page.locator('.address').getAttribute('href'))!;
        await page.goto(pageServer().url() + address);
        const lines = (one: Element) =>
          one.getBoundingClientRect().height / Number.parseFloat(getComputedStyle(one).lineHeight);
        expect(
          await page
            .locator('main li')
            .filter({ hasText: /^Field drained/ })
            .evaluate(lines),
        ).toBeLessThan(1.5);
        const term = page.locator('.term-fold').first();
        await term.locator('summary').press('Enter');
        expect(await textOf(term.locator('.term-told'))).toMatch(/\(.*\)$/);
        expect(await findings(page)).toEqual([]);
      });
    });
  });

  test('whoever stops is told how each field stands, and the question waits', async () => {
    await onPage({}, async (page) => {
      await chooseField(page, 'Mill Piece');
      const asked = await textOf(page.locator('#question-heading'));
      await say(page, 'stop');
      const line = page.locator('[role="log"] .line').filter({ hasText: 'Here we stop.' });
      await line.waitFor();
      expect(await textOf(line)).toMatch(/Mill Piece: no answer yet\. .*: not looked at today\./);
      expect(await textOf(page.locator('#question-heading'))).toBe(asked);
    });
  });
}
