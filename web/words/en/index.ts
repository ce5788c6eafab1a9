import { pageWords as core } from '../../../src/core/words/en/page.ts';
import type { LanguageWords } from '../types.ts';
import { page } from './page.ts';

/** English. */
export default { page, core } satisfies LanguageWords;
