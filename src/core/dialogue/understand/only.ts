import type { ClauseKind } from './clause-kind.ts';
import type { Entry } from './lexicon-types.ts';
import type { ClauseReading } from './read-clause.ts';
import type { Left } from './said-after.ts';
import type { UnderstandContext } from './types.ts';

/** True where "not sure" is said of what the clause before told, and not of the open question. */
export function isUnsureOf({ intent }: ClauseKind, { reading }: Left, { asked }: UnderstandContext): boolean {
  if (intent !== 'dont-know' || reading === null || reading.found.length === 0) return false;
  return asked === null || reading.found.some(({ fact }) => asked.facts.includes(fact));
}

/** True where a clause says no more than that the person is not sure: "clay, I think". */
export function isOnlyDoubt({ rest }: ClauseKind): boolean {
  if (rest === null || !rest.flags.has('doubt') || rest.unknown + rest.amounts.length > 0) return false;
  return rest.cues.every(({ entry }) => entry.flags.some((flag) => flag === 'doubt' || flag === 'filler'));
}

/** True where a clause says no more than that something is there no more: "but it's gone". */
export function isOnlyEnded({ rest }: ClauseKind): boolean {
  if (rest === null || !rest.flags.has('ended') || rest.unknown + rest.amounts.length > 0) return false;
  const says = ({ flags, agoHours }: Entry) => agoHours === 0 || flags.includes('ended') || flags.includes('filler');
  return rest.cues.every(({ entry }) => says(entry));
}

/** True where a no, nobody having asked, can only be that what was said just before is so no more: "not now". */
export function isNoMore(
  { answer, isPlain, rest }: ClauseKind,
  { reading }: Left,
  { asked }: UnderstandContext,
): boolean {
  if (answer === null || answer.isYes || isPlain || rest !== null || reading === null) return false;
  return asked === null || reading.found.some(({ fact }) => asked.facts.includes(fact));
}

/** True where an unsure answer is said of what the clause before told: "9, probably". */
export function isOnlyLeaning({ answer }: ClauseKind, { reading }: Left): boolean {
  return answer !== null && !answer.isSure && reading !== null && reading.found.length > 0;
}

/** True unless the clause before named a depth alone and this one tells of no soil: "boom at 50 cm, wind 6". */
export function isOfDepth({ found, refused }: ClauseReading, { reading: before }: Left): boolean {
  if (before === null || before.danglingDepthCm === null || before.dangling === 'soil') return true;
  return refused.length > 0 || found.some(({ fact }) => fact.startsWith('soil.') || fact.startsWith('field.'));
}
