import { pageWords as core } from '../../../src/core/words/de/page.ts';
import type { LanguageWords } from '../types.ts';
import { page } from './page.ts';

/** German. */
export default { page, core } satisfies LanguageWords;
