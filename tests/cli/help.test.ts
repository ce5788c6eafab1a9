import { describe, expect, test } from 'vitest';
import { commands, runCommandLine } from '../../src/cli/main.ts';
import { catalogueOf, languageCodes } from '../../src/core/words/catalogue.ts';
import { phraseIn } from '../../src/core/words/phrase-table.ts';
import { fakeIo } from './fake-io.ts';

const others = languageCodes.filter((language) => language !== 'en');
const calls = [['--help'], ...commands.map(({ name }) => [...name.split(' '), '--help'])];

async function helpIn(language: string, call: readonly string[]): Promise<string> {
  const io = fakeIo({}, []);
  expect(await runCommandLine([...call, '--language', language], io)).toBe(0);
  return io.out();
}

/** What stands in the help: what is told of options and commands, without the names, and without examples. */
async function toldIn(language: string): Promise<string[]> {
  const texts = await Promise.all(calls.map((call) => helpIn(language, call)));
  return texts.flatMap((text) =>
    text
      .split('\n')
      .filter((line) => !/^ {2}(?:npx|printf|[A-Z_]+=)/.test(line))
      .map((line) => line.replace(/^ *(?:loamward(?: [a-z-]+| COMMAND)*|--[a-z-]+(?: [A-Z-]+)?)(?= |:|$)/, '').trim())
      .filter((line) => /\p{L}{2}/u.test(line)),
  );
}

describe.each(others)('the help in %s', (language) => {
  const { help } = catalogueOf(language);

  test('leaves nothing of the English', async () => {
    const english = new Set(await toldIn('en'));
    const left = (await toldIn(language)).filter((line) => english.has(line));
    expect(left).toEqual([]);
  });

  test('has no sentence that no command says', async () => {
    const all = (await Promise.all(calls.map((call) => helpIn('en', call)))).join('\n');
    const parts = all.split(/\n| {2,}|(?<=^loamward): |(?<=\]) (?=\[options)/m).map((part) => part.trim());
    const english = [...parts, '[options]'];
    const stale = Object.entries(help).filter(([phrase, told]) =>
      english.every((part) => phraseIn(part, { [phrase]: told }) === null),
    );
    expect(stale).toEqual([]);
  });

  test('is told too where the language stands first', async () => {
    const io = fakeIo({}, []);
    expect(await runCommandLine(['--language', language, 'ask', '--help'], io)).toBe(0);
    expect(io.out()).toBe(await helpIn(language, ['ask', '--help']));
  });
});

test.each([
  [['rules', 'say', 'propyzamide-winter-oilseed-rape', 'inversoin'], 'Am nächsten liegt: inversion.'],
  [['decide', '--facts', 'f.json'], '(f.json)'],
  [['ask', '--feld', 'x'], 'OPTION_UNKNOWN: Diese Option gibt es nicht. Erwartet: eines von '],
  [
    ['understand'],
    'OPTION_VALUE: Eine Option hat keinen Wert oder einen, den sie nicht haben kann. Erwartet: --text TEXT; gekommen: kein Text.',
  ],
  [['sprühe'], 'Erwartet: eines von '],
])('an error of %j has no English in German', async (args, said) => {
  const io = fakeIo({}, []);
  expect(await runCommandLine([...args, '--language', 'de'], io)).toBe(2);
  expect(io.err()).toContain(said);
  expect(io.err()).not.toMatch(/\b(?:the|one of|no|expected|came|see)\b/i);
});

test('what is understood of a text is told in German', async () => {
  const io = fakeIo({}, []);
  expect(
    await runCommandLine(['understand', '--language', 'de', '--text', 'feucht, 7 Grad in 10 cm, blablub'], io),
  ).toBe(0);
  expect(io.out()).toContain('Übernommen:');
  expect(io.out()).not.toMatch(/\b(?:Taken|at|Not understood|Wanted)\b/);
});
