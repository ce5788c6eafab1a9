import type { CardWords } from '../../src/core/words/card-words.ts';
import type { Catalogue, PageCatalogue } from '../../src/core/words/catalogue.ts';
import type { learn } from './en/learn.ts';
import type { page } from './en/page.ts';
import type { pictures } from './en/pictures.ts';

/** The shape of sentences: the same keys and arguments, words free. */
type Worded<T> = T extends (...args: infer Args) => string
  ? (...args: Args) => string
  : T extends string
    ? string
    : { readonly [Key in keyof T]: Worded<T[Key]> };

/** What the page itself says, in any language. */
export type PageWords = Worded<typeof page>;
/** What the drawings say, in any language. */
export type PictureWords = Worded<typeof pictures>;

/** What the pages for learning say, in any language. */
export type LearnWords = Worded<typeof learn>;

/** The words of one language that the first screen needs: the default export of its `index.ts`. */
export interface LanguageWords {
  readonly page: PageWords;
  /** Those shared with the server and the terminal. */
  readonly core: PageCatalogue;
}

/** The words of one language for parts that are loaded when they are asked for: the default export of its `later.ts`. */
export interface LaterWords extends Pick<Catalogue, 'outlook' | 'handOver'> {
  readonly pictures: PictureWords;
  readonly learn: LearnWords;
  /** Those of the card for the cab, shared with the terminal. */
  readonly card: CardWords;
}
