import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { answerAll, chooseField, fitDay, textOf } from '../answers.ts';
import { onPage } from '../session.ts';

interface Heard {
  readonly spoken: string[];
  readonly hear: (text: string, isFinal: boolean) => void;
  readonly end: (error?: string) => void;
  readonly lang: () => string;
}

/** A recogniser and a voice in the test's hand, with the settings given. */
const standIn = (settings: object) => async (page: Page) => {
  await page.addInitScript((kept) => localStorage.setItem('loamward.comfort', kept), JSON.stringify(settings));
  await page.addInitScript(() => {
    const spoken: string[] = [];
    let last: Record<string, unknown> & { lang?: string } = {};
    const call = (name: string, event?: unknown) => (last[name] as ((event?: unknown) => void) | null)?.(event);
    class Recogniser {
      constructor() {
        last = this as unknown as typeof last;
      }
      start() {}
      stop() {
        call('onend');
      }
      abort() {}
    }
    const speechSynthesis = {
      cancel: () => {},
      getVoices: () => [],
      speak: ({ text }: { text: string }) => spoken.push(text),
    };
    for (const name of ['SpeechRecognition', 'webkitSpeechRecognition']) {
      Object.defineProperty(globalThis, name, { value: Recogniser, configurable: true });
    }
    Object.defineProperty(globalThis, 'speechSynthesis', { value: speechSynthesis, configurable: true });
    Object.defineProperty(globalThis, 'SpeechSynthesisUtterance', {
      value: class {
        text: string;
        constructor(text: string) {
          this.text = text;
        }
      },
      configurable: true,
    });
    Object.assign(globalThis, {
      heard: {
        spoken,
        lang: () => last.lang,
        hear: (text: string, isFinal: boolean) =>
          call('onresult', { results: [Object.assign([{ transcript: text }], { isFinal })] }),
        end: (error?: string) => {
          if (error) call('onerror', { error });
          call('onend');
        },
      },
    });
  });
};

const hear = (page: Page, text: string, isFinal: boolean) =>
  page.evaluate(([said, final]) => (globalThis as unknown as { heard: Heard }).heard.hear(said, final), [
    text,
    isFinal,
  ] as const);
const end = (page: Page, error?: string) =>
  page.evaluate((why) => (globalThis as unknown as { heard: Heard }).heard.end(why), error);
const spoken = (page: Page) => page.evaluate(() => (globalThis as unknown as { heard: Heard }).heard.spoken);

/** Speaking and listening: off until wanted, and never instead of text. */
export function speechSuite(): void {
  describe('speech', () => {
    test('is off until it is wanted, and what it sends to whom is said where it is switched on', async () => {
      await onPage(
        {},
        async (page) => {
          await chooseField(page, 'Mill Piece');
          expect(await page.getByRole('button', { name: 'Speak' }).count()).toBe(0);
          expect(await page.getByRole('button', { name: 'Read aloud' }).count()).toBe(0);
          expect(await spoken(page)).toEqual([]);
          await page.getByText('Screen, sound and speech').click();
          await page.getByText('send what you say to a service of their maker').waitFor();
          await page.getByLabel('Let me speak').check();
          expect(await page.getByRole('button', { name: 'Speak' }).count()).toBe(1);
        },
        standIn({}),
      );
    });

    test('what was heard stands in the box, is sent by the person, and goes through the same understanding', async () => {
      await onPage(
        {},
        async (page) => {
          await chooseField(page, 'Mill Piece');
          await page.getByRole('button', { name: 'Speak' }).click();
          await page.getByText('Listening…').waitFor();
          expect(await page.evaluate(() => (globalThis as unknown as { heard: Heard }).heard.lang())).toBe('en-GB');
          await hear(page, 'moist', false);
          await hear(page, 'moist, eight point six at 30 cm', true);
          await end(page);
          await page.getByText('Heard. Look it over').waitFor();
          const box = page.getByLabel('Or say it in your own words');
          expect(await box.inputValue()).toBe('moist, eight point six at 30 cm');
          expect(await page.getByText(/^Understood/).count()).toBe(0);
          await page.getByRole('button', { name: 'Send' }).click();
          await page
            .getByRole('log')
            .getByText(/^Understood.*moist/)
            .waitFor();
        },
        standIn({ listens: true }),
      );
    });

    test('with "send at once" it is sent when the person has ended', async () => {
      await onPage(
        {},
        async (page) => {
          await chooseField(page, 'Mill Piece');
          await page.getByRole('button', { name: 'Speak' }).click();
          await hear(page, 'moist', true);
          await end(page);
          await page.getByRole('log').locator('.is-person', { hasText: 'moist' }).waitFor();
        },
        standIn({ listens: true, sendsHeard: true }),
      );
    });

    test.each([
      ['not-allowed', 'did not give the microphone'],
      ['audio-capture', 'No microphone was found'],
      ['network', 'could not reach the service'],
      ['no-speech', 'Nothing was heard'],
      ['bad-grammar', 'Listening failed'],
    ])('%s is told with what was not sent and what to do', async (error, words) => {
      await onPage(
        {},
        async (page) => {
          await chooseField(page, 'Mill Piece');
          await page.getByRole('button', { name: 'Speak' }).click();
          await end(page, error);
          const said = page.locator('.speak-state', { hasText: words });
          await said.waitFor();
          expect(await textOf(said)).toContain('Nothing was sent.');
        },
        standIn({ listens: true, sendsHeard: true }),
      );
    });

    test('questions and the verdict are read aloud once they are wanted so, and stay as text', async () => {
      await onPage(
        {},
        async (page) => {
          await chooseField(page, 'Mill Piece');
          await answerAll(page, fitDay);
          const said = (await spoken(page)).join(' ');
          for (const part of ['surface', 'feel', 'How warm', 'Spray today', 'label in hand'])
            expect(said).toContain(part);
          const before = (await spoken(page)).length;
          await page.getByRole('button', { name: 'Read aloud' }).click();
          expect((await spoken(page)).length).toBeGreaterThan(before);
        },
        standIn({ readsAloud: true }),
      );
    });
  });
}
