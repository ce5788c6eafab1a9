import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import { filesOf } from '../../fixtures/mini-pack.ts';
import { springPack } from '../../fixtures/spring-pack.ts';
import { type Answers, answerAll, chooseField, questionHeading, textOf, verdictHeading } from '../answers.ts';
import { findings } from '../axe.ts';
import { expectOnServerOnce, inProfile, tokenOf } from '../offline-steps.ts';
import { untilAlone, untilBack, untilReady } from '../offline-waits.ts';
import { onPage, pageServer, viewports } from '../session.ts';

const { pack: spring } = loadPack(filesOf(springPack()));
const rapeTitle = 'Propyzamide on winter oilseed rape';

/** A crop too young for the treatment. */
const tooYoung: Answers = [
  [/stage/, { number: '8' }],
  [/dew/, 'No'],
  [/vigour/, 'Growing well'],
  [/damage/, { signs: [] }],
  [/night/, { number: '5' }],
  [/wind/, { number: '6' }],
];

const group = (page: Page) => page.getByRole('group', { name: 'Which treatment?' });
const fieldButtons = (page: Page) => page.locator('.start:not(.earlier) .field-choice');
const nameOnTop = (page: Page) => textOf(page.locator('.masthead-name p'));

async function chooseSpring(page: Page): Promise<void> {
  await page.getByRole('radio', { name: 'Spring, invented' }).check();
  await chooseField(page, 'My own field');
}

/** Where the server has several treatments. */
export function treatmentSuite(): void {
  test('with one treatment nothing is asked of it, and its name stands on top', async () => {
    await onPage({}, async (page) => {
      expect(await page.getByRole('radio', { name: rapeTitle }).count()).toBe(0);
      expect(await nameOnTop(page)).toContain(rapeTitle);
    });
  });

  describe('with two treatments', () => {
    let alone: ReturnType<ReturnType<typeof pageServer>['rules']>;
    beforeAll(async () => {
      alone = pageServer().rules();
      await pageServer().closeFor(async () => pageServer().useRules([...alone, spring]));
    });
    afterAll(() => pageServer().closeFor(async () => pageServer().useRules(alone)));

    test.each([
      ['light', viewports[0]],
      ['dark', viewports[1]],
    ] as const)('the start asks which, by pointer, keyboard and screen reader (%s)', async (colorScheme, viewport) => {
      await onPage({ colorScheme, viewport }, async (page) => {
        const [first, second] = [rapeTitle, 'Spring, invented'].map((name) => group(page).getByRole('radio', { name }));
        expect([await first!.isChecked(), await second!.isChecked()]).toEqual([true, false]);
        expect(await fieldButtons(page).count()).toBe(4);
        for (const label of await group(page).locator('label').all()) {
          expect((await label.boundingBox())?.height).toBeGreaterThanOrEqual(44);
        }
        expect(await findings(page)).toEqual([]);
        await first!.focus();
        await page.keyboard.press('ArrowDown');
        expect(await second!.isChecked()).toBe(true);
        expect(await fieldButtons(page).count()).toBe(1);
        expect(await findings(page)).toEqual([]);
        await second!.focus();
        await page.keyboard.press('ArrowUp');
        expect(await fieldButtons(page).count()).toBe(4);
      });
    });

    test('a conversation in the second reaches a verdict, keeps its treatment over a reload and a new start, and stands in the list', async () => {
      await inProfile(async (page) => {
        await chooseSpring(page);
        expect(await nameOnTop(page)).toContain('Spring, invented');
        await answerAll(page, tooYoung);
        expect(await textOf(page.locator(verdictHeading))).toMatch(/^Wait/);
        await page.reload();
        await page.locator(verdictHeading).waitFor();
        expect(await nameOnTop(page)).toContain('Spring, invented');
        const token = await tokenOf(page);
        await page.getByRole('button', { name: 'Start again on this field' }).click();
        await page.locator(questionHeading).waitFor();
        expect([await tokenOf(page), await nameOnTop(page)]).toEqual([
          token,
          expect.stringContaining('Spring, invented'),
        ]);
        await untilReady(page);
        await page.getByRole('button', { name: 'Another field' }).click();
        expect(await page.getByRole('radio', { name: 'Spring, invented' }).isChecked()).toBe(true);
        await page.getByRole('radio', { name: rapeTitle }).check();
        await chooseField(page, 'Mill Piece');
        expect(await nameOnTop(page)).toContain(rapeTitle);
        expect(await tokenOf(page)).not.toBe(token);
        expect(await page.getByText('There are newer rules.').count()).toBe(0);
        await page.getByRole('button', { name: 'Another field' }).click();
        const earlier = page.locator('.earlier .field-choice');
        await earlier.filter({ hasText: 'Spring, invented' }).click();
        await page.locator(questionHeading).waitFor();
        expect([await tokenOf(page), await nameOnTop(page)]).toEqual([
          token,
          expect.stringContaining('Spring, invented'),
        ]);
        const kept = await pageServer().kept(token);
        const begun = kept.flatMap((event) => (event.kind === 'started' ? [event.packHash] : []));
        expect(begun).toEqual([spring.hash, spring.hash]);
      });
    });

    test('the pages for learning speak of the treatment that is chosen there; the hand test is the same for all', async () => {
      await onPage({}, async (page) => {
        for (const [name, told] of [
          ['How the rules think', 'too-early'],
          ['Card for the cab', 'Invented, for tests'],
        ] as const) {
          await page.locator('.foot').getByRole('link', { name, exact: true }).click();
          const choice = page.getByRole('combobox', { name: 'Treatment' });
          await choice.waitFor();
          expect((await choice.boundingBox())?.height).toBeGreaterThanOrEqual(44);
          await choice.selectOption('Spring, invented');
          await page.locator('.learn').getByText(told).first().waitFor({ state: 'attached' });
          expect(await findings(page)).toEqual([]);
          await choice.selectOption(rapeTitle);
          await page.locator('.learn').getByText(told).first().waitFor({ state: 'detached' });
        }
        await page.locator('.foot').getByRole('link', { name: 'Hand test', exact: true }).click();
        await page.locator('.learn.is-hand .choice').first().waitFor();
        expect(await page.getByRole('combobox').count()).toBe(0);
      });
    });

    test('without a signal each treatment can be begun; what was said is handed over under it', async () => {
      await inProfile(async (page) => {
        await chooseField(page, 'Mill Piece');
        await untilReady(page);
        await pageServer().closeFor(async () => {
          await untilAlone(page);
          await page.getByRole('button', { name: 'Another field' }).click();
          await chooseSpring(page);
          await answerAll(page, tooYoung);
          expect(await textOf(page.locator(verdictHeading))).toMatch(/^Wait/);
          expect(await nameOnTop(page)).toContain('Spring, invented');
        });
        await untilBack(page);
        await expectOnServerOnce(page);
        const kept = await pageServer().kept(await tokenOf(page));
        const verdict = kept.findLast((event) => event.kind === 'verdict-given');
        expect(verdict).toMatchObject({ decision: { pack: { id: 'spring-pack', hash: spring.hash } } });
      });
    });
  });
}
