// Written by `npm run languages` from the folders beside this file. Do not edit; run it again.
import { words as de } from './de/index.ts';
import { words as en } from './en/index.ts';
import type { LanguageWords } from './language-words.ts';

/** Word lists of the languages that are understood when typed, by ISO 639-1 code, English first. */
export const wordLists: Readonly<Record<string, LanguageWords>> = {
  en,
  de,
};
