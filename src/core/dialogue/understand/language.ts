import type { LanguageWords, LooseWish, SaidBound } from './language-words.ts';
import { lexiconOf } from './lexicon.ts';
import type { Entry, SaidUnit } from './lexicon-types.ts';
import { type Speller, spellerOf } from './mend.ts';
import { type PhraseBook, phraseBook } from './phrases.ts';
import type { Intent } from './types.ts';

type ShortAnswerName = 'yes' | 'no' | 'leanYes' | 'leanNo';

/** The books of one language, in which the grammar looks words up. */
export interface LanguageBooks {
  readonly lexicon: PhraseBook<Entry>;
  readonly unitsAfter: PhraseBook<SaidUnit>;
  readonly unitsBefore: PhraseBook<SaidUnit>;
  readonly singleUnits: PhraseBook<SaidUnit>;
  readonly parts: PhraseBook<number>;
  readonly plusMinus: PhraseBook<true>;
  /** How each wish may begin, one book a wish. */
  readonly looseWishes: readonly PhraseBook<LooseWish>[];
  readonly wishLeads: PhraseBook<true>;
  readonly wishTails: PhraseBook<true>;
  readonly boundsBefore: PhraseBook<SaidBound>;
  readonly boundsAfter: PhraseBook<'least' | 'most' | 'near' | 'negative'>;
  readonly shortAnswers: PhraseBook<ShortAnswerName>;
  readonly correcting: PhraseBook<true>;
  readonly saidBefore: PhraseBook<true>;
  readonly asking: PhraseBook<true>;
  readonly askingWithMark: PhraseBook<true>;
  readonly noneOfIt: PhraseBook<true>;
  readonly intents: PhraseBook<Intent>;
  readonly negators: ReadonlySet<string>;
}

/** A language as the grammar uses it: its words, and the books made of them. */
export interface Language extends LanguageWords {
  readonly books: LanguageBooks;
  readonly speller: Speller | null;
  /** Single words that say nothing of a fact. */
  readonly fillers: ReadonlySet<string>;
}

/** Makes the books of a language's words. */
export function languageFrom(words: LanguageWords): Language {
  const { answers, units } = words;
  const isThere = (...patterns: (readonly string[])[]) =>
    phraseBook<true>(patterns.flat().map((pattern) => [pattern, true] as const));
  const named = (['yes', 'no', 'leanYes', 'leanNo'] as const).flatMap((name) =>
    answers[name].map((pattern) => [pattern, name] as const),
  );
  const intents = Object.entries(words.intents) as [Intent, readonly string[]][];
  return {
    ...words,
    fillers: new Set(words.filler.split(' ')),
    speller: words.properWords === undefined ? null : spellerOf(words, words.properWords),
    books: {
      lexicon: lexiconOf(words),
      unitsAfter: phraseBook(units.after),
      unitsBefore: phraseBook(units.before),
      singleUnits: phraseBook(units.single),
      parts: phraseBook(units.parts ?? []),
      plusMinus: isThere(units.plusMinus ?? []),
      looseWishes: (words.looseWishes ?? []).map((wish) =>
        phraseBook(
          wish.begins.map((pattern) => [pattern, wish] as const),
          undefined,
          words.gaps,
        ),
      ),
      wishLeads: isThere(words.wishLeads ?? []),
      wishTails: isThere(words.wishTails ?? []),
      boundsBefore: phraseBook(units.boundsBefore),
      boundsAfter: phraseBook(units.boundsAfter),
      shortAnswers: phraseBook<ShortAnswerName>(named),
      correcting: isThere(answers.correct),
      saidBefore: isThere(answers.saidBefore ?? []),
      asking: isThere(answers.ask),
      askingWithMark: isThere(answers.ask, answers.askWithMark),
      noneOfIt: isThere(answers.noneOfIt),
      intents: phraseBook(
        intents.flatMap(([intent, patterns]) => patterns.map((pattern) => [pattern, intent] as const)),
        undefined,
        words.gaps,
      ),
      negators: new Set(words.flags.not),
    },
  };
}
