import { type ErrorReport, reportOf } from '../../errors/coded-error.ts';
import { is30cm } from '../../facts/depth-reading.ts';
import type { FactId } from '../../facts/registry/index.ts';
import { fitsMeasure, readingOfAmount } from './amount-reading.ts';
import { askedFact } from './asked-fact.ts';
import { depthOf } from './depth.ts';
import { depthRefusal as refusalOfDepth, soilTemperature } from './depth-refusal.ts';
import type { Subject } from './lexicon-types.ts';
import { isLone, isTold } from './lone-number.ts';
import type { FactReading } from './meanings.ts';
import type { Measure } from './measures.ts';
import { measuresFor } from './pack-words.ts';
import { isHeightOf, plantOf } from './plants.ts';
import type { Quantity } from './quantities.ts';
import type { ReaderContext } from './reader-context.ts';
import type { Amount, Scan } from './scan.ts';
import { isOutOfTime } from './time-span.ts';

/** A quantity that was read as a fact. */
export interface ReadAmount extends FactReading {
  readonly doubtful: boolean;
  readonly at: number;
  /** Depth in cm where it is not 30 cm. */
  readonly depthCm?: number;
}

/** What the quantities of a clause come to. */
export interface Amounts {
  readonly readings: readonly ReadAmount[];
  readonly refused: readonly ErrorReport[];
  readonly lost: number;
  /** How many were said not to be so. */
  readonly denied: number;
  /** Depth named in the clause, cm; null where none is. */
  readonly depthCm: number | null;
}

type MeasureRow = readonly [FactId, Measure];

const neutral: ReadonlySet<Subject> = new Set<Subject>(['temperature', 'depth', 'treatment']);
/** Gives each quantity of a clause to the fact that it measures; what measures none, or one of several, is lost. */
export function readAmounts(scan: Scan, context: ReaderContext): Amounts {
  const { depths, others } = depthOf(scan, context);
  const depthCm = depths[0]?.cm ?? null;
  const isSpan = depths.some(({ amount }) => amount.quantity.numeral.low !== undefined);
  const readings: ReadAmount[] = [];
  const refused: ErrorReport[] = [];
  let denied = 0;
  const isUnclear = depths.length > 1 || bareCount(others, scan) > 1;
  let lost = isUnclear ? others.length : 0;
  for (const amount of isUnclear ? [] : others) {
    const quantity = outsideOf(withSpeedUnit(amount, scan, context), scan, amount.at, context);
    if (isDenied(amount, scan)) {
      lost += Number(amount !== scan.amounts[0] && scan.language.answers.plain.has(scan.wordAt(amount.at - 1)));
      denied += 1;
      continue;
    }
    const found = factOf(amount, quantity, scan, context, depthCm ?? context.carriedDepthCm);
    if (found === null) {
      lost += 1;
      continue;
    }
    const { fact } = found;
    if (isOutOfTime(fact, scan, context.pack)) {
      lost += 1;
      continue;
    }
    const isOfThing = fact === 'field.waterDistanceM' && scan.subjects.some((one) => one.at === amount.at + 1);
    const doubtful = isOfThing || found.doubtful || context.isDoubtful || quantity.bound === 'near';
    const namedCm = fact === soilTemperature ? (depthCm ?? context.carriedDepthCm) : null;
    const wrongDepth = fact === soilTemperature ? depthRefusal(scan, namedCm, isSpan, context.hasHour) : null;
    const told = isUpTo(amount, fact, scan, context) ? ({ ...quantity, bound: 'most' } as const) : quantity;
    const reading = wrongDepth ?? readingOfAmount(fact, told, context.isDoubtful, context.pack);
    if (reading === null) lost += 1;
    else if ('code' in reading) refused.push(reading);
    else readings.push({ fact, reading, doubtful, at: amount.at, ...elsewhere(namedCm) });
  }
  return { readings, refused, lost, denied, depthCm };
}

/** True for a height after a word of ranges alone: German "bis 10 cm". */
function isUpTo({ at, quantity }: Amount, fact: FactId, { wordAt, language }: Scan, { pack }: ReaderContext): boolean {
  const isHeight = measuresFor(pack)[fact]?.heightOf !== undefined;
  return isHeight && quantity.bound === null && language.units.upTo?.has(wordAt(at - 1)) === true;
}

const turned = { below: 'least', most: 'above', above: 'most', least: 'below' } as const;

/** "No ditch within 100 m": what is not within a distance is at least that far off; "it hasn't got below 10" is at least 10. */
function outsideOf(quantity: Quantity, scan: Scan, at: number, { asked }: ReaderContext): Quantity {
  const isTurned = scan.cues.some(({ entry, to }) => to <= at && entry.flags.includes('not'));
  if (
    isTurned &&
    !scan.subjects.some(({ subject }) => subject === 'water') &&
    quantity.bound !== null &&
    quantity.bound !== 'near' &&
    scan.amounts.length === 1
  )
    return { ...quantity, bound: turned[quantity.bound] };
  const isWithin = quantity.bound === 'most' || quantity.bound === 'below';
  const isOfWater = asked.includes('field.waterDistanceM') || scan.subjects.some(({ subject }) => subject === 'water');
  return isWithin && isOfWater && isNot(scan) ? { ...quantity, bound: 'least' } : quantity;
}

function isNot({ flags, cues, wordAt, language }: Scan): boolean {
  return (
    flags.has('not') ||
    cues.some(({ entry, from }) => entry.rows.length > 0 && language.books.negators.has(wordAt(from)))
  );
}

function elsewhere(depthCm: number | null): { depthCm?: number } {
  return depthCm === null || is30cm(depthCm) ? {} : { depthCm: Number(depthCm.toPrecision(4)) };
}

/** How many numbers stand without a unit and without a subject: of two, neither can be told from the other. */
function bareCount(amounts: readonly Amount[], scan: Scan): number {
  const bare = amounts.filter((amount) => amount.quantity.unit === null && !isDenied(amount, scan));
  return scan.subjects.some(({ subject }) => !neutral.has(subject)) ? 0 : bare.length;
}

function isDenied({ at, quantity }: Amount, scan: Scan): boolean {
  if (quantity.bound !== null && quantity.bound !== 'near') return false;
  return scan.cues.some(({ entry, to }) => to === at && entry.flags.includes('not'));
}

function depthRefusal(scan: Scan, depthCm: number | null, isSpan: boolean, hasHour: boolean): ErrorReport | null {
  const isSurface = scan.subjects.some(({ subject }) => subject === 'surface');
  const expected = 'a soil temperature at 30 cm';
  if (isSurface) return reportOf('DEPTH_NOT_30CM', { expected, came: 'at the surface', fact: soilTemperature });
  if (depthCm === null || is30cm(depthCm)) return null;
  const came = `at ${Number(depthCm.toPrecision(4))} cm`;
  if (isSpan) return reportOf('DEPTH_NOT_30CM', { expected, came: `${came}, more or less`, fact: soilTemperature });
  return refusalOfDepth(depthCm, hasHour);
}

function withSpeedUnit({ quantity, at }: Amount, scan: Scan, { speedUnit, carried }: ReaderContext): Quantity {
  if (quantity.unit !== null) return quantity;
  const spoken = [...nearest(scan, at), carried];
  const subject = spoken.find((one) => one === 'wind' || one === 'gust');
  const earlier = scan.amounts.findLast((one) => one.at < at && isSpeed(one.quantity));
  const unit = earlier?.quantity.unit ?? speedUnit;
  return subject !== undefined && unit !== null ? { ...quantity, unit } : quantity;
}

/** True where a quantity is a speed. */
export function isSpeed({ unit }: Quantity): boolean {
  return unit === 'mph' || unit === 'km/h' || unit === 'm/s' || unit === 'kn';
}

/** Subjects near a place: the nearest before it first, then those before that, then all in their order. */
function nearest({ subjects }: Scan, at: number): readonly Subject[] {
  const before = subjects.filter((one) => one.at < at).reverse();
  return [...before, ...subjects].map(({ subject }) => subject);
}

/** True for the first speed of "12 km/h gusting 18": it is the wind's. */
function isBeforeGusts(at: number, quantity: Quantity, { subjects, amounts }: Scan): boolean {
  const gusts = subjects.find(({ subject }) => subject === 'gust');
  const isFirst = gusts !== undefined && at < gusts.at && subjects[0] === gusts;
  return isFirst && amounts.some((one) => one.at > gusts.at) && (isSpeed(quantity) || quantity.unit === null);
}

function factOf(
  amount: Amount,
  quantity: Quantity,
  scan: Scan,
  context: ReaderContext,
  depthCm: number | null,
): { fact: FactId; doubtful: boolean } | null {
  if (context.only !== undefined) return { fact: context.only, doubtful: false };
  const { at } = amount;
  const { unit } = quantity;
  const table = Object.entries(measuresFor(context.pack)) as readonly MeasureRow[];
  const isClear = scan.unknown === 0;
  const isAhead = scan.flags.has('ahead');
  const plant = plantOf(amount, scan, context.carriedPlant);
  const height = plant === null || isAhead ? undefined : table.find(([, measure]) => isHeightOf(measure, plant));
  if (height && (isClear || isLone(at, scan))) return { fact: height[0], doubtful: !isClear };
  const near = isBeforeGusts(at, quantity, scan) ? (['wind'] as const) : nearest(scan, at);
  const said = near.filter((subject) => !neutral.has(subject));
  const carried = context.carried === null || neutral.has(context.carried) ? [] : [context.carried];
  const subjects = said.length === 0 ? carried : said;
  const holds = ([, measure]: MeasureRow) =>
    (measure.anyTime === true || (measure.ahead === true) === isAhead) && fitsMeasure(measure, unit, said);
  if (isClear || unit !== null || isLone(at, scan)) {
    for (const subject of subjects) {
      const own = table.find(
        ([, measure]) =>
          holds([soilTemperature, measure]) &&
          measure.of.includes(subject) &&
          (unit !== null || (measure.bare !== undefined && measure.of[0] === subject)),
      );
      if (own) return { fact: own[0], doubtful: !isClear || isOpen(own, unit, depthCm, context) };
    }
  }
  const isTemperature = unit === null || unit === 'C' || unit === 'F' || unit === 'deg';
  if (
    measuresFor(context.pack)[soilTemperature] &&
    depthCm !== null &&
    isTemperature &&
    !isAhead &&
    subjects.length === 0 &&
    isClear
  )
    return { fact: soilTemperature, doubtful: false };
  const alone =
    unit === null || isNode(quantity, context, scan)
      ? undefined
      : table.find((row) => holds(row) && row[1].alone?.includes(unit));
  if (alone) return { fact: alone[0], doubtful: !isClear };
  const most = isClear && quantity.bound === 'most' ? table.find((row) => row[1].limit && holds(row)) : undefined;
  if (most && unit !== null && subjects.length === 0)
    return { fact: most[0], doubtful: !context.asked.includes(most[0]) };
  const asked = askedFact(unit, context);
  if (asked === null || (!isClear && !isTold(at, scan))) return null;
  const { of = [], heightOf = [], ahead, anyTime = ahead } = measuresFor(context.pack)[asked] ?? {};
  const isForeign = subjects.some((subject) => !of.includes(subject) && !heightOf.includes(subject));
  return isForeign || (isAhead && anyTime !== true) ? null : { fact: asked, doubtful: !isClear };
}

/** True for a word of speed that may count nodes, where the pack asks for a stage of growth: German "zwei Knoten". */
function isNode({ unitWord }: Quantity, { pack, asked }: ReaderContext, { language }: Scan): boolean {
  if (language.units.nodes?.has(unitWord) !== true || asked.includes('wind.boomKmh')) return false;
  return Object.values(measuresFor(pack)).some((measure) => measure?.stage);
}

/** True where the subject leaves open what was meant: which unit of speed, or at which depth. */
function isOpen(
  [fact, { bare }]: MeasureRow,
  unit: Quantity['unit'],
  depthCm: number | null,
  { asked }: ReaderContext,
): boolean {
  if (asked.includes(fact)) return false;
  return (unit === null && bare === 'doubtful') || (fact === soilTemperature && depthCm === null);
}
