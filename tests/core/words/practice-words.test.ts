import { describe, expect, test } from 'vitest';
import { languageCodes } from '../../../src/core/words/catalogue.ts';
import { practiceWordsOf } from '../../../src/core/words/practice-words.ts';

/** Every sentence by its place, functions called with stand-ins. */
function sentences(words: unknown, at = ''): (readonly [string, string])[] {
  if (typeof words === 'function') return [[at, String(words(2, 3, 4))]];
  if (typeof words !== 'object' || words === null) return [[at, String(words)]];
  if (Array.isArray(words)) return [[at, words.join()]];
  return Object.entries(words).flatMap(([key, value]) => sentences(value, `${at}/${key}`));
}

describe.each(languageCodes.filter((code) => code !== 'en'))('practice days in %s', (language) => {
  const english = new Map(sentences(practiceWordsOf('en')));
  const own = new Map(sentences(practiceWordsOf(language)));

  test('have every sentence that English has, and no other', () => {
    expect([...own.keys()].sort()).toEqual([...english.keys()].sort());
  });

  test('leave none in English', () => {
    expect([...own].filter(([place, text]) => english.get(place) === text)).toEqual([]);
  });
});
