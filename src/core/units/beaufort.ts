import { inRange } from './in-range.ts';

/** One force of the Beaufort scale: its words and its range of mean wind at 10 m above open ground, km/h. */
export interface BeaufortForce {
  readonly force: number;
  readonly words: string;
  /** Lowest and highest whole km/h that the scale prints; the highest force has no end. */
  readonly at10mKmh: readonly [number, number];
}

/** The Beaufort scale of wind force (World Meteorological Organization; whole km/h as printed). */
export const beaufortScale: readonly BeaufortForce[] = [
  { force: 0, words: 'calm', at10mKmh: [0, 1] },
  { force: 1, words: 'light air', at10mKmh: [1, 5] },
  { force: 2, words: 'light breeze', at10mKmh: [6, 11] },
  { force: 3, words: 'gentle breeze', at10mKmh: [12, 19] },
  { force: 4, words: 'moderate breeze', at10mKmh: [20, 28] },
  { force: 5, words: 'fresh breeze', at10mKmh: [29, 38] },
  { force: 6, words: 'strong breeze', at10mKmh: [39, 49] },
  { force: 7, words: 'near gale', at10mKmh: [50, 61] },
  { force: 8, words: 'gale', at10mKmh: [62, 74] },
  { force: 9, words: 'strong gale', at10mKmh: [75, 88] },
  { force: 10, words: 'storm', at10mKmh: [89, 102] },
  { force: 11, words: 'violent storm', at10mKmh: [103, 117] },
  { force: 12, words: 'hurricane', at10mKmh: [118, Number.POSITIVE_INFINITY] },
];

/** Wind at spray height for forces 0 to 4, km/h (UK Code of practice for using plant protection products, wind table). */
const atBoomKmh: readonly (readonly [number, number])[] = [
  [0, 2],
  [2, 3.2],
  [3.2, 6.5],
  [6.5, 9.6],
  [9.6, 14.5],
];

/** The row of the scale for a whole force from 0 to 12. Throws SCIENCE_OUT_OF_RANGE otherwise. */
export function beaufort(force: number): BeaufortForce {
  return beaufortScale[wholeForce(force, 12)]!;
}

/** Range of wind at boom height in km/h for a whole force from 0 to 4, as the UK Code prints it; it prints no higher force. */
export function boomWindOfForce(force: number): readonly [number, number] {
  return atBoomKmh[wholeForce(force, 4)]!;
}

/** The force of a mean wind at 10 m in km/h (0 or more), rounded to whole km/h as the scale is printed. */
export function forceOfWind10m(kmh: number): BeaufortForce {
  const whole = Math.round(inRange('a wind', kmh, 0, Number.MAX_VALUE, 'km/h'));
  return beaufortScale.findLast(({ at10mKmh }) => whole >= at10mKmh[0])!;
}

function wholeForce(force: number, highest: number): number {
  return inRange('a whole Beaufort force', Number.isInteger(force) ? force : Number.NaN, 0, highest, '');
}
