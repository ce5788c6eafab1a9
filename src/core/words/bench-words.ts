import type { Sentences } from './catalogue.ts';
import { benchWords as german } from './de/bench.ts';
import { benchWords as english } from './en/bench.ts';
import { ofLanguage } from './of-language.ts';

/** What the adviser's bench says in one language: apart from the catalogue, so that the page need not load it at first. */
export type BenchWords = Sentences<typeof english>;

const languages: Readonly<Record<string, BenchWords>> = { en: english, de: german };

/** The words of a language; English where there are none. */
export function benchWordsOf(language: string): BenchWords {
  return ofLanguage(languages, language, english);
}
