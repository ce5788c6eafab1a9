import { pageWords as core } from '../../../src/core/words/en/page.ts';
import type { LanguageWords } from '../types.ts';
import { page } from './page.ts';
import { pictures } from './pictures.ts';

/** English. */
export default { page, pictures, core } satisfies LanguageWords;
