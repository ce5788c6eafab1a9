import type { ErrorWordsOf } from '../errors.ts';
import type { FactLabels } from '../facts.ts';
import type { PhraseTable } from '../phrase-table.ts';
import { askingWords } from './asking.ts';
import { checkWords } from './check.ts';
import { dialogueWords } from './dialogue.ts';
import { doseWords } from './dose.ts';
import { forecastWords } from './forecast.ts';
import { handOverWords } from './hand-over.ts';
import { marginWords } from './margins.ts';
import { outlookWords } from './outlook.ts';
import { phraseWords } from './phrases.ts';
import { sayWords } from './say.ts';
import { terminalWords } from './terminal.ts';
import { valueWords } from './values.ts';
import { verdictWords } from './verdict.ts';

/** The English catalogue. Code of the language: ISO 639-1. */
export const words = {
  language: 'en',
  verdict: verdictWords,
  values: valueWords,
  phrases: phraseWords,
  margins: marginWords,
  forecast: forecastWords,
  outlook: outlookWords,
  dose: doseWords,
  dialogue: dialogueWords,
  asking: askingWords,
  handOver: handOverWords,
  /** Notes are written in English. */
  notes: {} as PhraseTable,
  say: sayWords,
  check: checkWords,
  terminal: terminalWords,
  /** The table itself is English. */
  errors: {} as ErrorWordsOf,
  /** What errors expected and got is written in English. */
  errorPhrases: {} as PhraseTable,
  /** The help of the command line is written in English. */
  help: {} as PhraseTable,
  /** The registry itself is English. */
  facts: {} as FactLabels,
};
