import type { Question } from '../../rules/pack-types.ts';
import {
  choiceOfAnswer,
  correctionLength,
  intentOf,
  isAsking,
  isCourtesy,
  type ShortAnswer,
  saysNone,
  shortAnswerOf,
} from './answers.ts';
import type { Clause } from './clauses.ts';
import type { Language } from './language.ts';
import type { Row } from './lexicon-types.ts';
import { type Scan, scan, wordsOf } from './scan.ts';
import type { Intent } from './types.ts';

/** What a clause does, before its facts are read. */
export interface ClauseKind {
  readonly clause: Clause;
  readonly intent: Intent | null;
  readonly answer: ShortAnswer | null;
  /** True where the answer is a plain yes or no. */
  readonly isPlain: boolean;
  /** True where it begins by putting something right ("sorry, ..."). */
  readonly corrects: boolean;
  readonly asks: boolean;
  /** True where it says that none of the signs asked for is there. */
  readonly isNone: boolean;
  /** What is left to be read as facts; null where nothing is. */
  readonly rest: Scan | null;
}

/** Nobody says more than this in one breath: a longer clause is not read, which keeps the work in proportion to the text. */
const mostItems = 60;

/** Tells what a clause does, given the open question. */
export function kindOf(clause: Clause, asked: Question | null, language: Language): ClauseKind {
  const plain = {
    clause,
    intent: null,
    answer: null,
    isPlain: false,
    corrects: false,
    asks: false,
    isNone: false,
    rest: null,
  };
  if (clause.items.length > mostItems) return { ...plain, asks: true };
  const intent = intentOf(clause, language);
  if (intent !== null) return { ...plain, intent };
  if (language.books.saidBefore.longestAt(wordsOf(clause), 0) !== null) return { ...plain, corrects: true };
  if (asked?.form === 'signs' && saysNone(clause, language)) return { ...plain, isNone: true };
  const correction = correctionLength(clause, language);
  const body = correction === 0 ? clause : without(clause, correction);
  if (body.items.length === 0) return { ...plain, corrects: true };
  const corrects = correction > 0;
  const answer = answerOf(body, asked, language);
  if (answer === null) return { ...plain, corrects, asks: isAsking(body, language), rest: scan(body, language) };
  const rest = without(body, answer.length);
  const again = correctionLength(rest, language);
  const left = withoutEcho(again === 0 ? rest : without(rest, again), answer.isYes, language);
  return {
    ...plain,
    corrects: corrects || again > 0,
    answer: { isYes: answer.isYes, isSure: answer.isSure },
    isPlain: language.answers.plain.has(wordsOf(body)(0)),
    asks: left.items.length > 0 && isAsking(left, language),
    rest: left.items.length > 0 ? scan(left, language) : null,
  };
}

/** "No, it isn't" in one breath says the same twice. */
function withoutEcho(rest: Clause, isYes: boolean, language: Language): Clause {
  const echo = shortAnswerOf(rest, language);
  const isEcho = echo?.isYes === isYes && endsThere(wordsOf(rest), echo.length, rest.items.length, language);
  return isEcho ? without(rest, rest.items.length) : rest;
}

function without(clause: Clause, length: number): Clause {
  return { ...clause, items: clause.items.slice(length) };
}

/** The short answer that a clause begins with; not where its words go on as "no cracks" and "probably sticky" do. */
function answerOf(
  clause: Clause,
  asked: Question | null,
  language: Language,
): (ShortAnswer & { readonly length: number }) | null {
  const found = shortAnswerOf(clause, language);
  const { lexicon } = language.books;
  if (found === null) return null;
  const wordAt = wordsOf(clause);
  const longest = lexicon.longestAt(wordAt, 0);
  if (longest !== null && longest.length > found.length) return null;
  const isOfAsked = longest?.value.rows.some(({ fact }) => asked?.facts.includes(fact));
  const isTaken = found.isSure && answerChoice(asked, found.isYes) !== null;
  if (!isTaken && longest?.length === found.length && isOfAsked) return null;
  if (endsThere(wordAt, found.length, clause.items.length, language)) return found;
  const again = shortAnswerOf(without(clause, found.length), language);
  if (again?.isYes === found.isYes && endsThere(wordAt, found.length + again.length, clause.items.length, language))
    return { ...found, length: found.length + again.length };
  const next = lexicon.longestAt(wordAt, found.length)?.value;
  const isPlain = found.length === 1 && language.answers.plain.has(wordAt(0));
  const goesOn =
    !found.isYes &&
    next !== undefined &&
    !next.rows.some((row) => saysNo(row, asked)) &&
    (next.rows.length > 0 || next.subjects.length > 0) &&
    !next.flags.includes('filler');
  return isPlain && !goesOn ? found : null;
}

/** True where a meaning of the open question's fact is "no" in itself: "no, just water". */
function saysNo({ fact, means }: Row, asked: Question | null): boolean {
  return asked?.facts.includes(fact) === true && means.kind === 'choices' && means.choices.join() === 'no';
}

function endsThere(wordAt: (at: number) => string, from: number, to: number, language: Language): boolean {
  if (isCourtesy(wordAt, from, to, language)) return true;
  for (let at = from; at < to; at += 1) {
    const entry = language.books.lexicon.longestAt(wordAt, at);
    if (entry === null || entry.length !== 1 || !entry.value.flags.includes('filler')) return false;
  }
  return true;
}

/** The answer of the open question that yes or no means, as the id of its choice; null where the question takes none. */
export function answerChoice(asked: Question | null, isYes: boolean): string | null {
  return asked === null ? null : choiceOfAnswer(asked, isYes);
}
