import { shareBrowser } from './session.ts';
import { benchSuite } from './suites/bench.ts';

shareBrowser({ benchWrites: true });
benchSuite();
