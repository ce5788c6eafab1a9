import type { Catalogue } from '../catalogue.ts';
import { askingWords } from './asking.ts';
import { checkWords } from './check.ts';
import { dialogueWords } from './dialogue.ts';
import { doseWords } from './dose.ts';
import { errorWords } from './errors.ts';
import { factLabels } from './facts.ts';
import { forecastWords } from './forecast.ts';
import { handOverWords } from './hand-over.ts';
import { helpWords } from './help.ts';
import { marginWords } from './margins.ts';
import { notes } from './notes.ts';
import { outlookWords } from './outlook.ts';
import { phraseWords } from './phrases.ts';
import { sayWords } from './say.ts';
import { terminalWords } from './terminal.ts';
import { errorPhrases } from './told/index.ts';
import { valueWords } from './values.ts';
import { verdictWords } from './verdict.ts';

/** The German catalogue. */
export const words: Catalogue = {
  language: 'de',
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
  notes,
  say: sayWords,
  check: checkWords,
  terminal: terminalWords,
  errors: errorWords,
  errorPhrases,
  help: helpWords,
  facts: factLabels,
};
