import type { ErrorWordsOf } from '../errors.ts';
import type { PhraseTable } from '../phrase-table.ts';
import { dialogueWords } from './dialogue.ts';
import { valueWords } from './values.ts';
import { verdictWords } from './verdict.ts';

/** The part of the English catalogue that the page cannot do without. */
export const pageWords = {
  language: 'en',
  verdict: verdictWords,
  values: valueWords,
  dialogue: dialogueWords,
  /** Notes are written in English. */
  notes: {} as PhraseTable,
  /** The table itself is English. */
  errors: {} as ErrorWordsOf,
  /** What errors expected and got is written in English. */
  errorPhrases: {} as PhraseTable,
};
