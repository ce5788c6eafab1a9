/// <reference types="vite/types/importMeta.d.ts" />
import type { CardWords } from '../src/core/words/card-words.ts';
import type { Catalogue, PageCatalogue } from '../src/core/words/catalogue.ts';
import type { LanguageWords, LaterWords, LearnWords, PageWords, PictureWords } from './words/types.ts';

const loaders = import.meta.glob<LanguageWords>('./words/*/index.ts', { import: 'default' });
const laterLoaders = import.meta.glob<LaterWords>('./words/*/later.ts', { import: 'default' });
let loadedLanguage = 'en';

/** What the page itself says, in its language; there once `loadWords` has come back. */
export let pageWords: PageWords;
/** Sentences shared with the server and the terminal, in the language of the page. */
export let coreWords: PageCatalogue;
/** What is said of the days ahead; there once `loadLaterWords` has come back. */
export let outlookWords: Catalogue['outlook'];
/** What an answer that is handed over says; there once `loadLaterWords` has come back. */
export let handOverWords: Catalogue['handOver'];
/** What the drawings say, in the language of the page; there once `loadLaterWords` has come back. */
export let pictureWords: PictureWords;
/** What the pages for learning say; there once `loadLaterWords` has come back. */
export let learnWords: LearnWords;
/** What the card for the cab says; there once `loadLaterWords` has come back. */
export let cardWords: CardWords;

/** Loads the words of one language, a chunk of its own; English where there is no such language. */
export async function loadWords(language: string): Promise<void> {
  const load = loaders[`./words/${language}/index.ts`] ?? loaders['./words/en/index.ts'];
  if (!load) return;
  loadedLanguage = language;
  ({ page: pageWords, core: coreWords } = await load());
}

/** Loads the words of drawings and of the pages for learning, in the language of the page. */
export async function loadLaterWords(): Promise<void> {
  const load = laterLoaders[`./words/${loadedLanguage}/later.ts`] ?? laterLoaders['./words/en/later.ts'];
  if (!load) return;
  const later = await load();
  ({
    outlook: outlookWords,
    handOver: handOverWords,
    pictures: pictureWords,
    learn: learnWords,
    card: cardWords,
  } = later);
}
