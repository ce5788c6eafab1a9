import { describe, expect, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import { languageCodes } from '../../src/core/words/catalogue.ts';
import { fakeIo } from './fake-io.ts';

/** Types lines into `loamward ask` in German and gives what it printed. */
async function askInGerman(lines: readonly string[], ...options: string[]): Promise<string> {
  const io = fakeIo({}, lines);
  expect(await runCommandLine(['ask', '--language', 'de', ...options], io)).toBe(0);
  expect(io.err()).toBe('');
  return io.out();
}

/** Words that German sentences do not have. Parts of the invented farm, and names of sources, are left in English. */
const english = /\b(?:the|and|with|not|what|your|you|spray|soil|weather|answer|forecast)\b/i;

/** Lines in which texts stand that are no sentences of the program: notes of the invented fields, and sources in other languages. */
const foreign = /Invented weather|ein erfundenes Feld|Grenze \w+:|berechnet:/;

describe('a German conversation in the terminal', () => {
  test('has no English sentence from the choice of the field to the cautions', async () => {
    const lines = [
      'mill-piece',
      'krümelig',
      'feucht',
      '8,4 in 30 cm',
      'Warum?',
      'weiß nicht',
      'weiß nicht',
      'den Rest prüfen',
      'Vorsicht',
      'Tage',
      'ende',
    ];
    const text = await askInGerman(lines, '--pack', 'propyzamide-winter-oilseed-rape');
    expect(text).toContain('Welches Feld?');
    const left = text.split('\n').filter((line) => !foreign.test(line) && english.test(line));
    expect(left).toEqual([]);
  });

  test('writes numbers with a decimal comma and days in German', async () => {
    const text = await askInGerman(['8,4 in 30 cm'], '--field', 'mill-piece');
    expect(text).toContain('8,4 °C');
    expect(text).toContain('12. November 2026');
  });

  test('unfolds the parts of an answer by German words', async () => {
    const text = await askInGerman(['klebrig', 'Regeln', 'Vorsicht'], '--field', 'mill-piece');
    expect(text).toContain('Grenze ');
    expect(text).toContain('Vorsicht:');
  });
});

describe('the language of a command line', () => {
  test.each([
    ['LOAMWARD_LANGUAGE', { LOAMWARD_LANGUAGE: 'de', LANG: 'en_GB.UTF-8' }, 'Welches Feld?'],
    ['else the locale of the system', { LANG: 'de_AT.UTF-8' }, 'Welches Feld?'],
    ['else English', { LANG: 'C.UTF-8' }, 'Which field?'],
  ])('is told by %s', async (_, env, said) => {
    const io = { ...fakeIo({}, []), env };
    await runCommandLine(['ask', '--pack', 'propyzamide-winter-oilseed-rape'], io);
    expect(io.out()).toContain(said);
  });

  test('that is not there is refused, with those that are', async () => {
    const io = fakeIo({}, []);
    expect(await runCommandLine(['ask', '--language', 'zz'], io)).toBe(2);
    expect(io.err()).toContain('OPTION_VALUE');
    expect(io.err()).toContain(languageCodes.join(', '));
  });

  test('is that of errors too, by which the code stays', async () => {
    const io = fakeIo({}, []);
    expect(await runCommandLine(['decide', '--language', 'de'], io)).toBe(2);
    expect(io.err()).toMatch(/^OPTION_VALUE: Eine Option hat keinen Wert/);
  });
});
