import type { FactId } from '../../facts/registry/index.ts';
import type { Pack } from '../../rules/pack-types.ts';
import { aheadFacts } from './measures.ts';
import { measuresFor } from './pack-words.ts';
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

/** True for a fact of what is to come, built in or the pack's own. */
export function isToCome(fact: FactId, pack: Pack): boolean {
  return aheadFacts.has(fact) || measuresFor(pack)[fact]?.anyTime === true;
}

/** True where a clause names a span of time that is not the fact's own, a day gone by for what is to come, or a year for what does not last. */
export function isOutOfTime(
  fact: FactId,
  { aheadHours, hasYear, hasSince, agoHours = 0 }: Pick<Scan, 'aheadHours' | 'hasYear' | 'agoHours' | 'hasSince'>,
  pack: Pack,
): boolean {
  if ((agoHours > 0 || hasSince) && isToCome(fact, pack)) return true;
  if (hasYear && !lasting.has(fact)) return true;
  const span = spans[fact];
  return aheadHours !== null && span !== undefined && (aheadHours < span[0] || aheadHours > span[1]);
}
