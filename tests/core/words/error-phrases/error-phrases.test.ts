import { describe, expect, test } from 'vitest';
import { unitTable } from '../../../../src/core/units/table.ts';
import { catalogueOf, languageCodes } from '../../../../src/core/words/catalogue.ts';
import { phraseIn } from '../../../../src/core/words/phrase-table.ts';
import { phrasesInSource } from './scan.ts';

/** Names of files, keys, settings, options and units, and addresses: they stay in every language. */
const name =
  /^(?:[A-Z_]+|https?:\S+|\S+\.json|\w+(?:[._]\w+)+|--\w+ [A-Z]+|low <= value <= high|valid(?:From|To) \{\}|\w+\/\S+)$/;
const units = [...Object.keys(unitTable), 'bar', 'kPa', 'month-day'];
const keys = ['hello', 'parameters', 'rules', 'questions', 'cautions', 'glossary'];
const phrases = phrasesInSource().filter((phrase) => ![...units, ...keys].includes(phrase) && !name.test(phrase));
const others = languageCodes.filter((language) => language !== 'en');

test('the phrases of errors are found in the source: fixed, with holes, by a function, a variable, a caller and a schema', () => {
  expect(phrases).toEqual(
    expect.arrayContaining([
      'a finite number',
      '{} twice',
      '{} to {}{}',
      'yes or no',
      'a reply cut off at byte {}',
      'a kebab-case id',
    ]),
  );
});

describe.each(others)('in %s', (language) => {
  const { errorPhrases } = catalogueOf(language);
  test('every phrase of an error is told', () => {
    expect(phrases.filter((phrase) => !Object.hasOwn(errorPhrases, phrase))).toEqual([]);
  });

  test('no phrase is told that no error has', () => {
    expect(Object.keys(errorPhrases).filter((phrase) => !phrases.includes(phrase))).toEqual([]);
  });

  test('all that was put into a phrase is told again, in its order', () => {
    const lost = Object.keys(errorPhrases).filter((phrase) => {
      const values = phrase
        .split('{}')
        .slice(1)
        .map((_, index) => `q${index}`);
      const text = values.reduce((filled, value) => filled.replace('{}', value), phrase);
      return (
        (phraseIn(text, errorPhrases) ?? '').match(/q\d/g)?.join() !== (values.length === 0 ? undefined : values.join())
      );
    });
    expect(lost).toEqual([]);
  });
});
