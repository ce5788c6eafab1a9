import type { PageCatalogue } from '../../src/core/words/catalogue.ts';
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

/** All words of one language that the page shows: the default export of each language's folder. */
export interface LanguageWords {
  readonly page: PageWords;
  readonly pictures: PictureWords;
  /** Those shared with the server and the terminal. */
  readonly core: PageCatalogue;
}
