import { isWorkedOut } from '../depth-reading.ts';
import type { FactObservation } from '../resolved.ts';

/** Readings nearer to each other in time than this are of one visit, s. */
const visitSeconds = 3600;

/**
 * Readings of one number at 30 cm, oldest first, those of one visit joined: where they disagree, the band spans them all and none
 * is preferred. Readings worked out from another depth stay apart.
 */
export function joinVisits(readings: readonly FactObservation[]): FactObservation[] {
  const joined: FactObservation[] = [];
  for (const one of readings) {
    const last = joined.at(-1);
    const both = last ? spanOfVisit(last, one) : null;
    if (both === null) joined.push(one);
    else joined[joined.length - 1] = both;
  }
  return joined;
}

/**
 * Two readings of one number at 30 cm within an hour of each other as one that spans both, with the later's moment; the later where
 * they agree. Null where they are of two visits, or one was worked out from another depth.
 */
export function spanOfVisit(a: FactObservation, b: FactObservation): FactObservation | null {
  return Math.abs(b.at - a.at) <= visitSeconds ? spanOf(a, b) : null;
}

function spanOf(a: FactObservation, b: FactObservation): FactObservation | null {
  if (a.reading.type !== 'number' || b.reading.type !== 'number') return null;
  if (isWorkedOut(a.reading) || isWorkedOut(b.reading)) return null;
  const low = Math.min(a.reading.low ?? a.reading.value, b.reading.low ?? b.reading.value);
  const high = Math.max(a.reading.high ?? a.reading.value, b.reading.high ?? b.reading.value);
  if (low === high) return b;
  return { ...b, reading: { type: 'number', value: Number(((low + high) / 2).toPrecision(12)), low, high } };
}
