import type { FactId } from '../../facts/registry/index.ts';
import type { Pack } from '../../rules/pack-types.ts';
import { answerChoice, type ClauseKind } from './clause-kind.ts';
import { depthOf } from './depth.ts';
import { measuresFor } from './pack-words.ts';
import type { Scan } from './scan.ts';
import type { UnderstandContext } from './types.ts';

/** How a text takes something back. */
export interface Correction {
  readonly corrects: boolean;
  /** True where its "no" takes something back and answers nothing: "no, it was 11". */
  readonly isNoSpent: boolean;
}

/** Tells whether a text takes back what was said: by its words, by "not 8", or by "no" before a number that says of what alone. */
export function correctionOf(kinds: readonly ClauseKind[], { asked, pack }: UnderstandContext): Correction {
  const isMarked = kinds.some(({ corrects, rest }) => corrects && (rest !== null || kinds.length > 1));
  const denies = kinds.some(({ rest }) => rest !== null && deniesNumber(rest));
  const says = kinds.filter(({ rest }) => rest !== null && rest.amounts.length + rest.cues.length > 0);
  const no = kinds.findIndex(({ answer, isPlain }) => answer !== null && isPlain && !answer.isYes);
  const isNoFirst =
    no === 0 || (no > 0 && kinds.slice(0, no).some(({ rest }) => rest !== null && isBareNumber(rest, pack)));
  const isNumberAfter = no >= 0 && says.some(({ rest }) => rest !== null && isBareNumber(rest, pack));
  const isNoTaken = answerChoice(asked, false) !== null;
  const isNoSpent = isNoFirst && isNumberAfter;
  const isOtherAfter = isNoFirst && !isNoTaken && says.length > 0;
  return { corrects: isMarked || denies || isNoSpent || isOtherAfter, isNoSpent: isNoSpent || isOtherAfter };
}

const spokenTogether = 3;

/** The one number fact that a corrected number may mean: the fact last spoken of, else the only one said shortly before. */
export function correctedNumber({ recent, asked, pack }: UnderstandContext): FactId | null {
  const spoken = recent.length > 0 ? recent.slice(0, spokenTogether) : (asked?.facts ?? []);
  const numbers = spoken.filter((fact) => measuresFor(pack)[fact] !== undefined);
  if (numbers[0] === spoken[0] || numbers.length === 1) return numbers[0] ?? null;
  return null;
}

/** What the words of a correction may mean: the fact last spoken of, else what is asked. */
export function correctedFact({ recent, asked }: UnderstandContext): readonly FactId[] {
  const last = recent[0];
  return last === undefined ? (asked?.facts ?? []) : [last];
}

function deniesNumber({ amounts, wordAt, language }: Scan): boolean {
  return amounts.some(({ at }) => language.little.notBefore.has(wordAt(at - 1)));
}

function isBareNumber(scan: Scan, pack: Pack): boolean {
  const { depths, others } = depthOf(scan, { asked: [], carriedPlant: null, pack });
  return others.length > 0 && depths.length === 0 && scan.subjects.length === 0;
}
