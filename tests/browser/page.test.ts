import { shareBrowser } from './session.ts';
import { accessSuite } from './suites/access.ts';
import { connectionSuite } from './suites/connection.ts';
import { talkingSuite } from './suites/talking.ts';
import { treatmentSuite } from './suites/treatments.ts';
import { verdictSuite } from './suites/verdicts.ts';

shareBrowser();
verdictSuite();
talkingSuite();
accessSuite();
connectionSuite();
treatmentSuite();
