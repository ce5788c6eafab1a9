import type { PageCatalogue } from '../catalogue.ts';
import { dialogueWords } from './dialogue.ts';
import { errorWords } from './errors.ts';
import { notes } from './notes.ts';
import { errorPhrases } from './told/index.ts';
import { valueWords } from './values.ts';
import { verdictWords } from './verdict.ts';

/** The part of the German catalogue that the page cannot do without. */
export const pageWords: PageCatalogue = {
  language: 'de',
  verdict: verdictWords,
  values: valueWords,
  dialogue: dialogueWords,
  notes,
  errors: errorWords,
  errorPhrases,
};
