import { shareBrowser } from './session.ts';
import { offlineOddsSuite } from './suites/offline-odds.ts';

shareBrowser();
offlineOddsSuite();
