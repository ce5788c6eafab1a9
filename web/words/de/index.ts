import { pageWords as core } from '../../../src/core/words/de/page.ts';
import type { LanguageWords } from '../types.ts';
import { page } from './page.ts';
import { pictures } from './pictures.ts';

/** German. */
export default { page, pictures, core } satisfies LanguageWords;
