import { inRange } from '../../units/in-range.ts';

/**
 * Share of the wind at 2 m in the wind at a height of 0.2 to 100 m over short grass: `ln(67.8 z - 5.42) / 4.87` (FAO-56
 * eq. 47 turned round; Annex 2, Table 2.9). Derived for 0.12 m of grass; below 2 m it is carried beyond its purpose.
 */
export function grassProfile(heightM: number): number {
  return Math.log(67.8 * inRange('a height above the ground', heightM, 0.2, 100, 'm') - 5.42) / 4.87;
}

/** Wind at 2 m in the unit of the wind given at a height, over short grass (FAO-56 eq. 47). */
export function windAt2m(wind: number, heightM: number): number {
  return inRange('a wind', wind, 0, Number.MAX_VALUE, '') / grassProfile(heightM);
}
