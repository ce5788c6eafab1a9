import type { LiveReading } from './observed-known.ts';
import type { KnownSigns } from './types.ts';

interface Standing {
  readonly isThere: boolean;
  readonly from: LiveReading;
}

/**
 * Signs from still-good readings, oldest first: a named sign stays until a later reading says it is gone, a complete list
 * sets every sign, and what nobody spoke of may be there. Good until the first of the readings still relied on ages.
 * Wants one reading at least.
 */
export function mergeSigns(live: readonly LiveReading[], choices: readonly string[]): KnownSigns {
  const standing = new Map<string, Standing>();
  for (const from of live) {
    const { reading } = from;
    if (reading.type !== 'signs') continue;
    const gone = reading.complete ? choices : reading.absent;
    for (const sign of gone) standing.set(sign, { isThere: false, from });
    for (const sign of reading.present) standing.set(sign, { isThere: true, from });
  }
  const relied = [...standing.values()].map(({ from }) => from);
  const newest = live.findLast((reading) => relied.includes(reading)) ?? live.at(-1)!;
  const firstToAge = relied.reduce((first, one) => (one.goodUntil < first.goodUntil ? one : first), newest);
  return {
    known: true,
    type: 'signs',
    present: choices.filter((sign) => standing.get(sign)?.isThere === true),
    possible: choices.filter((sign) => standing.get(sign)?.isThere !== false),
    source: newest.source,
    at: newest.at,
    goodUntil: firstToAge.goodUntil,
  };
}
