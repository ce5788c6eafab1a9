import { describe, expect, test } from 'vitest';
import type { LanguageWords } from '../../../../src/core/dialogue/understand/language-words.ts';
import { languageOf } from '../../../../src/core/dialogue/understand/languages.ts';
import { mendWords, spellerOf } from '../../../../src/core/dialogue/understand/mend.ts';
import { choice } from '../../../../src/core/dialogue/understand/rows.ts';
import { tokenise } from '../../../../src/core/dialogue/understand/tokens.ts';
import { told } from './told.ts';

/** The words of a text as they are read; `*` where one was put right, and is doubtful. */
function mended(text: string, language = languageOf('en')): string {
  return mendWords(tokenise(text, language), language)
    .map((token) => (token.kind === 'word' ? `${token.text}${token.isMended ? '*' : ''}` : `{${token.kind}}`))
    .join(' ');
}

describe('a mistyped word', () => {
  test.each([
    ['a letter left out', 'stiky', 'sticky*'],
    ['a letter too many', 'stickey', 'sticky*'],
    ['a letter twice', 'snowwy', 'snowy*'],
    ['another letter of the same sound', 'crasked', 'cracked*'],
    ['a letter beside the right one on the keys', 'cracls', 'cracks*'],
    ['a letter far from the right one', 'cracps', 'cracps'],
    ['two letters changed over', 'drians', 'drains*'],
    ['two at the end changed over', 'sticyk', 'sticky*'],
    ['two letters wrong', 'drianz', 'drianz'],
    ['the first letter wrong', 'xticky', 'xticky'],
    ['two letters too many', 'stickeey', 'stickeey'],
    ['another form of a word', 'waterlogging', 'waterlogged*'],
    ['the form of a word with its letter doubled', 'puddling', 'puddling'],
    ['a word in the plural', 'pondss', 'ponds'],
    ['an ending without its g', 'rainin', 'raining'],
    ['a word of four letters', 'wett', 'wett'],
    ['a word of twenty letters', 'waterloggedddddddddd', 'waterloggedddddddddd'],
    ['a word that is known', 'water sticky', 'water sticky'],
    ['a number is never put right', 'sevem', 'sevem'],
    ['nor is a not', 'nothin', 'nothing'],
    ['signs and numbers stay', 'stiky, 9', 'sticky* {break} {number}'],
  ])('%s: "%s" is read as "%s"', (_, text, read) => {
    expect(mended(text)).toBe(read);
  });

  test('is read with doubt', () => {
    expect(told(null, 'it is stiky')).toBe('soil.surface=+sticky?');
    expect(told(null, 'it is sticky')).toBe('soil.surface=+sticky');
  });

  test('keeps its place in the text', () => {
    const language = languageOf('en');
    expect(mendWords(tokenise('so stiky', language), language)).toEqual([
      { kind: 'word', text: 'so', start: 0, end: 2 },
      { kind: 'word', text: 'sticky', isMended: true, start: 3, end: 8 },
    ]);
  });
});

/** A language of a few words that mean something, some that say not or count, and proper words. */
function small(say: readonly string[], more: { proper?: readonly string[]; not?: readonly string[] } = {}) {
  const english = languageOf('en');
  const words: LanguageWords = {
    ...english,
    rows: [choice('field.texture', 'clay', 'none', say)],
    subjects: {},
    flags: {
      not: more.not ?? [],
      or: [],
      doubt: [],
      unsure: [],
      block: ['barrd', 'other bankd'],
      ahead: [],
      scant: [],
    },
    filler: 'a',
    ago: [],
    intents: {},
    units: { ...english.units, after: [['bushels', 'foreign']] },
  };
  return { ...english, speller: spellerOf(words, more.proper ?? []) };
}

describe('what a mistyped word may stand for', () => {
  test.each([
    ['one word alone is a letter away', ['stony'], 'stuny', 'stony*'],
    ['of two words neither', ['stony', 'stany'], 'stuny', 'stuny'],
    ['two changed over before a letter left out', ['conart', 'coanrt'], 'coanrt', 'coanrt'],
    ['letters changed over go first', ['marsh', 'mash?hes'], 'masrh', 'marsh*'],
    ['a letter left out goes before a letter too many', ['gravel', 'grave'], 'gravl', 'gravel*'],
    ['a unit that measures nothing asked is not what was meant', ['stony'], 'bushls', 'bushls'],
    ['the stem of a word, where it has four letters', ['clarty'], 'clarting', 'clarty*'],
    ['not where it has three', ['boggy'], 'boging', 'boging'],
    ['of a stem, the first word in the lists', ['clarty', 'clarted'], 'clartings', 'clarty*'],
  ])('%s', (_, say, text, read) => {
    expect(mended(text, small(say))).toBe(read);
  });

  test('a proper word is none mistyped, nor is one said so on purpose', () => {
    expect(mended('stuny', small(['stony'], { proper: ['stuny'] }))).toBe('stuny');
    expect(mended('stuny', small(['stony'], { not: ['stuny'] }))).toBe('stuny');
  });

  test('nothing is mended into a not or into a word that stops the reading', () => {
    expect(mended('neverr', small(['never'], { not: ['never'] }))).toBe('neverr');
    expect(mended('barrrd', small(['barrd']))).toBe('barrrd');
    expect(mended('bankds bankdd', small(['bankd']))).toBe('bankd bankd*');
  });

  test('a language without proper words mends nothing', () => {
    expect(mended('stuny', { ...small(['stony']), speller: null })).toBe('stuny');
  });
});
