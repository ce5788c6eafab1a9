import { spanOfVisit } from '../facts/parse/join-visits.ts';
import { epochSeconds } from '../units/brands.ts';
import type { State } from './state.ts';
import type { OfferedReading } from './take-readings.ts';

/**
 * Soil temperatures at 30 cm that differ from one said within the hour before, without a word that puts it right: neither is
 * preferred, the band spans both. A correction ("no, it was 9.2") replaces. `differ` holds the words of those that were joined.
 */
export function joinSaidTwice(
  offered: readonly OfferedReading[],
  { observations }: State,
  moment: number,
  isCorrection: boolean,
): { readonly offered: readonly OfferedReading[]; readonly differ: readonly string[] } {
  if (isCorrection) return { offered, differ: [] };
  const differ: string[] = [];
  const joined = offered.map((one): OfferedReading => {
    if (one.fact !== 'soil.temperature30cmC') return one;
    const at = epochSeconds(moment - one.agoHours * 3600);
    const before = observations.findLast(({ fact, reading }) => fact === one.fact && reading.type === 'number');
    const both = before ? spanOfVisit(before, { fact: one.fact, reading: one.reading, at, source: 'said' }) : null;
    if (both === null || both.reading === one.reading) return one;
    differ.push(one.quote ?? '');
    return { ...one, reading: both.reading };
  });
  return { offered: joined, differ };
}
