import type { Sentences } from './catalogue.ts';
import { compareWords as german } from './de/compare.ts';
import { compareWords as english } from './en/compare.ts';
import { ofLanguage } from './of-language.ts';

/** What is said of two rule sets in one language: apart from the catalogue, so that the page need not load it at first. */
export type CompareWords = Sentences<typeof english>;

const languages: Readonly<Record<string, CompareWords>> = { en: english, de: german };

/** The words of a language; English where there are none. */
export function compareWordsOf(language: string): CompareWords {
  return ofLanguage(languages, language, english);
}
