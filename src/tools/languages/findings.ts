import { isStale, type TranslationRecord } from './record.ts';
import type { Sentences } from './sentences.ts';

/** What is to be done about the sentences of a language, each by its place. */
export interface Findings {
  /** There in English only. */
  readonly missing: readonly string[];
  /** The English changed since. */
  readonly stale: readonly string[];
  /** As in English. */
  readonly same: readonly string[];
  /** There in this language only: nothing reads them. */
  readonly extra: readonly string[];
}

/** Lists that each language fills by itself: words that are typed, and facts whose names are plurals. */
const own = /^core\/(?:terminal\/typed|say\/plural)\//;

/** A word of two letters at least, arguments of a function left out. */
const hasWord = (text: string) => /\p{L}{2}/u.test(text.replaceAll(/‹text›|\b(?:null|true)\b/g, ''));

/**
 * Compares the sentences of a language with the English. What is the same and has an entry in the record is so by right ("November"
 * in German).
 */
export function findingsOf(english: Sentences, translated: Sentences, record: TranslationRecord): Findings {
  const both = [...english].flatMap(([place, text]) => {
    const other = translated.get(place);
    return other === undefined ? [] : [{ place, text, other }];
  });
  return {
    missing: [...english.keys()].filter((place) => !translated.has(place) && !own.test(place)),
    stale: both.filter(({ place, text, other }) => isStale(record[place], text, other)).map(({ place }) => place),
    same: both
      .filter(
        ({ place, text, other }) => text === other && !own.test(place) && hasWord(text) && record[place] === undefined,
      )
      .map(({ place }) => place),
    extra: [...translated.keys()].filter((place) => !english.has(place) && !own.test(place)),
  };
}
