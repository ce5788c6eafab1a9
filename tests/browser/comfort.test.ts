import { shareBrowser } from './session.ts';
import { comfortSuite } from './suites/comfort.ts';
import { handOverSuite } from './suites/hand-over.ts';
import { looksSuite } from './suites/looks.ts';
import { mishapSuite } from './suites/mishaps.ts';
import { speechSuite } from './suites/speech.ts';

shareBrowser();
looksSuite();
comfortSuite();
speechSuite();
handOverSuite();
mishapSuite();
