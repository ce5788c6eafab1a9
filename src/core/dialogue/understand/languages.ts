import { type Language, languageFrom } from './language.ts';
import { wordLists } from './word-lists.ts';

const made = new Map<string, Language>();

/** True where words typed in a language are understood; else they are read as English. */
export function isUnderstood(code: string): boolean {
  return Object.hasOwn(wordLists, code);
}

/**
 * The language of a code; English for a code that is not known, or none. Its books are made when it is first asked for. Word lists are
 * data: patterns as in `phraseBook`, in lower case, apostrophes left out, and written as the language's `spell` writes words. What a
 * meaning is (the facts, choices and answers of the pack) is the same in every language; only how it is said differs.
 */
export function languageOf(code: string | undefined): Language {
  const known = code !== undefined && isUnderstood(code) ? code : 'en';
  const ready = made.get(known) ?? languageFrom(wordLists[known]!);
  made.set(known, ready);
  return ready;
}
