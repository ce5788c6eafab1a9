import { german } from './de/index.ts';
import { english } from './en/index.ts';
import { type Language, languageFrom } from './language.ts';
import type { LanguageWords } from './language-words.ts';

/**
 * The languages that are understood, by ISO 639-1 code. To enter one: write a folder of word lists beside `en`, bring them together
 * in its `index.ts` as one `LanguageWords`, and add a line here. Lists are data: patterns as in `expandPattern`, in lower case,
 * apostrophes left out, and written as the language's `spell` writes words. What a meaning is (the facts, choices and answers of the
 * pack) is the same in every language; only how it is said differs.
 */
const languages: Readonly<Record<string, LanguageWords>> = {
  en: english,
  de: german,
};

/** Codes of the languages that are understood. */
export const understoodLanguages: readonly string[] = Object.keys(languages);

const made = new Map<string, Language>();

/** The language of a code; English for a code that is not known, or none. Its books are made when it is first asked for. */
export function languageOf(code: string | undefined): Language {
  const known = code !== undefined && Object.hasOwn(languages, code) ? code : 'en';
  const ready = made.get(known) ?? languageFrom(languages[known] ?? english);
  made.set(known, ready);
  return ready;
}
