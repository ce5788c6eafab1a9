import type { ClauseKind } from './clause-kind.ts';
import { measuresFor } from './pack-words.ts';
import type { Scan } from './scan.ts';
import { isToCome } from './time-span.ts';
import type { UnderstandContext, UnderstoodReading } from './types.ts';

interface Lost {
  readonly quote: string;
  readonly rest: Scan;
}

/** The clauses that told a number of which nothing was made: "3 more tomorrow", "biggest 15". */
export function numbersLost(kinds: readonly ClauseKind[], text: string, lost: ReadonlySet<string>): readonly Lost[] {
  return kinds.flatMap(({ clause, rest }) => {
    const quote = text.slice(clause.start, clause.end);
    if (rest === null || rest.amounts.length !== 1 || !lost.has(quote)) return [];
    return rest.flags.has('block') ? [] : [{ quote, rest }];
  });
}

/**
 * A number told beside another one of which nothing was made, and that may be of the same fact, is read back: it may be too little, or
 * not what was meant. That holds for what is to come, and for what answers the open question.
 */
export function doubtedBeside(
  one: UnderstoodReading,
  lost: readonly Lost[],
  { pack, asked }: UnderstandContext,
): UnderstoodReading {
  const units = measuresFor(pack)[one.fact]?.units;
  if (one.doubtful || units === undefined || one.reading.type !== 'number') return one;
  const isAhead = isToCome(one.fact, pack);
  if (!isAhead && asked?.facts.includes(one.fact) !== true) return one;
  const isToo = ({ quote, rest: { amounts, subjects, flags } }: Lost) => {
    const unit = amounts[0]?.quantity.unit ?? null;
    const isOfOther = subjects.length > 0 || flags.has('ahead') !== isAhead;
    return quote !== one.quote && !isOfOther && (unit === null || Object.hasOwn(units, unit));
  };
  return lost.some(isToo) ? { ...one, doubtful: true } : one;
}
