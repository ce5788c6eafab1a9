import { words as english } from './en/index.ts';
import type { pageWords as englishPage } from './en/page.ts';
import { catalogues } from './languages.ts';
import { ofLanguage } from './of-language.ts';

/** The shape of a catalogue: the same keys, sentences free. */
export type Sentences<T> = T extends (...args: infer Args) => string
  ? (...args: Args) => string
  : T extends string
    ? string
    : { readonly [Key in keyof T]: Sentences<T[Key]> };

/** All sentences of one language; a second language is a second one of these. */
export type Catalogue = Sentences<typeof english>;

/** What a page shows before it needs the whole: read by its own parts, the rest comes with the core. */
export type PageCatalogue = Pick<Catalogue, keyof typeof englishPage>;

export { catalogues };

/** ISO 639-1 codes of the languages that there is a catalogue for, English first. */
export const languageCodes: readonly string[] = Object.keys(catalogues);

/** The catalogue of a language; English where there is none. */
export function catalogueOf(language: string): Catalogue {
  return ofLanguage(catalogues, language, english);
}
