import { type ErrorReport, reportOf } from '../../errors/coded-error.ts';
import { checkRange } from '../../facts/plausible.ts';
import { definitionIn, type FactId } from '../../facts/registry/index.ts';
import type { FactDefinition, Reading } from '../../facts/types.ts';
import type { Pack } from '../../rules/pack-types.ts';
import { beaufort, boomWindOfForce } from '../../units/beaufort.ts';
import { convert } from '../../units/convert.ts';
import type { UnitId } from '../../units/table.ts';
import type { SaidUnit, Subject } from './lexicon-types.ts';
import { readingsOfAnswer } from './meanings.ts';
import type { Measure } from './measures.ts';
import { measuresFor } from './pack-words.ts';
import type { Quantity } from './quantities.ts';

type NumberReading = Extract<Reading, { type: 'number' }>;

/** A quantity as a reading of a fact in the fact's unit, why it cannot be, or null where it does not fit the fact. */
export function readingOfAmount(
  fact: FactId,
  quantity: Quantity,
  isDoubtful: boolean,
  pack: Pack,
): Reading | ErrorReport | null {
  const measure = measuresFor(pack)[fact];
  const definition = definitionIn(pack.facts, fact);
  if (measure === undefined || !fitsMeasure(measure, quantity.unit)) return null;
  if (quantity.unit === 'force') return readingOfForce(fact, quantity, pack);
  const inOwn = (value: number) => toOwn(value, quantity.unit, measure);
  const given = quantity.numeral;
  if (
    quantity.unit === 'bbch' &&
    measure.stage !== true &&
    !(given.value >= 10 && given.value <= 19 && given.low === undefined)
  )
    return null;
  if (!isSlope(quantity)) return null;
  const exact = inOwn(given.value);
  const ends = [given.low, given.high].map((end) => (end === undefined ? exact : inOwn(end)));
  const reading: NumberReading = {
    type: 'number',
    value: exact,
    ...bandOf(Math.min(...ends), Math.max(...ends), exact),
  };
  const problem = checkRange(fact, definition, reading);
  if (problem) return reportOf(problem.code, problem.details);
  const bound = measure.limit && quantity.bound === 'most' ? null : quantity.bound;
  if (bound === null || bound === 'near' || given.low !== undefined) {
    if (!(isDoubtful || bound === 'near') || given.low !== undefined) return reading;
    const least = quantity.unit === 'deg slope' || quantity.unit === '% slope' ? 0 : -Infinity;
    return near(
      definition,
      exact,
      inOwn(Math.max(least, given.value - given.halfStep)),
      inOwn(given.value + given.halfStep),
    );
  }
  return openEnded(definition, exact, bound, measure);
}

/** True where the unit, or none, can be one of the measure, and what is spoken of is not another thing of that unit. */
export function fitsMeasure(
  { units, of, notOf = [] }: Measure,
  unit: SaidUnit | null,
  subjects: readonly Subject[] = [],
): boolean {
  if (subjects.some((one) => notOf.includes(one)) && !subjects.some((one) => of.includes(one))) return false;
  return unit === null || Object.hasOwn(units, unit);
}

function toOwn(value: number, unit: SaidUnit | null, { units, own, stage }: Measure): number {
  if (unit === 'bbch') return stage ? value : value - 10;
  const from = unit === null ? null : (units[unit] ?? null);
  const converted =
    from === null || own === null ? value : value < absoluteZero(from) ? value : convert(value, from, own);
  return Number(converted.toPrecision(12));
}

/** Lowest convertible temperature; any other value can be converted. */
function absoluteZero(unit: UnitId): number {
  return unit === 'C' ? -273.15 : unit === 'F' ? -459.67 : -Infinity;
}

/** Every step of a slope must be one: neither falling below level, nor upright, nor "1 in 0". Other units are not judged. */
function isSlope({ numeral, unit }: Quantity): boolean {
  const least = Math.min(numeral.value, numeral.low ?? numeral.value) - numeral.halfStep;
  const most = Math.max(numeral.value, numeral.high ?? numeral.value) + numeral.halfStep;
  if (unit === '1 in') return least > 0;
  if (unit === 'deg slope' || unit === '% slope') return numeral.value >= 0 && most < 89;
  return true;
}

function bandOf(low: number, high: number, value: number): { low?: number; high?: number } {
  return low === value && high === value ? {} : { low, high };
}

function near({ range }: FactDefinition, value: number, a: number, b: number): NumberReading {
  const [lowest, highest] = range ?? [-Infinity, Infinity];
  const clamp = (end: number) => Number(Math.min(highest, Math.max(lowest, end)).toPrecision(12));
  return { type: 'number', value, low: clamp(Math.min(a, b)), high: clamp(Math.max(a, b)) };
}

function openEnded(
  { precision = 0, plausible, range }: FactDefinition,
  value: number,
  bound: 'above' | 'least' | 'below' | 'most',
  measure: Measure,
): Reading {
  const [lowest, highest] = plausible ?? range ?? [value, value];
  const step = measure.whole ? 1 : precision;
  const plus = Number((value + step).toPrecision(12));
  const less = Number((value - step).toPrecision(12));
  if (bound === 'above' || bound === 'least') {
    const low = bound === 'above' ? plus : value;
    return { type: 'number', value: low, low, high: Math.max(low, highest) };
  }
  const high = bound === 'below' ? Math.max(less, range?.[0] ?? less) : value;
  return { type: 'number', value: high, low: Math.min(high, lowest), high };
}

/** A whole Beaufort force: the pack's answer of its words where there is one, else the wind that the scale gives. */
function readingOfForce(fact: FactId, { numeral }: Quantity, pack: Pack): Reading | null {
  const ends = [numeral.low ?? numeral.value, numeral.high ?? numeral.value];
  if (ends.some((force) => !Number.isInteger(force) || force < 0 || force > 12)) return null;
  const bands = ends.map((force) => bandOfForce(fact, force, pack));
  const low = Math.min(...bands.map(([from]) => from));
  const high = Math.max(...bands.map(([, to]) => to));
  const told = ends[0] === ends[1] ? answerOfForce(fact, ends[0]!, pack) : null;
  return told ?? { type: 'number', value: Number(((low + high) / 2).toPrecision(6)), low, high };
}

function answerOfForce(fact: FactId, force: number, pack: Pack): NumberReading | null {
  const id = beaufort(force).words.replaceAll(' ', '-');
  const reading = readingsOfAnswer(pack, fact, id).find((one) => one.fact === fact)?.reading;
  return reading?.type === 'number' ? reading : null;
}

function bandOfForce(fact: FactId, force: number, pack: Pack): readonly [number, number] {
  const told = answerOfForce(fact, force, pack);
  if (told) return [told.low ?? told.value, told.high ?? told.value];
  if (force <= 4) return boomWindOfForce(force);
  const [, weakest] = boomWindOfForce(4);
  const [highest = 0] = [definitionIn(pack.facts, fact).range?.[1]];
  return [weakest, Math.min(beaufort(force).at10mKmh[1], highest)];
}
