import type { FactLabels } from '../facts.ts';
import type { PhraseTable } from '../phrase-table.ts';
import { askingWords } from './asking.ts';
import { checkWords } from './check.ts';
import { doseWords } from './dose.ts';
import { forecastWords } from './forecast.ts';
import { handOverWords } from './hand-over.ts';
import { marginWords } from './margins.ts';
import { outlookWords } from './outlook.ts';
import { pageWords } from './page.ts';
import { phraseWords } from './phrases.ts';
import { sayWords } from './say.ts';
import { terminalWords } from './terminal.ts';

/** The English catalogue. Code of the language: ISO 639-1. */
export const words = {
  ...pageWords,
  outlook: outlookWords,
  handOver: handOverWords,
  phrases: phraseWords,
  margins: marginWords,
  forecast: forecastWords,
  dose: doseWords,
  asking: askingWords,
  say: sayWords,
  check: checkWords,
  terminal: terminalWords,
  /** The help of the command line is written in English. */
  help: {} as PhraseTable,
  /** The registry itself is English. */
  facts: {} as FactLabels,
};
