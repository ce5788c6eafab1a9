import type { Question } from '../../rules/pack-types.ts';
import { type Clause, wordsText } from './clauses.ts';
import { answerWords } from './en/answers.ts';
import { intentWords } from './en/intents.ts';
import { phraseBook } from './phrases.ts';
import { wordsOf } from './scan.ts';
import type { Intent } from './types.ts';

/** A short answer: sure or leaning. */
export interface ShortAnswer {
  readonly isYes: boolean;
  readonly isSure: boolean;
}

type Said = keyof typeof answerWords;

const bookOf = (...names: readonly Said[]) =>
  phraseBook<Said>(names.flatMap((name) => answerWords[name].map((pattern) => [pattern, name] as const)));
const short = bookOf('yes', 'no', 'leanYes', 'leanNo');
const correcting = bookOf('correct');
const asking = bookOf('ask');
const askingWithMark = bookOf('ask', 'askWithMark');
const noneOfIt = bookOf('noneOfIt');
const intents = phraseBook<Intent>(
  (Object.entries(intentWords) as [Exclude<Intent, 'yes' | 'no'>, readonly string[]][]).flatMap(([intent, patterns]) =>
    patterns.map((pattern) => [pattern, intent] as const),
  ),
);
const courtesies = new Set(
  'please thanks thank cheers mate then so ok okay now hi hello hey well right er um erm oh sorry just and'.split(' '),
);

/** What a person wants beside telling facts, where that is all that the clause says. */
export function intentOf(clause: Clause): Intent | null {
  const wordAt = wordsOf(clause);
  const { items } = clause;
  let from = 0;
  for (;;) {
    const found = intents.longestAt(wordAt, from);
    if (found && isCourtesy(wordAt, from + found.length, items.length)) return found.value;
    if (!courtesies.has(wordAt(from))) return null;
    from += 1;
  }
}

/** True where nothing but courtesies stands from `from` to `to`. */
export function isCourtesy(wordAt: (at: number) => string, from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) if (!courtesies.has(wordAt(at))) return false;
  return true;
}

/** The short answer that a clause begins with, and how many words it takes. */
export function shortAnswerOf(clause: Clause): (ShortAnswer & { readonly length: number }) | null {
  const wordAt = wordsOf(clause);
  const skipped = ['well', 'oh', 'er', 'um', 'so'].includes(wordAt(0)) ? 1 : 0;
  const found = short.longestAt(wordAt, skipped);
  if (found === null) return null;
  const isYes = found.value === 'yes' || found.value === 'leanYes';
  return { isYes, isSure: found.value === 'yes' || found.value === 'no', length: skipped + found.length };
}

/** How many words at the beginning of a clause say that something is being put right. */
export function correctionLength(clause: Clause): number {
  return correcting.longestAt(wordsOf(clause), 0)?.length ?? 0;
}

/** True where a clause asks rather than tells. */
export function isAsking(clause: Clause): boolean {
  return (clause.isQuestion ? askingWithMark : asking).longestAt(wordsOf(clause), 0) !== null;
}

/** True where a clause says that none of what was listed is there. */
export function saysNone(clause: Clause): boolean {
  const found = noneOfIt.longestAt(wordsOf(clause), 0);
  return found !== null && isCourtesy(wordsOf(clause), found.length, clause.items.length);
}

/** The choice of the open question that short answers mean; null where the question takes none. */
export function choiceOfAnswer({ choices = [] }: Question, isYes: boolean): string | null {
  const ids = isYes ? ['yes', 'inside', 'colder'] : ['no', 'outside'];
  const isRain = choices.some(({ id }) => id === 'none') && !isYes;
  return choices.find(({ id }) => ids.includes(id))?.id ?? (isRain ? 'none' : null);
}

/** The choice whose label, or the part before its comma, or whose id the words are; null where none. */
export function choiceOfLabel({ choices = [] }: Question, words: string): string | null {
  const plain = stripped(words);
  if (plain === '') return null;
  const found = choices.filter(({ id, label }) => {
    const full = Object.values(label).flatMap((text) => [wordsText(text), wordsText(text.split(',')[0] ?? '')]);
    return [id.replaceAll('-', ' '), ...full].some((one) => stripped(one) === plain);
  });
  return found.length === 1 ? found[0]!.id : null;
}

const leading = new Set('its it is a an the they theyre are id say just'.split(' '));

function stripped(words: string): string {
  const parts = words.split(' ');
  const first = parts.findIndex((word) => !leading.has(word));
  return first < 0 ? words : parts.slice(first).join(' ');
}
