import type { Sentences } from './catalogue.ts';
import { practice as german } from './de/practice.ts';
import { practice as english } from './en/practice.ts';
import { ofLanguage } from './of-language.ts';

/** What is said about practice days in one language: apart from the catalogue, so that the page need not load it at first. */
export type PracticeWords = Sentences<typeof english>;

const languages: Readonly<Record<string, PracticeWords>> = { en: english, de: german };

/** The words of a language; English where there are none. */
export function practiceWordsOf(language: string): PracticeWords {
  return ofLanguage(languages, language, english);
}
