import type { LanguageWords } from './language-words.ts';
import type { Entry, Flag, Subject } from './lexicon-types.ts';
import { type PhraseBook, phraseBook } from './phrases.ts';

const nothing: Entry = { rows: [], subjects: [], flags: [] };

function* entries({
  rows,
  subjects,
  flags,
  filler,
  fillerPhrases = [],
  ago,
}: LanguageWords): Generator<readonly [string, Entry]> {
  for (const { say, ...row } of rows) {
    for (const pattern of say) yield [pattern, { ...nothing, rows: [row] }];
  }
  for (const [subject, patterns] of Object.entries(subjects) as [Subject, readonly string[]][]) {
    for (const pattern of patterns) yield [pattern, { ...nothing, subjects: [subject] }];
  }
  for (const [flag, patterns] of Object.entries(flags) as [Flag, readonly string[]][]) {
    for (const pattern of patterns) yield [pattern, { ...nothing, flags: [flag] }];
  }
  for (const word of [...filler.split(' '), ...fillerPhrases]) yield [word, { ...nothing, flags: ['filler'] }];
  for (const [pattern, agoHours] of ago) yield [pattern, { ...nothing, agoHours }];
}

const join = (a: Entry, b: Entry): Entry => ({
  ...a,
  ...b,
  rows: [...new Set([...a.rows, ...b.rows])],
  subjects: [...new Set([...a.subjects, ...b.subjects])],
  flags: [...new Set([...a.flags, ...b.flags])],
});

/** Every phrase of a language with all that it may do. */
export function lexiconOf(words: LanguageWords): PhraseBook<Entry> {
  return phraseBook<Entry>(entries(words), join, words.gaps);
}
