/// <reference types="vite/types/importMeta.d.ts" />
import type { PageCatalogue } from '../src/core/words/catalogue.ts';
import type { LanguageWords, PageWords, PictureWords } from './words/types.ts';

const loaders = import.meta.glob<LanguageWords>('./words/*/index.ts', { import: 'default' });

/** What the page itself says, in its language; there once `loadWords` has come back. */
export let pageWords: PageWords;
/** What the drawings say, in the language of the page. */
export let pictureWords: PictureWords;
/** Sentences shared with the server and the terminal, in the language of the page. */
export let coreWords: PageCatalogue;

/** Loads the words of one language, a chunk of its own; English where there is no such language. */
export async function loadWords(language: string): Promise<void> {
  const load = loaders[`./words/${language}/index.ts`] ?? loaders['./words/en/index.ts'];
  if (!load) return;
  ({ page: pageWords, pictures: pictureWords, core: coreWords } = await load());
}
