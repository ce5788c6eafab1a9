import type { LanguageWords } from '../language-words.ts';
import { answerWords } from './answers.ts';
import { clockWords } from './clock.ts';
import { cropWords } from './crop.ts';
import { drainWords } from './drains.ts';
import { fieldWords } from './field.ts';
import { agoBefore, agoUnits, agoWords, fillerWords, flagWords } from './flags.ts';
import { intentWords, wishLeads, wishTails } from './intents.ts';
import { littleWords } from './little.ts';
import * as numbers from './numbers.ts';
import { placeWords } from './place.ts';
import { retell, retellNumber } from './retell.ts';
import { soilWords } from './soil.ts';
import { properWords, spell } from './spelling.ts';
import { cropNames, subjectWords } from './subjects.ts';
import { supposing } from './supposing.ts';
import * as units from './units.ts';
import { weatherWords } from './weather.ts';
import { windWords } from './wind.ts';

/** German. */
export const words: LanguageWords = {
  spell,
  properWords,
  wishLeads,
  wishTails,
  retell,
  retellNumber,
  rows: [...soilWords, ...drainWords, ...fieldWords, ...placeWords, ...cropWords, ...weatherWords, ...windWords],
  subjects: subjectWords,
  flags: flagWords,
  crops: cropNames,
  filler: fillerWords,
  ago: agoWords,
  agoUnits,
  agoBefore,
  little: littleWords,
  answers: answerWords,
  intents: intentWords,
  numbers: {
    small: numbers.smallNumbers,
    multipliers: numbers.multipliers,
    one: 'eins',
    noCountBeforeOne: numbers.noCountBeforeOne,
    noCountAfterOne: numbers.noCountAfterOne,
    fractions: numbers.fractions,
    minus: numbers.minusWords,
    point: numbers.pointWords,
    oddAfter: numbers.oddAfterNumber,
    and: 'und',
    a: 'ein',
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
    betweenJoiner: 'und',
    rangeLeads: units.rangeLeads,
    oneIn: new Set(['zu']),
    inches: '',
    upTo: new Set(['bis']),
    nodes: new Set(['knoten']),
  },
  supposing,
  clock: clockWords,
};
