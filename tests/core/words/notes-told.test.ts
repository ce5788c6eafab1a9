import { describe, expect, test } from 'vitest';
import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import { errorIn } from '../../../src/core/words/errors.ts';
import { noteIn } from '../../../src/core/words/notes.ts';
import { phraseIn } from '../../../src/core/words/phrase-table.ts';

const en = catalogueOf('en');
const de = catalogueOf('de');

describe('a note in German', () => {
  test.each([
    ['the field is not drained', 'das Feld ist nicht dräniert'],
    ['from the place and the time', 'aus Ort und Zeit'],
    ['the air is above 12.5 C', 'die Luft ist wärmer als 12,5 °C'],
    ['slope through 3 readings over 7 days', 'Verlauf durch 3 Messungen über 7 Tage'],
    ['carried forward from 9.6 C read 2026-11-05 09:00', 'fortgeschrieben von 9,6 °C, gelesen 2026-11-05 09:00'],
    ['9.6 C at 2026-11-05 09:00', de.values.readAt('9,6 °C', '2026-11-05 09:00')],
    ['-1.5 C at 2026-11-05 09:00', de.values.readAt('-1,5 °C', '2026-11-05 09:00')],
    ['3 at 2026-11-05 09:00', de.values.readAt('3', '2026-11-05 09:00')],
    ['moist or wet at 2026-11-05 09:00', de.values.readAt('feucht oder nass', '2026-11-05 09:00')],
    ['cracked, frozen at 2026-11-05 09:00', de.values.readAt('rissig, gefroren', '2026-11-05 09:00')],
    ['none at 2026-11-05 09:00', de.values.readAt(de.values.noSigns, '2026-11-05 09:00')],
    ['not known at 2026-11-05 09:00', de.values.readAt(de.values.doesNotKnow, '2026-11-05 09:00')],
    ['1 days at 2026-11-05 09:00', de.values.readAt('1 Tag', '2026-11-05 09:00')],
    ['what nobody knows', 'what nobody knows'],
    ['some words at noon', 'some words at noon'],
    // A whole note of two sentences, each told by itself; one that the words do not know stays.
    ['The field is dear. Weather data by Somebody (CC)', 'The field is dear. Wetterdaten von Somebody (CC)'],
  ])('"%s"', (note, text) => {
    expect(noteIn(note, de)).toBe(text);
  });

  test('says of an error what the German table says, with its code and its values', () => {
    const says = de.errors['HELLO_TWICE']?.says;
    expect(says).toMatch(/\.$/);
    expect(noteIn('A second one came. (HELLO_TWICE)', de)).toBe(`${says} (HELLO_TWICE)`);
    expect(noteIn('A second one came. (HELLO_TWICE: twice)', de)).toBe(`${says} (HELLO_TWICE: twice)`);
    expect(noteIn('A second one came. (NO_SUCH_CODE)', de)).toBe('A second one came. (NO_SUCH_CODE)');
    expect(noteIn('A second one came. (HELLO_TWICE) Oh', de)).toBe(
      'A second one came. (HELLO_TWICE) Oh'.replace(/^.*\)/, (one) => noteIn(one, de)),
    );
  });

  test('in English stays as it came', () => {
    for (const note of ['the field is not drained', '9.6 C at 2026-11-05 09:00', 'A. (HELLO_TWICE)']) {
      expect(noteIn(note, en)).toBe(note);
    }
  });
});

describe('a phrase of a table', () => {
  const table = {
    yes: 'ja',
    'one of {}': 'eines von {}',
    '{} or {}': '{} oder {}',
    '{} of {}': '{} aus {}',
    'at {}.': 'bei {}.',
    'a+b {}': 'plus {}',
  };
  test.each([
    ['yes', 'ja'],
    ['one of yes', 'eines von ja'],
    // The one with the most letters of its own first, whatever its place in the table; what was put in is looked up too.
    ['one of a', 'eines von a'],
    ['one of a or b', 'eines von a oder b'],
    ['a or b', 'a oder b'],
    ['at noon.', 'bei noon.'],
    ['at yes.', 'bei ja.'],
    // What is put in may run over lines.
    ['one of c\nd', 'eines von c\nd'],
    // Signs of the phrase are signs.
    ['at noon!', null],
    ['a+b c', 'plus c'],
    ['aab c', null],
    ['then at noon.', null],
    ['at noon. Then', null],
    // A hole at the start that a blank follows takes one word; the second one takes all.
    ['two words of b', null],
    ['b of two words', 'b aus two words'],
    ['', null],
    ['toString', null],
  ])('"%s" is told as "%s"', (text, told) => {
    expect(phraseIn(text, table)).toBe(told);
    expect(phraseIn(text, Object.fromEntries(Object.entries(table).reverse()))).toBe(told);
  });

  test('has what was put in told by the caller where the table does not have it', () => {
    const told = (text: string) => phraseIn(text, { 'at {}.': 'bei {}.', dawn: 'Morgen' }, (hole) => `<${hole}>`);
    expect([told('at noon.'), told('at dawn.')]).toEqual(['bei <noon>.', 'bei Morgen.']);
  });
});

test('an error whose advice fits a phrase is advised in the language; one without words of the language stays', () => {
  const words = {
    ...de,
    errors: { HELLO_TWICE: { says: 'Zweimal.', next: 'Einmal.' } },
    errorPhrases: { '{}, or {}': '{} oder {}', 'Say {}.': 'Sag {}.', ja: 'ja' },
  };
  const report = { code: 'HELLO_TWICE', says: 'Twice.', expected: 'a, or b', came: 'c', next: 'Say hello.' } as const;
  const told = { ...report, says: 'Zweimal.', expected: 'a oder b', next: 'Sag hello.' };
  expect(errorIn(report, words)).toEqual(told);
  // Twice the same, from what is kept; advice that only a phrase with an open beginning fits is the usual one.
  expect(errorIn(report, words)).toEqual(told);
  expect(errorIn({ ...report, next: 'Stop, or go.' }, words).next).toBe('Einmal.');
  const other = { ...report, code: 'PROTOCOL_VERSION' } as const;
  expect(errorIn(other, words)).toBe(other);
});
