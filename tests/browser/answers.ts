import type { Locator, Page } from 'playwright-core';

/** How a question is answered: the label of a button, signs to tick, or a number to fill in. */
export type Answer = string | { readonly signs: readonly string[] } | { readonly number: string };

/** Answers by the words of the question. */
export type Answers = readonly (readonly [question: RegExp, answer: Answer])[];

/** A fit soil on a still day. */
export const fitDay: Answers = [
  [/surface/, { signs: ['Crumbly'] }],
  [/feel/, 'Moist'],
  [/how warm|temperature/i, { number: '8.6' }],
  [/than a week|warmer|colder/i, 'About the same'],
  [/drains running|outfall/i, 'No'],
  [/wind/i, 'Calm'],
];

/** The heading of the open question. */
export const questionHeading = '[data-heading="question"]';
/** The heading of the verdict. */
export const verdictHeading = '[data-heading="verdict"]';

/** All text of the one element that a locator finds, spaces as in the document. */
export async function textOf(locator: Locator): Promise<string> {
  return (await locator.textContent()) ?? '';
}

/** Presses the field's button on the start screen and waits for what follows. */
export async function chooseField(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name }).click();
  await page.locator(`${questionHeading},${verdictHeading}`).first().waitFor();
}

/** Answers the open question, and what is asked together with it, by clicking; returns its words once another state has come. */
export async function answerOnce(page: Page, answers: Answers): Promise<string> {
  const asked = await textOf(page.locator(questionHeading));
  const card = page.locator('.question');
  const parts = card.locator('.question-part');
  const count = await parts.count();
  if (count === 0) await answerIn(page, card, asked, answers);
  for (let index = 0; index < count; index += 1) {
    const part = parts.nth(index);
    await answerIn(page, part, await textOf(part.locator('h3')), answers);
  }
  await questionGone(page, asked);
  return asked;
}

async function answerIn(page: Page, card: Locator, asked: string, answers: Answers): Promise<void> {
  const answer = answers.find(([question]) => question.test(asked))?.[1];
  if (answer === undefined) throw new Error(`No answer is prepared for "${asked}"`);
  if (typeof answer === 'string') {
    await card
      .locator('.choice')
      .filter({ has: page.getByText(answer, { exact: true }) })
      .click();
  } else if ('signs' in answer) {
    for (const sign of answer.signs) await card.getByLabel(sign).check();
    await card.getByRole('button', { name: 'Confirm' }).click();
  } else {
    await card.getByRole('textbox').fill(answer.number);
    await card.getByRole('button', { name: 'Take this' }).click();
  }
}

/** Waits until another question, or a verdict, has taken the place of this one. */
export async function questionGone(page: Page, asked: string): Promise<void> {
  await page.waitForFunction(
    ([question, verdict, before]) => {
      const now = document.querySelector(question!)?.textContent ?? null;
      return now === null ? document.querySelector(verdict!) !== null : now !== before;
    },
    [questionHeading, verdictHeading, asked],
  );
}

/** Answers until no question is open; returns the questions in the order in which they were put. */
export async function answerAll(page: Page, answers: Answers): Promise<string[]> {
  const asked: string[] = [];
  while ((await page.locator(questionHeading).count()) > 0 && asked.length < 40) {
    asked.push(await answerOnce(page, answers));
  }
  return asked;
}
