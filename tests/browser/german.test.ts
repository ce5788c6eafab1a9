import { shareBrowser } from './session.ts';
import { germanSuite } from './suites/german.ts';

shareBrowser();
germanSuite();
