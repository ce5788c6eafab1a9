import type { LanguageWords } from '../language-words.ts';
import { answerWords } from './answers.ts';
import { clockWords } from './clock.ts';
import { cropWords } from './crop.ts';
import { feelWords } from './feel.ts';
import { fieldWords } from './field.ts';
import { agoUnits, agoWord, agoWords, fillerPhrases, fillerWords, flagWords } from './flags.ts';
import { intentWords, wishLeads, wishTails } from './intents.ts';
import { gapWords, littleWords } from './little.ts';
import { looseWishes } from './loose-wishes.ts';
import * as numbers from './numbers.ts';
import { rainWords } from './rain.ts';
import { soilWords } from './soil.ts';
import { properWords, spell } from './spelling.ts';
import { cropNames, subjectWords } from './subjects.ts';
import { supposing } from './supposing.ts';
import { surfaceWords } from './surface.ts';
import * as units from './units.ts';
import { weatherWords } from './weather.ts';

/** English. */
export const words: LanguageWords = {
  spell,
  properWords,
  rows: [...surfaceWords, ...soilWords, ...feelWords, ...rainWords, ...fieldWords, ...cropWords, ...weatherWords],
  subjects: subjectWords,
  flags: flagWords,
  gaps: gapWords,
  crops: cropNames,
  filler: fillerWords,
  fillerPhrases,
  ago: agoWords,
  agoUnits,
  agoAfter: agoWord,
  little: littleWords,
  answers: answerWords,
  looseWishes,
  wishLeads,
  wishTails,
  intents: intentWords,
  numbers: {
    small: numbers.smallNumbers,
    multipliers: numbers.multipliers,
    articles: new Set(['the', 'a', 'an', 'my', 'that', 'this']),
    bare: { hundred: 100, thousand: 1000 },
    couple: { word: 'couple', of: 'of' },
    one: 'one',
    noCountBeforeOne: numbers.noCountBeforeOne,
    noCountAfterOne: numbers.noCountAfterOne,
    fractions: numbers.fractions,
    minus: numbers.minusWords,
    point: numbers.pointWords,
    oddAfter: numbers.oddAfterNumber,
    and: 'and',
    a: 'a',
  },
  units: {
    after: units.unitsAfter,
    before: units.unitsBefore,
    single: units.singleUnits,
    parts: units.unitParts,
    plusMinus: units.plusMinus,
    boundsBefore: units.boundsBefore,
    boundsAfter: units.boundsAfter,
    range: units.rangeWords,
    between: units.betweenWord,
    betweenJoiner: 'and',
    rangeLeads: units.rangeLeads,
    oneIn: new Set(['in']),
    inches: 'in',
  },
  supposing,
  clock: clockWords,
};
