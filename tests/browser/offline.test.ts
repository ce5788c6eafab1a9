import { shareBrowser } from './session.ts';
import { offlineSuite } from './suites/offline.ts';

shareBrowser();
offlineSuite();
