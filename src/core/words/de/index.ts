import type { Catalogue } from '../catalogue.ts';
import { askingWords } from './asking.ts';
import { checkWords } from './check.ts';
import { doseWords } from './dose.ts';
import { factLabels } from './facts.ts';
import { forecastWords } from './forecast.ts';
import { handOverWords } from './hand-over.ts';
import { helpWords } from './help.ts';
import { marginWords } from './margins.ts';
import { outlookWords } from './outlook.ts';
import { pageWords } from './page.ts';
import { phraseWords } from './phrases.ts';
import { sayWords } from './say.ts';
import { terminalWords } from './terminal.ts';

/** The German catalogue. */
export const words: Catalogue = {
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
  help: helpWords,
  facts: factLabels,
};
