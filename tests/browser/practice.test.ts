import { shareBrowser } from './session.ts';
import { practiceSuite } from './suites/practice.ts';

shareBrowser();
practiceSuite();
