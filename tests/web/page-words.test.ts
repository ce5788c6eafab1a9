import { describe, expect, test } from 'vitest';
import { languages, nameOfLanguage, pageLanguage } from '../../web/words/language.ts';
import { loadWords, pageWords } from '../../web/words.ts';

describe('the words of the page', () => {
  test('are there in English and German', () => {
    expect(languages).toEqual(expect.arrayContaining(['en', 'de']));
    expect(languages.map(nameOfLanguage)).toEqual(expect.arrayContaining(['English', 'Deutsch']));
  });

  test('are loaded for the language named, English where there is none of that name', async () => {
    await loadWords('de');
    expect(pageWords.question.send).toBe('Senden');
    await loadWords('zz');
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
