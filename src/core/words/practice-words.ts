import { practice as german } from './de/practice.ts';
import { practice as english } from './en/practice.ts';

/** The shape of sentences: the same keys and arguments, words free. */
type Worded<T> = T extends (...args: infer Args) => string
  ? (...args: Args) => string
  : T extends string
    ? string
    : { readonly [Key in keyof T]: Worded<T[Key]> };

/** What is said about practice days in one language: apart from the catalogue, so that the page need not load it at first. */
export type PracticeWords = Worded<typeof english>;

const languages: Readonly<Record<string, PracticeWords>> = { en: english, de: german };

/** The words of a language; English where there are none. */
export function practiceWordsOf(language: string): PracticeWords {
  return (Object.hasOwn(languages, language) ? languages[language] : undefined) ?? english;
}
