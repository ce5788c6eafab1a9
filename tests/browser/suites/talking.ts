import { describe, expect, test } from 'vitest';
import {
  answerAll,
  answerOnce,
  chooseField,
  fitDay,
  questionGone,
  questionHeading,
  textOf,
  verdictHeading,
} from '../answers.ts';
import { onPage } from '../session.ts';

/** Free text, taking back, boxes that refuse, the place of the device. */
export function talkingSuite(): void {
  describe('talking', () => {
    test('own words answer several questions at once and are said back', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        await page.getByLabel('Or say it in your own words').fill('moist, 8.6 at 30 cm');
        await page.getByRole('button', { name: 'Send' }).click();
        const understood = page.getByRole('log').getByText(/^Understood/);
        await understood.waitFor();
        for (const part of ['moist', '8.6 C']) expect(await textOf(understood)).toContain(part);
        expect(await answerAll(page, fitDay)).toEqual([expect.stringContaining('surface')]);
        expect(await textOf(page.locator(verdictHeading))).toMatch(/^Spray today/);
      });
    });

    test('what was told can be taken back, and is asked again', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        const first = await answerOnce(page, fitDay);
        await page.getByRole('log').getByRole('button', { name: /^Undo/ }).first().click();
        await page
          .getByRole('log')
          .getByText(/^Taken back/)
          .waitFor();
        expect(await answerAll(page, fitDay)).toContain(first);
      });
    });

    test('the list of what was told takes back too', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        const first = await answerOnce(page, fitDay);
        await page.getByText('What you have told me').click();
        await page.locator('.said').getByRole('button', { name: 'Undo' }).last().click();
        await page
          .getByRole('log')
          .getByText(/^Taken back/)
          .waitFor();
        expect(await answerAll(page, fitDay)).toContain(first);
      });
    });

    test('a number box takes no other unit and says what it expected', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        while ((await page.locator('.numbers').count()) === 0) await answerOnce(page, fitDay);
        const asked = await textOf(page.locator(questionHeading));
        const box = page.locator('.question').getByRole('textbox');
        await box.fill('12 mph');
        await page.keyboard.press('Enter');
        await page.getByText('"12 mph" is not just a number.').waitFor();
        expect(await page.locator('.numbers input:focus').getAttribute('aria-invalid')).toBe('true');
        expect(await textOf(page.locator(questionHeading))).toBe(asked);
        await box.fill('8,6');
        await page.keyboard.press('Enter');
        await questionGone(page, asked);
        expect(await textOf(page.getByRole('log'))).toContain('8.6');
      });
    });

    test('an answer that is not spray today is asked back, and an earlier answer opened again, kept or changed', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        const log = page.getByRole('log');
        await page.locator('.free-text').getByRole('textbox').fill('sticky, 8.4 at 30 cm');
        await page.getByRole('button', { name: 'Send' }).click();
        await page.locator(verdictHeading).waitFor();
        const asks = page.getByRole('region', { name: 'Ask back' });
        for (const way of ['Why not?', 'When?', 'What would you need?']) {
          await asks.getByRole('button', { name: way }).click();
          const told = log.locator(`.is-person:has-text("${way}") + *`);
          await told.waitFor();
          expect((await textOf(told)).length).toBeGreaterThan(20);
        }
        await page.getByText('What you have told me').click();
        const change = page.getByRole('button', { name: /^Change soil temperature at 30 cm/i });
        await change.click();
        await page.getByText('So far: 8.4 C.').waitFor();
        await page.getByRole('button', { name: 'Leave it as it is' }).click();
        await log.getByText('Left as it is.').waitFor();
        expect(await page.locator(questionHeading).count()).toBe(0);
        await change.click();
        await page.locator('.numbers').getByRole('textbox').fill('8.1');
        await page.keyboard.press('Enter');
        await page
          .locator('.said')
          .getByText(/8\.1 C/)
          .waitFor();
        expect(
          await page
            .locator('.said')
            .getByText(/8\.4 C/)
            .count(),
        ).toBe(0);
      });
    });

    test('the hour of a reading at another depth is given by pressing, and said back', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        while ((await page.locator('.numbers').count()) === 0) await answerOnce(page, fitDay);
        await page.locator('.free-text').getByRole('textbox').fill('7 at 10 cm');
        await page.getByRole('button', { name: 'Send' }).click();
        const hours = page.getByRole('group', { name: 'When was it read?' });
        await hours.getByRole('button', { name: '8 am' }).click();
        await page
          .getByRole('log')
          .getByText(/^Understood: .*10 cm/)
          .waitFor();
        await hours.waitFor({ state: 'detached' });
      });
    });

    test('an own field takes its place from the device where the person permits', async () => {
      const geolocation = { latitude: 54.12346, longitude: -2.6543 };
      await onPage({ permissions: ['geolocation'], geolocation }, async (page) => {
        await chooseField(page, 'My own field');
        for (
          let more = 0;
          more < 30 && (await page.getByRole('button', { name: "device's place" }).count()) === 0;
          more++
        ) {
          const asked = await textOf(page.locator(questionHeading));
          const parts = await page.locator('.question-part').all();
          for (const part of parts.length > 0 ? parts : [page.locator('.question')]) {
            await part
              .getByRole('button')
              .filter({ hasText: /^England|^No$|I don't know/ })
              .first()
              .click();
          }
          await questionGone(page, asked);
        }
        await page.getByRole('button', { name: "device's place" }).click();
        await page.waitForFunction(() => document.querySelector<HTMLInputElement>('.numbers input')?.value !== '');
        const values = await page
          .locator('.numbers input')
          .evaluateAll((boxes) => boxes.map((box) => (box as HTMLInputElement).value));
        expect(values).toEqual(['54.1235', '-2.6543']);
      });
    });

    test('"do the same for Top Brow" goes on there with what holds for the farm today, and the button for the next field', async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        const say = async (text: string) => {
          await page.locator('.free-text').getByRole('textbox').fill(text);
          await page.getByRole('button', { name: 'Send' }).click();
        };
        await say('wind 6 km/h at the boom');
        await page
          .getByRole('log')
          .getByText(/^Understood/)
          .waitFor();
        await answerAll(page, fitDay);
        await page.getByRole('button', { name: 'The same for the next field' }).click();
        await page.getByRole('heading', { name: /^Long Ing/ }).waitFor();
        const carried = page.getByRole('log').getByText(/^Carried over from Mill Piece/);
        await carried.waitFor();
        expect(await textOf(carried)).toContain('wind at boom height: 6 km/h');
        await say('do the same for Top Brow');
        await page.getByRole('heading', { name: /^Top Brow/ }).waitFor();
        await page
          .getByRole('log')
          .getByText(/^Carried over from Long Ing/)
          .waitFor();
        await page.getByText("Today's fields (3)").click();
        await page.getByText(/^Mill Piece: spray today/i).waitFor();
        await page.getByText('What you have told me').click();
        expect(await textOf(page.locator('.said'))).toMatch(/Wind at boom height: 6\.0 km\/h[^:]*for /);
      });
    });

    test("another field is chosen in words, and one may change one's mind", async () => {
      await onPage({}, async (page) => {
        await chooseField(page, 'Mill Piece');
        await page.getByLabel('Or say it in your own words').fill('another field');
        await page.getByRole('button', { name: 'Send' }).click();
        await page.getByRole('button', { name: 'Back to the conversation' }).click();
        await page.locator(questionHeading).waitFor();
        await page.getByRole('button', { name: 'Another field' }).click();
        await chooseField(page, 'Long Ing');
        expect(await textOf(page.locator('h1'))).toMatch(/^Long Ing/);
        expect(await page.getByRole('log').getByRole('button', { name: /^Undo/ }).count()).toBe(0);
      });
    });
  });
}
