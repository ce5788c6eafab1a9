import { cardWords as german } from './de/card.ts';
import { cardWords as english } from './en/card.ts';

/** The shape of sentences: the same keys and arguments, words free. */
type Worded<T> = T extends (...args: infer Args) => string
  ? (...args: Args) => string
  : T extends string
    ? string
    : { readonly [Key in keyof T]: Worded<T[Key]> };

/** What the card for the cab says in one language: apart from the catalogue, so that the page need not load it at first. */
export type CardWords = Worded<typeof english>;

const languages: Readonly<Record<string, CardWords>> = { en: english, de: german };

/** The words of a language; English where there are none. */
export function cardWordsOf(language: string): CardWords {
  return (Object.hasOwn(languages, language) ? languages[language] : undefined) ?? english;
}
