import { catalogueOf } from '../../../src/core/words/catalogue.ts';
import type { LanguageWords } from '../types.ts';
import { page } from './page.ts';
import { pictures } from './pictures.ts';

/** German. */
export default { page, pictures, core: catalogueOf('de') } satisfies LanguageWords;
