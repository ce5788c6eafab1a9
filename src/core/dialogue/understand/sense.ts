import type { FactId } from '../../facts/registry/index.ts';
import type { Row, Subject } from './lexicon-types.ts';
import { type FactReading, isThereOrNot, readingsOfRow } from './meanings.ts';
import { aheadFacts } from './measures.ts';
import type { ReaderContext } from './reader-context.ts';
import type { Cue, Scan } from './scan.ts';
import { isOutOfTime } from './time-span.ts';

/** Words that were read as a fact, by the places of their items. */
export interface Sense extends FactReading {
  readonly doubtful: boolean;
  /** Clear enough beside words that are not known. */
  readonly isStrong: boolean;
  /** True where the clause names what it is said of. */
  readonly isOfSubject: boolean;
}

/** The facts that the phrases of a clause say; phrases with meanings of which none holds are counted as lost. */
export function readSenses(scan: Scan, context: ReaderContext): { senses: readonly Sense[]; lost: number } {
  const picked = new Map(scan.cues.map((cue) => [cue, cue.entry.rows.length > 0 ? pickRow(cue, scan, context) : null]));
  for (const [cue, row] of picked) if (row && isOutOfTime(row.fact, scan, context.pack)) picked.set(cue, null);
  for (const [cue, row] of picked) if (row && turnsNext(cue, row, picked)) picked.set(cue, null);
  const said = scan.cues.filter((cue) => picked.get(cue));
  let lost = scan.cues.filter((cue) => !picked.get(cue) && isMeant(cue)).length;
  const nots = boundBy(scan, said, 'not');
  const scants = boundBy(scan, said, 'scant');
  const senses: Sense[] = [];
  for (const cue of said) {
    const row = picked.get(cue)!;
    const count = (nots.get(cue) ?? 0) + Number(context.isNegatedList && !nots.has(cue));
    const isScant = scants.has(cue);
    const readings =
      count > 1 || (isScant && !isThereOrNot(row.fact, context.pack))
        ? []
        : readingsOfRow(row, count === 1, context.pack);
    const earlier = senses.findIndex(({ fact, reading }) => fact === row.fact && reading.type === 'choice');
    if (readings.length === 0 && earlier >= 0 && isPutRight(cue, scan)) {
      const right = readingsOfRow(row, false, context.pack);
      senses.splice(earlier, 1, ...right.map((one) => ({ ...one, doubtful: true, isStrong: true, isOfSubject: true })));
      continue;
    }
    if (readings.length === 0 && !(earlier >= 0 && count === 1)) lost += 1;
    const isEither = row.means.kind === 'sign' && !row.means.isAbsent && count === 0 && scan.flags.has('or');
    const doubtful = isEither || isScant || (row.doubtful === true && count === 0);
    senses.push(
      ...readings.map((one) => ({
        ...one,
        doubtful,
        isStrong: row.strong === true,
        isOfSubject: isOf(row, cue, scan),
      })),
    );
  }
  return { senses, lost };
}

/** True where a plain "no" right before a choice puts another in its place: "moist no wet". */
function isPutRight({ from }: Cue, { wordAt, language }: Scan): boolean {
  return language.answers.plain.has(wordAt(from - 1));
}

/** True for a "never" or "none" that is an answer alone, where what it denies follows: "never drained". */
function turnsNext(cue: Cue, { fact }: Row, picked: ReadonlyMap<Cue, Row | null>): boolean {
  if (!cue.entry.flags.includes('not')) return false;
  return [...picked].some(([other, row]) => row?.fact === fact && other.from >= cue.to);
}

/** A phrase that only tells what is spoken of, or fills, is not lost where its meanings do not hold. */
function isMeant({ entry }: Cue): boolean {
  return entry.subjects.length === 0 && entry.flags.length === 0 && entry.rows.some(({ of }) => of.length > 0);
}

/** How often each phrase is held by "not": the next one said, those joined to it by "or", or, at the end, the last one. */
function boundBy(scan: Scan, said: readonly Cue[], flag: 'not' | 'scant'): ReadonlyMap<Cue, number> {
  const bound = new Map<Cue, number>();
  const hold = (cue: Cue | undefined) => cue && bound.set(cue, (bound.get(cue) ?? 0) + 1);
  for (const cue of scan.cues) {
    if (said.includes(cue) || !holds(cue, scan, flag)) continue;
    const next = said.findIndex((other) => other.from >= cue.to);
    if (next < 0 && bound.size > 0 && cue.to === scan.clause.items.length) continue;
    if (next < 0 || cue.entry.flags.includes('ended')) {
      hold(said.findLast((other) => other.to <= cue.from));
      continue;
    }
    hold(said[next]);
    for (let at = next + 1; at < said.length && isJoinedByOr(scan, said[at - 1]!, said[at]!); at += 1) hold(said[at]);
  }
  return bound;
}

/** A phrase that begins with a negator says "not" too where no meaning of its own holds. */
function holds({ entry, from }: Cue, { wordAt, language }: Scan, flag: 'not' | 'scant'): boolean {
  if (entry.flags.includes(flag) || (flag === 'not' && entry.flags.includes('ended'))) return true;
  return flag === 'not' && entry.rows.length > 0 && language.books.negators.has(wordAt(from));
}

function isJoinedByOr({ cues }: Scan, a: Cue, b: Cue): boolean {
  return cues.some(({ entry, from }) => entry.flags.includes('or') && from >= a.to && from < b.from);
}

/** The meaning of a phrase here: of its subject, of the open question, of what was spoken of just before, or alone. */
function pickRow(cue: Cue, scan: Scan, context: ReaderContext): Row | null {
  const isAhead = scan.flags.has('ahead') && !cue.entry.flags.includes('ahead');
  const isAsked = ({ fact }: Row) => context.asked.includes(fact);
  const rows = cue.entry.rows.filter((row) => {
    if (aheadFacts.has(row.fact)) return scan.flags.has('ahead') || (row.of.length === 0 && isAsked(row));
    return !isAhead;
  });
  const subject = subjectOf(cue, scan);
  if (subject !== null) {
    const ofSubject = rows.filter(({ of }) => of.includes(subject));
    if (ofSubject.length > 0) return ofSubject.find(isAsked) ?? ofSubject[0]!;
    const drained = subject === 'water' && scan.subjects.some((one) => one.subject === 'drains');
    const ofDrains = drained ? rows.find(({ of }) => of.includes('drains')) : undefined;
    if (ofDrains) return ofDrains;
    const askedOf = rows.find(
      (row) => isAsked(row) && (row.of.length === 0 || row.of.includes('none')) && speaksOf(row.fact, subject),
    );
    return askedOf ?? rows.find(({ of, strong }) => strong === true && of.includes('none')) ?? null;
  }
  const { carried } = context;
  return (
    rows.find(isAsked) ??
    rows.find(({ of }) => carried !== null && of.includes(carried)) ??
    rows.find(({ of, strong }) => of.includes('none') && (carried === null || strong === true || names(cue))) ??
    null
  );
}

function isOf({ of }: Row, cue: Cue, scan: Scan): boolean {
  const subject = subjectOf(cue, scan);
  return subject !== null && of.includes(subject);
}

/** True where a phrase names what it is said of: "no rain". */
function names({ to, from }: Cue): boolean {
  return to - from > 1;
}

/** The subject nearest before a phrase, else the nearest after it. */
function subjectOf(cue: Cue, { subjects: all, cues }: Scan): Subject | null {
  const subjects = all.filter(({ subject }) => subject !== 'depth' && !subject.startsWith('plant:'));
  const isOwn = (at: number) => at >= cue.from && at < cue.to;
  const isPlain = (at: number) =>
    !cues.some(({ from, entry }) => from === at && entry.rows.some(({ of }) => of.includes('none')));
  const before = subjects.findLast(({ at }) => at < cue.from);
  const after = subjects.find(({ at }) => at >= cue.to && isPlain(at));
  const own = subjects.find(({ at }) => isOwn(at));
  return (before ?? (own ? undefined : after))?.subject ?? null;
}

const spokenOf: Readonly<Partial<Record<FactId, readonly Subject[]>>> = {
  'rain.nowMmPerH': ['rain', 'air', 'wind', 'crop', 'leaves'],
  'rain.next48hMm': ['rain'],
  'soil.temperatureTrendCPerDay': ['soil', 'temperature'],
  'soil.feel': ['soil', 'surface', 'water'],
  'soil.surface': ['soil', 'surface', 'water', 'crop'],
  'soil.drainsRunning': ['drains', 'water'],
  'field.texture': ['soil'],
  'field.organicSoil': ['soil'],
  'field.slopePercent': ['slope', 'water', 'soil'],
  'field.waterDistanceM': ['water'],
  'crop.trueLeaves': ['crop', 'leaves'],
  'weed.tillers': ['weed', 'tillers'],
  'air.temperatureC': ['air', 'temperature'],
  'air.inversionRisk': ['air', 'wind'],
  'weed.present': ['weed'],
  'treatment.partnerInTank': ['tank', 'treatment', 'product'],
  'treatment.alreadyApplied': ['treatment', 'crop', 'product'],
  'field.loosenedThisSeason': ['soil', 'drains'],
  'field.waterPlanAgreed': ['plan'],
  'field.bufferMarked': ['buffer'],
  'field.protectedWaterArea': ['zone'],
  'crop.frostOnLeaves': ['leaves', 'crop'],
  'wind.boomKmh': ['wind'],
  'wind.gustKmh': ['gust', 'wind', 'leaves'],
  'soil.drainsExpected7d': ['drains', 'rain', 'soil', 'water'],
  'field.drained': ['drains'],
};

function speaksOf(fact: FactId, subject: Subject): boolean {
  return spokenOf[fact]?.includes(subject) ?? false;
}
