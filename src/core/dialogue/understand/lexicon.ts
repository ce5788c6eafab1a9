import { cropWords } from './en/crop.ts';
import { fieldWords } from './en/field.ts';
import { agoWords, fillerWords, flagWords } from './en/flags.ts';
import { soilWords } from './en/soil.ts';
import { subjectWords } from './en/subjects.ts';
import { weatherWords } from './en/weather.ts';
import type { Entry, Flag, Subject } from './lexicon-types.ts';
import { phraseBook } from './phrases.ts';

const nothing: Entry = { rows: [], subjects: [], flags: [] };

function* entries(): Generator<readonly [string, Entry]> {
  for (const { say, ...row } of [...soilWords, ...fieldWords, ...cropWords, ...weatherWords]) {
    for (const pattern of say) yield [pattern, { ...nothing, rows: [row] }];
  }
  for (const [subject, patterns] of Object.entries(subjectWords) as [Subject, readonly string[]][]) {
    for (const pattern of patterns) yield [pattern, { ...nothing, subjects: [subject] }];
  }
  for (const [flag, patterns] of Object.entries(flagWords) as [Flag, readonly string[]][]) {
    for (const pattern of patterns) yield [pattern, { ...nothing, flags: [flag] }];
  }
  for (const word of fillerWords.split(' ')) yield [word, { ...nothing, flags: ['filler'] }];
  for (const [pattern, agoHours] of agoWords) yield [pattern, { ...nothing, agoHours }];
}

const join = (a: Entry, b: Entry): Entry => ({
  ...a,
  ...b,
  rows: [...new Set([...a.rows, ...b.rows])],
  subjects: [...new Set([...a.subjects, ...b.subjects])],
  flags: [...new Set([...a.flags, ...b.flags])],
});

/** Every phrase of the language with all that it may do. */
export const lexicon = phraseBook<Entry>(entries(), join);
