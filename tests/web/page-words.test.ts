import { describe, expect, test } from 'vitest';
import { page as english } from '../../web/words/en/page.ts';
import { pictures as englishPictures } from '../../web/words/en/pictures.ts';
import { languages, nameOfLanguage, pageLanguage } from '../../web/words/language.ts';
import type { LanguageWords } from '../../web/words/types.ts';
import { loadWords, pageWords } from '../../web/words.ts';

const others = languages.filter((language) => language !== 'en');

/** Words that are the same in another language by right: names and measures. */
const sameByRight = new Set(['Loamward', '', '30 cm', '100 m', '2 m', '5 m']);

/** Each sentence with its place; what takes arguments is said with numbers for all of them. */
function sentences(node: unknown, place = ''): (readonly [string, string])[] {
  if (typeof node === 'string') return [[place, node]];
  if (typeof node === 'function') {
    return [1, 2].map((count) => [`${place}(${count})`, String(node(...Array(node.length).fill(count)))] as const);
  }
  return Object.entries(node as object).flatMap(([key, value]) => sentences(value, `${place}/${key}`));
}

async function wordsOf(language: string): Promise<Pick<LanguageWords, 'page' | 'pictures'>> {
  return (await import(`../../web/words/${language}/index.ts`)).default;
}

describe('the words of the page', () => {
  test('are there in English and German', () => {
    expect(languages).toEqual(expect.arrayContaining(['en', 'de']));
    expect(languages.map(nameOfLanguage)).toEqual(expect.arrayContaining(['English', 'Deutsch']));
  });

  test.each(others)('%s has every sentence, none too many, and none left in English', async (language) => {
    const told = await wordsOf(language);
    const here = [...sentences(told.page), ...sentences(told.pictures, '/pictures')];
    const there = [...sentences(english), ...sentences(englishPictures, '/pictures')];
    expect(here.map(([place]) => place)).toEqual(there.map(([place]) => place));
    const left = here.filter(([, text], index) => text === there[index]?.[1] && !sameByRight.has(text));
    const own = left.filter(([place]) => !/goTo|offline\/span/.test(place));
    expect(own).toEqual([]);
    for (const [place, text] of here) expect(text.includes('undefined'), place).toBe(false);
  });

  test('are loaded for the language named, English where there is none of that name', async () => {
    await loadWords('de');
    expect(pageWords.question.send).toBe('Senden');
    await loadWords('xx');
    expect(pageWords.question.send).toBe('Send');
  });
});

describe('the language of the page', () => {
  test.each([
    ['the one chosen on this device', 'en', ['de-DE'], 'en'],
    ['else the first of the device that there is', null, ['fr-FR', 'de-AT', 'en'], 'de'],
    ['else English', null, ['fr', 'pl'], 'en'],
    ['and a choice that there is no more counts for nothing', 'xx', ['DE'], 'de'],
  ])('is %s', (_, chosen, wished, language) => {
    expect(pageLanguage(chosen, wished, ['de', 'en'])).toBe(language);
  });
});
