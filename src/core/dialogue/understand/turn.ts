import type { FactId } from '../../facts/registry/index.ts';
import type { ClauseKind } from './clause-kind.ts';
import type { SaidUnit } from './lexicon-types.ts';
import { measuresFor } from './pack-words.ts';
import { readClause } from './read-clause.ts';
import type { ReaderContext } from './reader-context.ts';
import type { Gathered, Left } from './said-after.ts';
import type { Amount, Scan } from './scan.ts';

/** What a clause is to a number put right in the same text: the word that takes it back, or the number in its place. */
export type Turn = 'takes-back' | 'in-its-place';

/** Finds "wind 9, no, 10" and "wind 9 sorry 10": a number, then words that take it back, then another number that says of what alone. */
export function turnsOf(kinds: readonly ClauseKind[]): readonly (Turn | null)[] {
  const turns: (Turn | null)[] = kinds.map(() => null);
  for (let at = 1; at < kinds.length; at += 1) {
    const isAfterNumber = turns[at - 1] === 'in-its-place' || (kinds[at - 1]?.rest?.amounts.length ?? 0) > 0;
    let last = at;
    while (takesBack(kinds[last]) && kinds[last]?.rest === null) last += 1;
    const isTaken = last > at ? !kinds[last]?.answer?.isYes : takesBack(kinds[last]);
    if (!isTaken || !((isAfterNumber && isBare(kinds[last]?.rest ?? null)) || isOfSame(kinds[at - 1], kinds[last])))
      continue;
    turns.fill('takes-back', at, last);
    turns[last] = 'in-its-place';
  }
  return turns;
}

function takesBack(kind: ClauseKind | undefined): boolean {
  if (kind === undefined || kind.intent !== null) return false;
  return kind.corrects || (kind.answer !== null && kind.isPlain && !kind.answer.isYes);
}

/** True where a clause is a unit alone: the "mph" of "12 km/h, no, mph". */
function isUnit({ clause: { items }, language, wordAt }: Scan): boolean {
  return language.books.unitsAfter.longestAt(wordAt, 0)?.length === items.length;
}

/** The number before in the unit that a clause is alone. */
function inUnit({ language, wordAt }: Scan, before: Amount | undefined): Amount | null {
  const unit = language.books.unitsAfter.longestAt(wordAt, 0);
  if (before === undefined || unit === null) return null;
  return { ...before, quantity: { ...before.quantity, unit: unit.value, unitWord: wordAt(unit.length - 1) } };
}

/** True where both clauses choose of one fact, the later one without a "not": "moist, no, wet". */
function isOfSame(before: ClauseKind | undefined, after: ClauseKind | undefined): boolean {
  const facts = choicesOf(before?.rest ?? null);
  return after?.rest?.flags.has('not') === false && choicesOf(after.rest).some((fact) => facts.includes(fact));
}

function choicesOf(rest: Scan | null): readonly FactId[] {
  const rows = rest?.cues.flatMap(({ entry }) => entry.rows) ?? [];
  return rows.flatMap(({ fact, means }) => (means.kind === 'sign' ? [] : [fact]));
}

function isBare(rest: Scan | null): boolean {
  if (rest !== null && isUnit(rest)) return true;
  return rest?.amounts.length === 1 && rest.subjects.length === 0 && rest.unknown === 0 && rest.agoHours === undefined;
}

/** A number in place of another: its clause and context, which make it one of the same fact. */
interface InPlace {
  readonly rest: Scan;
  readonly context: ReaderContext;
}

/** The number in place of the one before it, of its fact and, where it has none, in its unit; null where it can be none of that fact. */
export function inPlaceOf(kind: ClauseKind, left: Left, context: ReaderContext, { offered }: Gathered): InPlace | null {
  const before = left.reading?.found.at(-1);
  if (kind.rest === null || before?.reading.type !== 'number') return null;
  const amount = kind.rest.amounts[0] ?? inUnit(kind.rest, left.amounts.at(-1));
  if (amount === null) return null;
  if (offered.at(-1)?.fact !== before.fact) return null;
  const isOfFact = (unit: SaidUnit | null) =>
    unit === null || Object.hasOwn(measuresFor(context.pack)[before.fact]?.units ?? {}, unit);
  const saidUnits = [left.speedUnit, ...left.amounts.map(({ quantity }) => quantity.unit)];
  const unit = amount.quantity.unit ?? saidUnits.findLast((one) => one !== null && isOfFact(one)) ?? null;
  if (!isOfFact(unit)) return null;
  const rest = {
    ...kind.rest,
    ...(kind.rest.amounts.length === 0 ? { unknown: 0, unknownAt: [] } : {}),
    amounts: [{ ...amount, quantity: { ...amount.quantity, unit } }],
  };
  const own = {
    only: before.fact,
    asked: [before.fact],
    bareFact: before.fact,
    carried: null,
    carriedDepthCm: before.depthCm ?? null,
  };
  return { rest, context: { ...context, ...own } };
}

/** Reads the number in place of the one before it: told as surely, of the same time. */
export function readInPlace(
  { rest, context }: InPlace,
  quote: string,
  left: Left,
  kind: ClauseKind,
  gathered: Gathered,
): Left {
  const reading = readClause(rest, context);
  const last = gathered.offered.at(-1);
  const isBareToo = kind.rest?.amounts[0]?.quantity.unit === null;
  gathered.refused.push(...reading.refused);
  if (reading.found.length === 0 || last === undefined) gathered.lost.push(quote);
  gathered.offered.splice(-1, 1);
  for (const one of reading.found) {
    const doubtful = one.doubtful || (isBareToo && last?.doubtful === true);
    gathered.offered.push({ ...last, ...one, doubtful, quote, replaces: true });
  }
  return { ...left, reading, kind, waiting: null };
}
