import { describe, expect, test } from 'vitest';
import { askedField, askedTerm, isNextField, termOf } from '../../../../src/core/dialogue/understand/wishes.ts';
import { shipped } from '../../../cases/shipped-pack.ts';
import { told } from './told.ts';

const { glossary } = shipped.pack;
const fields = [
  { id: 'long-ing', name: 'Long Ing' },
  { id: 'top-brow', name: 'Top Brow' },
];

/** The term that is asked for: its first English words, the words that no term has in quotes, or null. */
function termIn(text: string): string | null {
  const asked = askedTerm(text, glossary);
  if (asked === null) return null;
  return 'term' in asked ? (asked.term.words['en']?.[0] ?? '') : `"${asked.words}"`;
}

describe('a word that a text asks to be explained', () => {
  test.each([
    ['what does field capacity mean?', 'field capacity'],
    ['  What does  "Field  Capacity" mean ?! ', 'field capacity'],
    ['what is an inversion', 'temperature inversion'],
    ['what are inversions', 'temperature inversion'],
    ['what is a tiller', 'tillers'],
    ['explain true leaf', 'true leaves'],
    ['meaning of Feldkapazität', 'field capacity'],
    ['was ist eine Inversion', 'temperature inversion'],
    ['what does flibbertigibbet mean', '"flibbertigibbet"'],
    ['what does flibbertigibbet stand for', '"flibbertigibbet"'],
    ['what does flibbertigibbet', null],
    ['what is the time', null],
    ['the meaning of life', null],
    ['what do you mean', null],
    ['what does that mean', null],
    ['what does this stand for', null],
    ['what\u2019s meant by flibbertigibbet', '"flibbertigibbet"'],
    ['define it', null],
    ['define flibbertigibbet', '"flibbertigibbet"'],
    ['was heißt das', null],
    ['was heißt Quatsch', '"quatsch"'],
    [`what does ${'x'.repeat(105)} mean`, `"${'x'.repeat(105)}"`],
    [`what does ${'x'.repeat(106)} mean`, null],
  ])('"%s": %s', (text, term) => {
    expect(termIn(text)).toBe(term);
  });

  test('a term is found in the singular and the plural, in any language; none where nobody explains it', () => {
    const found = ['tiller', 'tillers', 'inversions', 'Feldkapazität', 'deficits', 'Boden'].map(
      (words) => termOf(words, glossary)?.words['en']?.[0] ?? null,
    );
    expect(found).toEqual([
      'tillers',
      'tillers',
      'temperature inversion',
      'field capacity',
      'soil moisture deficit',
      null,
    ]);
  });

  test('is a wish and nothing else', () => {
    expect(told('soil-temperature', 'what does field capacity mean?')).toBe('!define');
  });
});

describe('the next field that a text asks for', () => {
  test.each([
    ['do the same for Top Brow', 'top-brow'],
    ['the same for top-brow please', 'top-brow'],
    ['now Long Ing', 'long-ing'],
    ['and LONG  ING?', 'long-ing'],
    ['the same for Nowhere', null],
    ['the same for the next field', null],
    ['next field', null],
    ['the next one', null],
    ['now the next field', null],
    ['now Nowhere', undefined],
    ['now 9', undefined],
    ['9', undefined],
    ['dasselbe für Long Ing', 'long-ing'],
    ['dasselbe für Nirgends', null],
    ['jetzt Top Brow', 'top-brow'],
    ['jetzt nass', undefined],
    [`the same for ${'x'.repeat(107)}`, null],
    [`the same for ${'x'.repeat(108)}`, undefined],
  ])('"%s": %j', (text, field) => {
    expect(askedField(text, fields)).toBe(field);
  });

  test.each([
    ['next field', true],
    ['the same for the next one', true],
    ['Dasselbe für das nächste Feld.', true],
    ['text field', false],
    ['the annext field', false],
    ['Top Brow', false],
  ])('"%s" names none: %s', (text, is) => {
    expect(isNextField(text)).toBe(is);
  });

  test('is a wish and nothing else, where nobody offers fields too', () => {
    expect(told(null, 'the same for the next field')).toBe('!same-for');
  });
});
