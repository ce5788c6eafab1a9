import { shareBrowser } from './session.ts';
import { offlineNewSuite } from './suites/offline-new.ts';
import { offlineOddsSuite } from './suites/offline-odds.ts';

shareBrowser();
offlineOddsSuite();
offlineNewSuite();
