import { german } from './de/index.ts';
import { english } from './en/index.ts';

/** The shape of a catalogue: the same keys, sentences free. */
type Sentences<T> = T extends (...args: infer Args) => string
  ? (...args: Args) => string
  : T extends string
    ? string
    : { readonly [Key in keyof T]: Sentences<T[Key]> };

/** All sentences of one language; a second language is a second one of these. */
export type Catalogue = Sentences<typeof english>;

/** Catalogues by ISO 639-1 code. */
export const catalogues: Readonly<Record<'en' | 'de', Catalogue>> = { en: english, de: german };

/** Code of a language that there is a catalogue for. */
export type Language = keyof typeof catalogues;

/** The catalogue of a language; English where there is none. */
export function catalogueOf(language: string): Catalogue {
  return language in catalogues ? catalogues[language as Language] : english;
}
