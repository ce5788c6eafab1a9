import type { FactId } from '../../facts/registry/index.ts';
import type { Scan } from './scan.ts';

/** Facts of the time to come, with the least and most hours that a span named for them may have. */
const spans: Readonly<Partial<Record<FactId, readonly [least: number, most: number]>>> = {
  'rain.next48hMm': [40, 56],
  'rain.next48hMaxMmPerH': [40, 56],
  'soil.drainsExpected7d': [0, 192],
};

/** Facts that a year told long ago still holds for. */
const lasting: ReadonlySet<FactId> = new Set<FactId>([
  'field.drained',
  'field.texture',
  'field.organicSoil',
  'field.areaHa',
]);

/** True where a clause names a span of time that is not the fact's own, or a year for what does not last. */
export function isOutOfTime(fact: FactId, { aheadHours, hasYear }: Pick<Scan, 'aheadHours' | 'hasYear'>): boolean {
  if (hasYear && !lasting.has(fact)) return true;
  const span = spans[fact];
  return aheadHours !== null && span !== undefined && (aheadHours < span[0] || aheadHours > span[1]);
}
