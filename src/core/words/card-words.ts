import type { Sentences } from './catalogue.ts';
import { cardWords as german } from './de/card.ts';
import { cardWords as english } from './en/card.ts';
import { ofLanguage } from './of-language.ts';

/** What the card for the cab says in one language: apart from the catalogue, so that the page need not load it at first. */
export type CardWords = Sentences<typeof english>;

const languages: Readonly<Record<string, CardWords>> = { en: english, de: german };

/** The words of a language; English where there are none. */
export function cardWordsOf(language: string): CardWords {
  return ofLanguage(languages, language, english);
}
