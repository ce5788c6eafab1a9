import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { runCommandLine } from '../../../src/cli/main.ts';
import { fakeIo } from '../../cli/fake-io.ts';
import { chooseField, textOf } from '../answers.ts';
import { findings, thinWords, unfold } from '../axe.ts';
import { onPage, viewports } from '../session.ts';

const pages = [
  ['logic', 'How the rules think', '.logic-node'],
  ['glossary', 'Glossary', '.glossary-term'],
  ['hand', 'Hand test', '.choice'],
  ['card', 'Card for the cab', '.cab-card'],
] as const;

async function openPage(page: Page, place: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, place);
  const wanted = pages.find(([name]) => name === place)?.[2] ?? '.learn';
  await page.locator(wanted).first().waitFor();
}

const focused = (page: Page) => page.evaluate(() => document.activeElement?.id ?? '');
const setLook = (look: string) => async (page: Page) => {
  await page.addInitScript((text) => localStorage.setItem('loamward.comfort', text), JSON.stringify({ look }));
};

/** Pages of a printed document: page objects of the file, leaves of its tree of pages. */
async function printedPages(page: Page): Promise<number> {
  const pdf = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1');
  return pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

/** Headings of the card, on paper, that stand at the foot of a column without the first line of what they head. */
async function lonelyHeadings(page: Page): Promise<(string | null)[]> {
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 718, height: 1047 });
  const lonely = await page.locator('.cab-parts section').evaluateAll((all) =>
    all
      .map((one) => [one.querySelector('h3'), one.querySelector('li')] as const)
      .filter(([head, line]) => line!.getClientRects()[0]!.top < head!.getBoundingClientRect().bottom - 1)
      .map(([head]) => head!.textContent),
  );
  await page.emulateMedia({ media: null });
  return lonely;
}

/** The card as `loamward card --html` writes it. */
async function writtenCard(language: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'loamward-card-'));
  try {
    const file = join(folder, 'card.html');
    expect(await runCommandLine(['card', '--language', language, '--html', file], fakeIo({}))).toBe(0);
    return await readFile(file, 'utf8');
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** The pages for learning: the picture by keys, the glossary, the hand test, the card on paper. */
export function learningSuite(): void {
  test.each(pages)(
    '#%s is reached from the start screen and from the foot, takes the focus, and leads back',
    async (place, name, part) => {
      await onPage({}, async (page) => {
        for (const where of ['.start', '.foot']) {
          await page.locator(where).getByRole('link', { name, exact: true }).click();
          await page.locator(part).first().waitFor();
          expect(await page.evaluate(() => location.hash)).toBe(`#${place}`);
          expect(await focused(page)).toBe('learn-heading');
          await page.getByRole('link', { name: 'Back', exact: true }).click();
          await page.getByRole('heading', { name: 'Which field?' }).waitFor();
        }
      });
    },
  );

  test.each([
    ['day', 4.5, viewports[0]],
    ['night', 4.5, viewports[0]],
    ['sun', 7, viewports[0]],
    ['day', 4.5, viewports[1]],
  ] as const)(
    'by %s axe finds nothing on any of them, words are %d to 1, nothing is wider than the page at %o',
    async (look, least, viewport) => {
      await onPage(
        { viewport },
        async (page) => {
          for (const [place] of pages) {
            await openPage(page, place);
            await unfold(page);
            if (place === 'logic') await page.locator('#node-rule_soil-too-dry').click();
            if (place === 'hand') await page.locator('.choice').first().click();
            expect(await findings(page)).toEqual([]);
            expect(await thinWords(page, least)).toEqual([]);
            expect(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth)).toBe(false);
          }
        },
        setLook(look),
      );
    },
    60_000,
  );

  describe('the picture of the rules', () => {
    test('takes one Tab, is walked with the arrow keys along its links, and says what each opens', async () => {
      await onPage({ viewport: viewports[1] }, async (page) => {
        await openPage(page, 'logic');
        expect(await page.locator('.logic-node[tabindex="0"]').count()).toBe(1);
        await page.locator('#node-question_wind').click();
        await page.keyboard.press('Escape');
        await page.keyboard.press('ArrowRight');
        await page.waitForFunction(() => document.activeElement?.id === 'node-fact_wind_boomKmh');
        expect(await page.locator('.logic-node[tabindex="0"]').count()).toBe(1);
        expect(await page.locator(':focus').textContent()).toMatch(/^Wind at boom height: leads to .*too windy/);
        expect(await page.locator('.logic-links .is-lit').count()).toBeGreaterThan(3);
        await page.keyboard.press('ArrowRight');
        await page.waitForFunction(() => document.activeElement?.id.startsWith('node-rule_'));
        const first = await focused(page);
        await page.keyboard.press('ArrowDown');
        await page.waitForFunction((was) => document.activeElement?.id !== was, first);
        expect(await focused(page)).toMatch(/^node-rule_/);
        await page.keyboard.press('ArrowLeft');
        await page.waitForFunction(() => document.activeElement?.id === 'node-fact_wind_boomKmh');
      });
    });

    test('Enter opens the rule: sentence, limit with unit, source and why; Escape closes it', async () => {
      await onPage({ viewport: viewports[1] }, async (page) => {
        await openPage(page, 'logic');
        await page.locator('#node-rule_soil-too-warm').focus();
        await page.keyboard.press('Enter');
        const told = page.locator('#node-rule_soil-too-warm-told');
        await told.waitFor();
        const text = await textOf(told);
        expect(text).toContain('soil temperature at 30 cm is above 10 C');
        for (const word of ['Source', 'Why', 'Who says so', 'Limit: soilTemperatureMaxC']) expect(text).toContain(word);
        await page.keyboard.press('Escape');
        expect(await told.count()).toBe(0);
      });
    });

    test('on a phone its columns fold up, and links are followed by pressing', async () => {
      await onPage({}, async (page) => {
        await openPage(page, 'logic');
        expect(await page.locator('.logic-links').isVisible()).toBe(false);
        expect(await page.locator('#node-question_wind').isVisible()).toBe(true);
        expect(await page.locator('#node-fact_soil_feel').isVisible()).toBe(false);
        await page.locator('.logic-column summary').nth(3).click();
        expect(await page.locator('#node-effect_stop').isVisible()).toBe(true);
        await page.locator('#node-question_soil-feel').click();
        await page.locator('.logic-follow .button').first().click();
        await page.waitForFunction(() => document.activeElement?.id === 'node-fact_soil_feel');
        expect(await page.locator('#node-fact_soil_feel').isVisible()).toBe(true);
      });
    });

    test('a step of the tour tells each answer, and shows itself in the picture', async () => {
      await onPage({ viewport: viewports[1] }, async (page) => {
        await openPage(page, 'logic');
        const step = page.locator('.tour-steps > li').filter({ hasText: 'How does the soil feel in the hand?' });
        await step.locator('summary').click();
        expect(await textOf(step)).toMatch(/Dry.*Holds: soil too dry.*Then wait is sure/);
        await step.getByRole('button', { name: 'Show it in the picture' }).click();
        await page.waitForFunction(() => document.activeElement?.id === 'node-question_soil-feel');
      });
    });
  });

  describe('the glossary', () => {
    test('is searched by typing, and an explained term leads to its place in it', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        await page.getByText('How do I find out?').first().click();
        await page.locator('.term').first().click();
        await page.getByRole('link', { name: 'More in the glossary' }).first().click();
        await page.waitForFunction(() => document.activeElement?.id.startsWith('term-'));
        await page.getByRole('textbox', { name: 'Search' }).fill('field cap');
        expect(await page.locator('.glossary-term h3').allTextContents()).toEqual(['Field capacity']);
        await page.getByRole('textbox', { name: 'Search' }).fill('qqq');
        expect(await page.locator('.glossary-term').count()).toBe(0);
        await page.goBack();
        await page.locator('.question').waitFor();
      });
    });
  });

  describe('the hand test', () => {
    test('tells why after a mistake, brings it back, ends once all is sure, and keeps how far one is', async () => {
      await onPage({}, async (page) => {
        await openPage(page, 'hand');
        await page.getByRole('button', { name: 'Medium: loam' }).click();
        const names = ['Dry', 'Slightly moist', 'Moist', 'Wet', 'As wet as it can hold', 'Saturated'];
        const drawn = () => page.locator('.picture svg').getAttribute('aria-label');
        const classes = new Map<string, string>();
        for (let turn = 0; turn < 60 && (await page.locator('.choice').count()) > 0; turn += 1) {
          const said = (await drawn()) ?? '';
          const name = classes.get(said) ?? names.find((one) => ![...classes.values()].includes(one)) ?? 'Dry';
          await page.getByRole('button', { name, exact: true }).click();
          const told = await textOf(page.locator('.hand-told'));
          const right = /^(?:Right: |No\. This is “)([^.,”]+)/.exec(told)?.[1] ?? '';
          classes.set(said, right);
          if (told.startsWith('No.')) expect(told).toContain(`${name} would be: `);
          if (turn === 3) {
            await page.reload();
            await page.getByRole('button', { name: 'Medium: loam' }).click();
            expect(await page.evaluate(() => localStorage.getItem('loamward.hand.medium'))).toContain('"turn":4');
            continue;
          }
          await page.getByRole('button', { name: 'Next one' }).click();
        }
        expect(classes.size).toBe(6);
        await page.getByRole('heading', { name: /^You are sure/ }).waitFor();
      });
    }, 60_000);
  });

  test.each(['en', 'de'])('the card fits one A4 page in %s, that of the command line too', async (language) => {
    await onPage({}, async (page) => {
      await page.evaluate((code) => localStorage.setItem('loamward.language', code), language);
      await page.evaluate(() => {
        location.hash = 'card';
      });
      await page.reload();
      await page.locator('.cab-card').waitFor();
      expect(await page.locator('.cab-card li').count()).toBeGreaterThan(40);
      expect(await printedPages(page)).toBe(1);
      expect(await lonelyHeadings(page)).toEqual([]);
      const written = await page.context().newPage();
      await written.setContent(await writtenCard(language));
      expect(await written.locator('li').count()).toBeGreaterThan(40);
      expect(await findings(written)).toEqual([]);
      expect(await printedPages(written)).toBe(1);
    });
  });
}
