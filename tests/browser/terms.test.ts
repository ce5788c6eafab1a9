import { shareBrowser } from './session.ts';
import { termsSuite } from './suites/terms.ts';

shareBrowser();
termsSuite();
