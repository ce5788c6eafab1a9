import type { Catalogue } from '../../src/core/words/catalogue.ts';
import { words } from '../../src/core/words/en/index.ts';
import { catalogues } from '../../src/core/words/languages.ts';
import { wholeEnglish } from '../../src/tools/languages/whole-words.ts';
import { decorateWords } from './decorate.ts';

/** The made-up language zz: English, decorated. Importing this registers it, for the test file alone. */
export const madeUp = decorateWords(
  wholeEnglish({ core: words, page: {}, pictures: {}, learn: {}, card: {} }).core,
) as Catalogue;
Object.assign(catalogues, { zz: { ...madeUp, language: 'zz' } });
