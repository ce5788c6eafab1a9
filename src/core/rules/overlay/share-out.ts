import type { FactId } from '../../facts/registry/index.ts';
import type { Reading } from '../../facts/types.ts';
import { roundTo } from '../../units/round.ts';
import type { DefinitionOf } from '../mutate/change-conditions.ts';
import { bandOf } from '../pack/parse-reading.ts';
import { isLowerSide, type LimitsOf, type NumberLimit, straddles } from '../pack/straddle.ts';
import type { AnswerChoice, Question } from '../pack-types.ts';

/** One end of a part, at a limit: 8 and less, less than 8, more than 8, 8 and more. */
export interface PartEnd {
  readonly fact: FactId;
  readonly is: 'up-to' | 'under' | 'over' | 'from';
  readonly value: number;
}

/** The words of a part in one language: the answer's own, and the ends that it got. */
export type SayPart = (language: string, label: string, ends: readonly PartEnd[]) => string;

/** A question with answers shared out, and which answer of it became which. */
export interface SharedOut {
  readonly question: Question;
  readonly shared: readonly { readonly whole: AnswerChoice; readonly parts: readonly AnswerChoice[] }[];
}

interface Piece {
  readonly gives: AnswerChoice['gives'];
  readonly ends: readonly PartEnd[];
}

/**
 * The questions with an answer that lies on both sides of a limit, each such answer cut at the limit into answers that say together
 * what it said and leave no gap; all other answers stay word for word. A fact without a stated precision is not cut: its answers stay
 * on both sides, and the check says so.
 */
export function shareOut(
  questions: readonly Question[],
  limitsOf: LimitsOf,
  definitionOf: DefinitionOf,
  say: SayPart,
): SharedOut[] {
  return questions.flatMap((question): SharedOut[] => {
    const taken = new Set((question.choices ?? []).map(({ id }) => id));
    const answers = (question.choices ?? []).map((whole) => ({
      whole,
      parts: partsOf(whole, piecesOf(whole, limitsOf, definitionOf), taken, say),
    }));
    const shared = answers.filter(({ parts }) => parts.length > 1);
    if (shared.length === 0) return [];
    return [{ question: { ...question, choices: answers.flatMap(({ parts }) => parts) }, shared }];
  });
}

function partsOf(whole: AnswerChoice, pieces: readonly Piece[], taken: Set<string>, say: SayPart): AnswerChoice[] {
  if (pieces.length < 2) return [whole];
  return pieces.map(({ gives, ends }) => {
    const label = Object.entries(whole.label).map(([language, text]) => [language, say(language, text, ends)]);
    return { ...whole, id: freeId(whole.id, taken), label: Object.fromEntries(label), gives };
  });
}

function freeId(id: string, taken: Set<string>): string {
  let number = 1;
  while (taken.has(`${id}-${number}`)) number += 1;
  taken.add(`${id}-${number}`);
  return `${id}-${number}`;
}

function piecesOf({ gives }: AnswerChoice, limitsOf: LimitsOf, definitionOf: DefinitionOf): Piece[] {
  let pieces: Piece[] = [{ gives, ends: [] }];
  for (const [fact, reading] of Object.entries(gives) as [FactId, Reading][]) {
    const { precision } = definitionOf(fact);
    if (reading.type !== 'number' || precision === undefined) continue;
    const cuts = limitsOf(fact)
      .filter((limit) => straddles(bandOf(reading), limit))
      .toSorted((a, b) => a.value - b.value || Number(isLowerSide(a)) - Number(isLowerSide(b)));
    if (cuts.length === 0) continue;
    for (const cut of cuts) pieces = pieces.flatMap((piece) => cutPiece(piece, fact, cut, precision));
    pieces = pieces.map((piece) => valued(piece, fact, precision));
  }
  return pieces;
}

/** A piece cut in two at a limit; whole where the limit does not lie in it. */
function cutPiece({ gives, ends }: Piece, fact: FactId, limit: NumberLimit, step: number): Piece[] {
  const reading = gives[fact];
  if (reading?.type !== 'number' || !straddles(bandOf(reading), limit)) return [{ gives, ends }];
  const [low, high] = bandOf(reading);
  const { value } = limit;
  const isLower = isLowerSide(limit);
  const below = isLower ? value : Math.max(low, roundTo(value - step, step));
  const above = isLower ? Math.min(high, roundTo(value + step, step)) : value;
  const piece = (from: number, to: number, is: PartEnd['is']): Piece => ({
    gives: { ...gives, [fact]: { ...reading, low: from, high: to } },
    ends: [...ends.filter((end) => end.fact !== fact || isLeast(end.is) !== isLeast(is)), { fact, is, value }],
  });
  return [piece(low, below, isLower ? 'up-to' : 'under'), piece(above, high, isLower ? 'over' : 'from')];
}

function isLeast(is: PartEnd['is']): boolean {
  return is === 'over' || is === 'from';
}

/** A piece whose reading has the answer's own value where that lies in its band, else the middle of it. */
function valued({ gives, ends }: Piece, fact: FactId, step: number): Piece {
  const reading = gives[fact];
  if (reading?.type !== 'number') return { gives, ends };
  const [low, high] = bandOf(reading);
  const middle = Math.min(high, Math.max(low, roundTo((low + high) / 2, step)));
  const value = reading.value >= low && reading.value <= high ? reading.value : middle;
  return { gives: { ...gives, [fact]: { ...reading, value } }, ends };
}
