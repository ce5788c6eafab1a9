import { areCompatible, convert } from '../../units/convert.ts';
import { type UnitId, unitTable } from '../../units/table.ts';
import { soilTemperature } from './depth-refusal.ts';
import { measuresFor } from './pack-words.ts';
import { plantOf } from './plants.ts';
import type { ReaderContext } from './reader-context.ts';
import type { Amount, Scan } from './scan.ts';

/** A depth in the soil that was named. */
export interface NamedDepth {
  readonly amount: Amount;
  readonly cm: number;
}

type Given = Pick<ReaderContext, 'asked' | 'carriedPlant' | 'pack'>;

/** Parts the quantities of a clause into depths in the soil and all others. */
export function depthOf(scan: Scan, given: Given): { depths: readonly NamedDepth[]; others: readonly Amount[] } {
  const depths: NamedDepth[] = [];
  const others: Amount[] = [];
  if (!measuresFor(given.pack)[soilTemperature]) return { depths, others: scan.amounts };
  for (const amount of scan.amounts) {
    const cm = depthCm(amount, scan, given);
    if (cm === null) others.push(amount);
    else depths.push({ amount, cm });
  }
  return { depths, others };
}

function depthCm(amount: Amount, scan: Scan, { asked, carriedPlant, pack }: Given): number | null {
  const { quantity, at, isAt } = amount;
  const { unit, numeral } = quantity;
  const isOfOther = scan.subjects.some(({ subject }) =>
    ['water', 'rain', 'buffer', 'wind', 'gust', 'area'].includes(subject),
  );
  if (isOfOther) return null;
  const { depth: depthWords, depthBefore } = scan.language.little;
  const isDepthBefore = depthBefore.has(scan.wordAt(at - 1));
  const isMarked = isAt || depthWords.has(scan.wordAt(at + 1)) || isDepthBefore;
  if (unit === null) {
    const isTold = scan.amounts.some((other) => other.at < at && !other.isAt);
    const isNamed = scan.amounts.some(
      (other) => other.quantity.unit === 'cm' || (other.isAt && other.quantity.unit !== null),
    );
    if (isNamed) return null;
    const isOfSoil =
      asked.includes(soilTemperature) ||
      scan.subjects.some(({ subject }) => subject === 'soil' || subject === 'temperature');
    const isTemperature = scan.amounts.some((other) => other.quantity.unit === 'C' || other.quantity.unit === 'deg');
    const isLead = isAt && numeral.value >= 10 && scan.amounts.some((other) => other.at > at && !other.isAt);
    if (isLead && scan.subjects.some(({ subject }) => subject === 'soil')) return numeral.value;
    return isMarked && isTold && (isOfSoil || isTemperature || numeral.value >= 10) ? numeral.value : null;
  }
  if (!isLength(unit) || amount.isTall) return null;
  if (isMarked) return convert(numeral.value, unit, 'cm');
  if (!isOfTemperature(scan) && plantOf(amount, scan, carriedPlant) !== null) return null;
  const measures = measuresFor(pack);
  const isOfAsked = asked.some((fact) => Object.hasOwn(measures[fact]?.units ?? {}, unit));
  if (isOfAsked || scan.subjects.some(({ subject }) => subject.startsWith('fact:'))) return null;
  const isShort = unit === 'cm' || unit === 'in';
  return isShort ? convert(numeral.value, unit, 'cm') : null;
}

/** True where a temperature is told too, in its unit or in none. */
function isOfTemperature({ amounts }: Scan): boolean {
  return amounts.some(({ quantity: { unit } }) => unit === null || unit === 'C' || unit === 'F' || unit === 'deg');
}

function isLength(unit: string): unit is UnitId {
  return Object.hasOwn(unitTable, unit) && areCompatible(unit as UnitId, 'cm');
}
