import { shareBrowser } from './session.ts';
import { learningSuite } from './suites/learning.ts';

shareBrowser();
learningSuite();
