import { type KilometresPerHour, kilometresPerHour } from '../../units/brands.ts';
import { inRange } from '../../units/in-range.ts';
import { type AboveCanopy, canopyWindShare } from './over-canopy.ts';
import { grassProfile } from './over-grass.ts';

/**
 * Wind at boom height in km/h from the wind at 10 m: the way this program uses. By the logarithmic profile over the crop, since
 * it knows how tall the crop is and keeps its meaning half a metre above it, where eq. 47 was never meant to go. With a boom
 * half a metre above the crop it gives the stronger wind of the two ways up to about 0.12 m of crop, the weaker one above.
 * Neither knows the shelter of a hedge: the wind measured at the boom outranks both.
 */
export function windAtBoom(wind10m: KilometresPerHour, place: AboveCanopy): KilometresPerHour {
  return kilometresPerHour(wind(wind10m) * canopyWindShare(place));
}

/**
 * The other published way, for comparison: FAO-56 eq. 47 over short grass carried down from 10 m to the boom (0.2 m to 10 m
 * above the ground). At 0.5 m it gives half the wind at 10 m, the rule of thumb of UK guidance.
 */
export function windAtBoomOverGrass(wind10m: KilometresPerHour, boomHeightM: number): KilometresPerHour {
  inRange('a boom height', boomHeightM, 0.2, 10, 'm');
  return kilometresPerHour((wind(wind10m) * grassProfile(boomHeightM)) / grassProfile(10));
}

function wind(kmh: number): number {
  return inRange('a wind at 10 m', kmh, 0, 450, 'km/h');
}
