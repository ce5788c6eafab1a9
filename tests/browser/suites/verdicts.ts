import { describe, expect, test } from 'vitest';
import { answerAll, chooseField, fitDay, textOf, verdictHeading } from '../answers.ts';
import { onPage, viewports } from '../session.ts';

const fields = [
  ['Mill Piece', 'spray-today', /^Spray today/],
  ['Top Brow', 'wait', /^Wait/],
  ['Long Ing', 'do-not-spray', /^Do not spray/],
] as const;

/** The demo farm leads to each of the three verdicts by clicking. */
export function verdictSuite(): void {
  describe.each(viewports)('at $width by $height', (viewport) => {
    test.each(fields)('%s leads to %s, labelled invented', async (field, verdict, sentence) => {
      await onPage({ viewport }, async (page) => {
        await chooseField(page, field);
        await answerAll(page, fitDay);
        expect(await textOf(page.locator(verdictHeading))).toMatch(sentence);
        expect(await page.locator(`.verdict.is-${verdict}`).count()).toBe(1);
        expect(await page.locator('header').getByText('Invented', { exact: true }).count()).toBe(1);
        expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
      });
    });
  });

  test('a spray-today shows reasons, cautions, source, pack and how long it stands, and unfolds every rule', async () => {
    await onPage({}, async (page) => {
      await chooseField(page, 'Mill Piece');
      await answerAll(page, fitDay);
      const card = page.locator('.verdict');
      expect(await card.locator('.cautions li:visible').count()).toBeGreaterThan(8);
      const text = await textOf(card);
      for (const part of ['label in hand', 'Forecast fetched', 'Invented weather', 'Rules: ', 'stands until']) {
        expect(text).toContain(part);
      }
      await card.getByText('Every rule, one by one').click();
      const rules = card.locator('.rule');
      expect(await rules.count()).toBe(35);
      await rules.filter({ hasText: 'Soil too warm' }).locator('summary').click();
      const rule = await textOf(rules.filter({ hasText: 'Soil too warm' }));
      for (const part of ['8.6', '10 C', 'common practice', 'soil-too-warm']) expect(rule).toContain(part);
    });
  });

  test('cautions stay within reach where the answer is to wait', async () => {
    await onPage({}, async (page) => {
      await chooseField(page, 'Top Brow');
      await answerAll(page, fitDay);
      await page.getByText('Cautions, always').click();
      expect(await page.locator('.cautions li:visible').count()).toBeGreaterThan(8);
    });
  });

  test('the dose is worked out on request, after the label has been read', async () => {
    await onPage({}, async (page) => {
      await chooseField(page, 'Mill Piece');
      await answerAll(page, fitDay);
      await page.getByRole('button', { name: 'Work out the dose' }).click();
      await page.locator('.question').waitFor();
      await answerAll(page, [
        [/how much propyzamide is in/i, { number: '400' }],
        [/label/i, { number: '840' }],
      ]);
      const dose = page.locator('.verdict p', { hasText: 'g/ha of active' });
      // 750 g/ha (common practice) of a 400 g/L product: 1.875, rounded down to 1.87 L/ha.
      await dose.getByText('1.87 L/ha').waitFor();
    });
  });
}
