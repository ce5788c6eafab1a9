import { inRange } from '../../units/in-range.ts';

/** Water held by a soil at field capacity and wilting point, m3/m3. */
export interface HeldWater {
  readonly fieldCapacity: number;
  readonly wiltingPoint: number;
}

/** Total available water in mm in a root zone of 0 to 5 m: `1000 (FC - WP) Zr` (FAO-56 eq. 82). */
export function totalAvailableWater({ fieldCapacity, wiltingPoint }: HeldWater, rootDepthM: number): number {
  inRange('a field capacity', fieldCapacity, 0, 1, 'm3/m3');
  inRange('a wilting point not above field capacity', wiltingPoint, 0, fieldCapacity, 'm3/m3');
  return 1000 * (fieldCapacity - wiltingPoint) * inRange('a root depth', rootDepthM, 0, 5, 'm');
}

/** Share p of the available water that a crop takes up without stress, at a use of so many mm/day (FAO-56 Table 22 footnote, 0.1 to 0.8). */
export function easyShare(tableShare: number, cropUseMmPerDay: number): number {
  inRange('a share p', tableShare, 0.1, 0.8, '');
  inRange('a water use', cropUseMmPerDay, 0, 20, 'mm/day');
  return Math.min(0.8, Math.max(0.1, tableShare + 0.04 * (5 - cropUseMmPerDay)));
}

/** Readily available water in mm: share p (0 to 1) of the total available water (FAO-56 eq. 83). */
export function readilyAvailableWater(totalMm: number, share: number): number {
  return inRange('a share p', share, 0, 1, '') * inRange('an available water', totalMm, 0, 5000, 'mm');
}

/** Water that bare soil can lose from its top 0.05 to 0.2 m, mm: `1000 (FC - 0.5 WP) Ze` (FAO-56 eq. 73). */
export function totalEvaporableWater({ fieldCapacity, wiltingPoint }: HeldWater, depthM: number): number {
  inRange('a field capacity', fieldCapacity, 0, 1, 'm3/m3');
  inRange('a wilting point not above field capacity', wiltingPoint, 0, fieldCapacity, 'm3/m3');
  return 1000 * (fieldCapacity - 0.5 * wiltingPoint) * inRange('an evaporating depth', depthM, 0.05, 0.2, 'm');
}
