import type { ErrorReport } from '../../errors/coded-error.ts';
import type { Reading } from '../../facts/types.ts';
import { isSpeed, readAmounts } from './amounts.ts';
import type { SaidUnit, Subject } from './lexicon-types.ts';
import type { FactReading } from './meanings.ts';
import { isSameReading, narrower } from './merge.ts';
import { deniesHeight } from './plants.ts';
import type { ReaderContext } from './reader-context.ts';
import type { Scan } from './scan.ts';
import { readSenses, type Sense } from './sense.ts';

/** A reading of a clause. */
export interface Found extends FactReading {
  readonly doubtful: boolean;
  /** Depth in cm of a soil temperature that was not read at 30 cm. */
  readonly depthCm?: number;
}

/** What a clause comes to. */
export interface ClauseReading {
  readonly found: readonly Found[];
  readonly refused: readonly ErrorReport[];
  /** True where the clause says something that nothing could be made of. */
  readonly isLost: boolean;
  /** True where it says that the person does not know what is asked. */
  readonly doesNotKnow: boolean;
  /** True where a number was denied: "not 8". */
  readonly denies: boolean;
  /** What it speaks of without saying anything of it. */
  readonly dangling: Subject | null;
  readonly danglingDepthCm: number | null;
  readonly speedUnit: SaidUnit | null;
}

const nothing: ClauseReading = {
  found: [],
  refused: [],
  isLost: false,
  doesNotKnow: false,
  denies: false,
  dangling: null,
  danglingDepthCm: null,
  speedUnit: null,
};

const mostUnknown = 4;
const mostUnsureOf = 2;

/** Reads a clause that neither asks nor wants anything: its facts, and whether anything in it was left over. */
export function readClause(scan: Scan, given: ReaderContext): ClauseReading {
  if (scan.flags.has('unsure')) return { ...nothing, ...unsureOf(scan, given) };
  if (scan.flags.has('block') || isAskedBack(scan, given) || deniesHeight(scan)) return { ...nothing, isLost: true };
  const isDoubtful = given.isDoubtful || scan.flags.has('doubt') || scan.clause.isQuestion;
  const context = { ...given, isDoubtful };
  const { senses, lost } = readSenses(scan, context);
  const amounts = readAmounts(scan, context);
  const kept = senses.filter((sense) => scan.unknown === 0 || isKept(sense, scan, context));
  const said: Found[] = joinOr(kept, scan).map(({ fact, reading, doubtful }) => ({
    fact,
    reading,
    doubtful: doubtful || isDoubtful || scan.unknown > 0,
  }));
  const isPart = (one: Found) => scan.flags.has('mostly') && one.reading.type !== 'signs';
  const found = [...said, ...amounts.readings.map(({ at: _, ...one }) => one)].map((one) =>
    isPart(one) ? { ...one, doubtful: true } : one,
  );
  const isOnlySubject = found.length === 0 && amounts.refused.length === 0 && scan.unknown === 0;
  const dangling = isOnlySubject && amounts.lost === 0 ? (scan.subjects.at(-1)?.subject ?? null) : null;
  const isNothingElse = found.length === 0 && amounts.refused.length === 0 && amounts.lost === 0;
  const danglingDepthCm = isNothingElse ? amounts.depthCm : null;
  const isSilent = found.length > 0 || amounts.refused.length > 0 || amounts.denied > 0;
  return {
    ...nothing,
    found,
    refused: amounts.refused,
    isLost:
      lost > 0 ||
      amounts.lost > 0 ||
      kept.length < senses.length ||
      (!isSilent && dangling === null && danglingDepthCm === null && !isEmpty(scan)),
    denies: amounts.denied > 0,
    dangling,
    danglingDepthCm,
    speedUnit: scan.amounts.findLast(({ quantity }) => isSpeed(quantity))?.quantity.unit ?? null,
  };
}

/** True where a clause with a question mark names a thing without a number, which nobody asked for: "drains running?". */
function isAskedBack({ clause, amounts, cues }: Scan, { asked }: ReaderContext): boolean {
  if (!clause.isQuestion || amounts.length > 0) return false;
  return !cues.some(({ entry }) => entry.rows.some(({ fact }) => asked.includes(fact)));
}

/** True where a clause holds nothing but filling words and times. */
export function isEmpty(scan: Scan): boolean {
  return (
    scan.unknown === 0 &&
    !scan.hasTime &&
    scan.amounts.length === 0 &&
    scan.cues.every(({ entry }) => entry.flags.includes('filler') || entry.agoHours !== undefined)
  );
}

function unsureOf(scan: Scan, { asked }: ReaderContext): Partial<ClauseReading> {
  const rows = scan.cues.flatMap(({ entry }) => entry.rows);
  const isOfAsked = rows.some(({ fact }) => asked.includes(fact));
  const isFew = scan.unknown <= (asked.length > 0 ? mostUnsureOf : 0);
  const isBare = rows.length === 0 && scan.subjects.length === 0 && isFew && scan.amounts.length === 0;
  return isOfAsked || isBare ? { doesNotKnow: true } : { isLost: true };
}

function isKept({ isStrong, isOfSubject, fact }: Sense, scan: Scan, { asked }: ReaderContext): boolean {
  return scan.unknown <= mostUnknown && (isStrong || asked.includes(fact) || (isOfSubject && scan.unknown <= 2));
}

/** Choices of one fact joined by "or" are one reading: one of them is so. */
function joinOr(senses: readonly Sense[], scan: Scan): readonly Found[] {
  const joined: Found[] = [];
  for (const sense of senses) {
    const at = joined.findIndex(({ fact, reading }) => fact === sense.fact && reading.type !== 'signs');
    const earlier = joined[at];
    const both = earlier && scan.flags.has('or') ? eitherOf(earlier.reading, sense.reading) : null;
    if (earlier && both) joined[at] = { ...earlier, reading: both, doubtful: earlier.doubtful || sense.doubtful };
    else if (!joined.some((one) => one.fact === sense.fact && isSameReading(one.reading, sense.reading)))
      joined.push(sense);
  }
  return joined;
}

function eitherOf(a: Reading, b: Reading): Reading | null {
  if (narrower(a, b) === 'same') return a;
  if (a.type === 'choice' && b.type === 'choice') {
    return { type: 'choice', possible: [...new Set([...a.possible, ...b.possible])] };
  }
  if (a.type !== 'number' || b.type !== 'number') return null;
  const low = Math.min(a.low ?? a.value, b.low ?? b.value);
  const high = Math.max(a.high ?? a.value, b.high ?? b.value);
  return { type: 'number', value: Number(((low + high) / 2).toPrecision(12)), low, high };
}
