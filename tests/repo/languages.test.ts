import { describe, expect, test } from 'vitest';
import { cardWordsOf } from '../../src/core/words/card-words.ts';
import { compareWordsOf } from '../../src/core/words/compare-words.ts';
import { practiceWordsOf } from '../../src/core/words/practice-words.ts';
import { generatedLists, languagesIn, wordsFolder } from '../../src/tools/languages/lists.ts';
import { findingsIn, generatedRecords, type WordsOf } from '../../src/tools/languages/records.ts';
import { root, textOf } from './files.ts';

const others = languagesIn(root, wordsFolder).filter((code) => code !== 'en');
const wordsOf: WordsOf = async (code) => {
  const { pictures, learn, card } = (await import(`../../web/words/${code}/later.ts`)).default;
  const { default: first } = await import(`../../web/words/${code}/index.ts`);
  const { words: core } = await import(`../../src/core/words/${code}/index.ts`);
  return { ...first, pictures, learn, card, core };
};

describe('what npm run languages writes', () => {
  test('is fresh: the lists of languages hold every folder', () => {
    for (const [path, text] of generatedLists(root)) expect(textOf(path), path).toBe(text);
  });

  test('is fresh: the records hold what each sentence was translated from', async () => {
    const records = await generatedRecords(root, wordsOf);
    expect(records.size).toBe(others.length);
    for (const [path, text] of records) expect(textOf(path), `${path}: npm run languages`).toBe(text);
  });
});

describe.each(others)('in %s', (code) => {
  test('the words that are loaded apart are entered: docs/languages.md tells where', async () => {
    const { cardWords } = await import(`../../src/core/words/${code}/card.ts`);
    const { practice } = await import(`../../src/core/words/${code}/practice.ts`);
    const { compareWords } = await import(`../../src/core/words/${code}/compare.ts`);
    const entered = [cardWordsOf(code), practiceWordsOf(code), compareWordsOf(code)];
    expect(entered.map((words, index) => words === [cardWords, practice, compareWords][index])).toEqual([
      true,
      true,
      true,
    ]);
  });

  test('no sentence is missing, stale, too many or left in English: npm run languages -- --missing tells which', async () => {
    expect(await findingsIn(root, code, wordsOf)).toEqual({ missing: [], stale: [], same: [], extra: [] });
  });
});
