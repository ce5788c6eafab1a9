import type { Question } from '../../rules/pack-types.ts';
import { type Clause, wordsText } from './clauses.ts';
import type { Language } from './language.ts';
import { wordsOf } from './scan.ts';
import type { Intent } from './types.ts';

/** A short answer: sure or leaning. */
export interface ShortAnswer {
  readonly isYes: boolean;
  readonly isSure: boolean;
}

/** What a person wants beside telling facts, where that is all that the clause says. */
export function intentOf(clause: Clause, language: Language): Intent | null {
  const wordAt = wordsOf(clause);
  const { items } = clause;
  const { intents, wishLeads } = language.books;
  for (let from = 0; ; ) {
    const found = intents.longestAt(wordAt, from);
    if (found && isTail(wordAt, from + found.length, items.length, language)) return found.value;
    const lead = wishLeads.longestAt(wordAt, from)?.length ?? Number(language.answers.courtesies.has(wordAt(from)));
    if (lead === 0) return looseWish(wordAt, items.length, language);
    from += lead;
  }
}

/** A wish known by how it begins, after any words that may stand before it. */
function looseWish(wordAt: (at: number) => string, to: number, { books, answers, fillers }: Language): Intent | null {
  for (let from = 0; from < to; ) {
    const begun = books.looseWishes.flatMap((book) => book.longestAt(wordAt, from) ?? []);
    const said = Array.from({ length: to - from }, (_, index) => wordAt(from + index));
    const isSaid = ({ value: { words, needs }, length }: (typeof begun)[number]) =>
      said.slice(length).every((word) => words.has(word) || answers.courtesies.has(word) || fillers.has(word)) &&
      (needs === undefined || said.some((word) => needs.has(word)));
    const wish = begun.toSorted((a, b) => b.length - a.length).find(isSaid);
    if (wish !== undefined || begun.length > 0) return wish?.value.intent ?? null;
    const lead = books.wishLeads.longestAt(wordAt, from)?.length ?? Number(answers.courtesies.has(wordAt(from)));
    if (lead === 0) return null;
    from += lead;
  }
  return null;
}

/** True where nothing but courtesies and words that change no wish stand from `from` to `to`. */
function isTail(wordAt: (at: number) => string, from: number, to: number, { books, answers }: Language): boolean {
  for (let at = from; at < to; ) {
    const length = books.wishTails.longestAt(wordAt, at)?.length ?? Number(answers.courtesies.has(wordAt(at)));
    if (length === 0) return false;
    at += length;
  }
  return true;
}

/** True where nothing but courtesies stands from `from` to `to`. */
export function isCourtesy(
  wordAt: (at: number) => string,
  from: number,
  to: number,
  { answers: { courtesies } }: Language,
): boolean {
  for (let at = from; at < to; at += 1) if (!courtesies.has(wordAt(at))) return false;
  return true;
}

/** The short answer that a clause begins with, and how many words it takes. */
export function shortAnswerOf(
  clause: Clause,
  { books, answers }: Language,
): (ShortAnswer & { readonly length: number }) | null {
  const wordAt = wordsOf(clause);
  const skipped = answers.leads.has(wordAt(0)) ? 1 : 0;
  const found = books.shortAnswers.longestAt(wordAt, skipped);
  if (found === null) return null;
  const isYes = found.value === 'yes' || found.value === 'leanYes';
  return { isYes, isSure: found.value === 'yes' || found.value === 'no', length: skipped + found.length };
}

/** How many words at the beginning of a clause say that something is being put right. */
export function correctionLength(clause: Clause, { books, answers }: Language): number {
  const wordAt = wordsOf(clause);
  let length = 0;
  for (let at = 0; at < clause.items.length; ) {
    const found = books.correcting.longestAt(wordAt, at)?.length ?? 0;
    if (found > 0) length = at + found;
    else if (!answers.leads.has(wordAt(at))) break;
    at += found || 1;
  }
  return length;
}

/** True where a clause asks rather than tells. */
export function isAsking(clause: Clause, { books }: Language): boolean {
  return (clause.isQuestion ? books.askingWithMark : books.asking).longestAt(wordsOf(clause), 0) !== null;
}

/** True where a clause says that none of what was listed is there. */
export function saysNone(clause: Clause, language: Language): boolean {
  const found = language.books.noneOfIt.longestAt(wordsOf(clause), 0);
  return found !== null && isCourtesy(wordsOf(clause), found.length, clause.items.length, language);
}

/** The choice of the open question that short answers mean; null where the question takes none. */
export function choiceOfAnswer({ choices = [] }: Question, isYes: boolean): string | null {
  const ids = isYes ? ['yes', 'inside', 'colder'] : ['no', 'outside'];
  const isRain = choices.some(({ id }) => id === 'none') && !isYes;
  return choices.find(({ id }) => ids.includes(id))?.id ?? (isRain ? 'none' : null);
}

/** The choice whose label, or the part before its comma, or whose id the words are; null where none. */
export function choiceOfLabel({ choices = [] }: Question, words: string, language: Language): string | null {
  const { labelLeads } = language.answers;
  const plain = stripped(words, labelLeads);
  if (plain === '') return null;
  const found = choices.filter(({ id, label }) => {
    const full = Object.values(label).flatMap((text) => [
      wordsText(text, language),
      wordsText(text.split(',')[0] ?? '', language),
    ]);
    return [id.replaceAll('-', ' '), ...full].some((one) => stripped(one, labelLeads) === plain);
  });
  return found.length === 1 ? found[0]!.id : null;
}

function stripped(words: string, leading: ReadonlySet<string>): string {
  const parts = words.split(' ');
  const first = parts.findIndex((word) => !leading.has(word));
  return first < 0 ? words : parts.slice(first).join(' ');
}
