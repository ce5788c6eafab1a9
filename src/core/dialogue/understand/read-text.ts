import { definitionIn } from '../../facts/registry/index.ts';
import { doubtedBeside, numbersLost } from './beside-lost.ts';
import { answerChoice, type ClauseKind, kindOf } from './clause-kind.ts';
import type { Clause } from './clauses.ts';
import { type Correction, correctedFact, correctedNumber, correctionOf } from './correction.ts';
import type { Language } from './language.ts';
import { listsUnderNot } from './lists.ts';
import { type FactReading, readingsOfAnswer } from './meanings.ts';
import { mergeReadings } from './merge.ts';
import { isNoMore, isOfDepth, isOnlyDoubt, isOnlyEnded, isOnlyLeaning, isUnsureOf } from './only.ts';
import { measuresFor } from './pack-words.ts';
import { mayDenyHeight, plantAnswered, plantTold } from './plants.ts';
import { isEmpty, readClause } from './read-clause.ts';
import type { ReaderContext } from './reader-context.ts';
import { agoOf, dateBack, depthBack, doubtBack, endBack, type Gathered, type Left, spreadBack } from './said-after.ts';
import { inPlaceOf, readInPlace, type Turn, turnsOf } from './turn.ts';
import type { Intent, UnderstandContext, Understanding } from './types.ts';

/** Reads a text clause by clause; what one clause leaves open the next may settle. */
export function readText(
  text: string,
  clauses: readonly Clause[],
  context: UnderstandContext,
  language: Language,
): Understanding {
  const kinds = clauses.map((clause) => kindOf(clause, context.asked, language));
  const correction = correctionOf(kinds, context);
  const held = listsUnderNot(kinds);
  const turns = turnsOf(kinds);
  const gathered: Gathered = { offered: [], refused: [], intents: [], lost: [] };
  let left: Left = { reading: null, kind: null, agoHours: undefined, speedUnit: null, amounts: [], waiting: null };
  kinds.forEach((kind, at) => {
    const quote = text.slice(kind.clause.start, kind.clause.end);
    left = readOne(
      kind,
      quote,
      left,
      { context, correction, isNegatedList: held[at] === true, turn: turns[at] ?? null },
      gathered,
    );
  });
  if (left.waiting !== null) gathered.lost.push(left.waiting);
  const merged = mergeReadings(gathered.offered);
  const { dropped } = merged;
  const besides = numbersLost(kinds, text, new Set(gathered.lost));
  const readings = merged.readings.map((one) => doubtedBeside(one, besides, context));
  const intents = [...new Set(gathered.intents)];
  if (intents.includes('start-again')) removeUndo(intents);
  const contradicts = intents.includes('yes') && intents.includes('no');
  const isCorrected = correction.corrects && readings.length > 0;
  const { refused, lost } = gathered;
  const isUnheard = correction.corrects && readings.length + refused.length + lost.length + intents.length === 0;
  return {
    readings,
    intents: contradicts ? intents.filter((intent) => intent !== 'yes' && intent !== 'no') : intents,
    correction: isCorrected,
    notUnderstood: [...new Set([...lost, ...dropped, ...(isUnheard || contradicts ? [text.trim()] : [])])],
    refused,
    remarks: [],
  };
}

/** "Forget that and begin again" is one wish. */
function removeUndo(intents: Intent[]): void {
  const at = intents.indexOf('undo');
  if (at >= 0) intents.splice(at, 1);
}

interface Around {
  readonly context: UnderstandContext;
  readonly correction: Correction;
  readonly isNegatedList: boolean;
  readonly turn: Turn | null;
}

function readOne(kind: ClauseKind, quote: string, left: Left, around: Around, gathered: Gathered): Left {
  const { context, correction } = around;
  const replaces =
    kind.corrects ||
    around.turn === 'in-its-place' ||
    (correction.isNoSpent && kind.answer !== null) ||
    left.kind?.corrects === true ||
    isSpentNo(left, correction);
  const offer = (found: readonly (FactReading & { doubtful: boolean })[], agoHours: number | undefined) =>
    gathered.offered.push(
      ...found.map((one) => ({ ...one, quote, replaces, ...agoOf(one.fact, agoHours, context.pack.facts) })),
    );
  const next: Left = { ...left, reading: null, kind, waiting: null };
  if (around.turn === 'takes-back' && left.reading !== null && left.reading.found.length > 0)
    return { ...left, kind: { ...kind, corrects: true } };
  const inPlace = around.turn === null ? null : inPlaceOf(kind, left, readerContext(kind, left, around), gathered);
  if (inPlace !== null) return readInPlace(inPlace, quote, left, kind, gathered);
  if (left.waiting !== null && kind.rest === null) gathered.lost.push(left.waiting);
  if (isUnsureOf(kind, left, context)) {
    doubtBack(gathered, left);
    return { ...next, reading: left.reading };
  }
  if (kind.intent === 'stop' && kind.clause.joiner === ',' && left.reading !== null && left.reading.found.length > 0)
    return next;
  if (kind.intent !== null) {
    gathered.intents.push(kind.intent);
    return next;
  }
  if (kind.isNone) {
    offer(noneOfSigns(context), undefined);
    return next;
  }
  if (isOnlyLeaning(kind, left)) {
    doubtBack(gathered, left);
    return { ...next, agoHours: left.agoHours };
  }
  if (isNoMore(kind, left, context) && endBack(gathered, left, quote)) return { ...next, agoHours: undefined };
  if (mayDenyHeight(kind)) {
    gathered.lost.push(quote);
    return next;
  }
  const isLostAnswer =
    kind.answer !== null &&
    !(correction.isNoSpent && !kind.answer.isYes) &&
    !takeAnswer(kind.answer, around, gathered, offer);
  if (kind.asks) {
    gathered.lost.push(...(left.waiting === null ? [] : [left.waiting]), quote);
    return next;
  }
  if (kind.rest === null) {
    if (isLostAnswer) gathered.lost.push(quote);
    return next;
  }
  const reading = readClause(kind.rest, readerContext(kind, left, around));
  const carriedAgo =
    kind.clause.joiner === 'and' || left.waiting !== null || isEmptyKind(left.kind) ? left.agoHours : undefined;
  const agoHours = kind.rest.agoHours ?? carriedAgo;
  if (spreadBack(gathered, kind, left)) return { ...next, reading: left.reading, agoHours: left.agoHours };
  if (kind.rest.flags.has('spread') && kind.rest.amounts.length > 0) {
    if (gathered.offered.at(-1)?.reading.type === 'number' && left.reading !== null) doubtBack(gathered, left);
    gathered.lost.push(quote);
    return next;
  }
  if (isOnlyDoubt(kind) && left.reading !== null && left.reading.found.length > 0) {
    doubtBack(gathered, left);
    return { ...next, agoHours: left.agoHours };
  }
  if (isOnlyEnded(kind) && endBack(gathered, left, quote))
    return { ...next, reading: left.reading, agoHours: left.agoHours };
  if (depthBack(gathered, reading, left, context)) return { ...next, reading: left.reading, agoHours: left.agoHours };
  const isOnlyTime = isEmpty(kind.rest) && kind.rest.agoHours !== undefined;
  if (isOnlyTime) dateBack(gathered, kind.rest.agoHours, context.pack);
  offer(reading.found, agoHours);
  gathered.refused.push(...reading.refused);
  if (reading.doesNotKnow) gathered.intents.push('dont-know');
  const isSettled = reading.found.length > 0 || reading.refused.length > 0;
  const isWaiting = reading.dangling !== null || reading.danglingDepthCm !== null;
  if (left.waiting !== null && !(isSettled && isOfDepth(reading, left))) gathered.lost.push(left.waiting);
  if (reading.isLost || isLostAnswer) gathered.lost.push(quote);
  const speedUnit = reading.speedUnit ?? left.speedUnit;
  const { amounts } = kind.rest;
  return { reading, kind, agoHours, speedUnit, amounts, waiting: isWaiting && !isSettled ? quote : null };
}

function isSpentNo({ kind }: Left, { isNoSpent }: Correction): boolean {
  return isNoSpent && kind?.answer?.isYes === false;
}

function isEmptyKind(kind: ClauseKind | null): boolean {
  return kind !== null && kind.rest !== null && isEmpty(kind.rest);
}

function readerContext(kind: ClauseKind, left: Left, { context, correction, isNegatedList }: Around): ReaderContext {
  const { asked, pack } = context;
  const corrected = correction.corrects ? correctedNumber(context) : null;
  const spoken = correction.corrects ? correctedFact(context) : (asked?.facts ?? []);
  const facts = corrected === null ? spoken : [...new Set([...spoken, corrected])];
  const counted = facts.filter((fact) => measuresFor(pack)[fact]?.asked === true);
  const only = counted.length === 1 && asked?.form !== 'place' ? counted[0]! : null;
  const isAfterAnd = kind.clause.joiner === 'and';
  const isAfterNot = isAfterAnd && left.kind?.rest?.flags.has('not') === true && kind.rest?.cues.length === 1;
  return {
    pack,
    asked: facts,
    bareFact: correction.corrects ? corrected : only,
    carried: left.reading?.dangling ?? null,
    carriedPlant: plantAnswered(kind, context) ?? (left.kind === null ? null : plantTold(left.kind, context)),
    carriedDepthCm: left.reading?.danglingDepthCm ?? null,
    isDoubtful: (isAfterAnd && left.kind?.rest?.flags.has('doubt') === true) || isAfterNot,
    isNegatedList,
    speedUnit: left.speedUnit,
    hasHour: context.hasHour ?? false,
  };
}

/** Takes yes or no as the answer of the open question, or of a reading back; false where it answers nothing. */
function takeAnswer(
  { isYes, isSure }: NonNullable<ClauseKind['answer']>,
  { context, turn }: Around,
  gathered: Gathered,
  offer: (found: readonly (FactReading & { doubtful: boolean })[], agoHours: undefined) => void,
): boolean {
  const { asked, pack, confirming } = context;
  const fact = asked?.facts[0];
  const id = confirming ? null : answerChoice(asked, isYes);
  if (id !== null && fact !== undefined) {
    offer(
      readingsOfAnswer(pack, fact, id).map((one) => ({ ...one, doubtful: !isSure })),
      undefined,
    );
    return true;
  }
  if (!isSure || (!confirming && asked !== null)) return false;
  if (turn !== null) return true;
  gathered.intents.push(isYes ? 'yes' : 'no');
  return true;
}

/** None of the signs that the open question asks for. */
function noneOfSigns({ asked, pack }: UnderstandContext): readonly (FactReading & { doubtful: boolean })[] {
  return asked!.facts.map((fact) => ({
    fact,
    reading: { type: 'signs', present: [], absent: definitionIn(pack.facts, fact).choices ?? [], complete: true },
    doubtful: false,
  }));
}
