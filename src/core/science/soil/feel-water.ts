import { convert } from '../../units/convert.ts';
import { multiply } from '../../units/round.ts';
import { availablePercentOfFeel, type FeelClass } from './feel-classes.ts';
import { availableWaterInPerFt, type FeelGroup } from './feel-groups.ts';

/** Units in which the water of a depth of soil is told. */
export type WaterPerDepth = 'mm/m' | 'in/ft';

/** Available water capacity of a texture group, lowest and highest (USDA NRCS 1998). */
export function availableWaterOf(group: FeelGroup, unit: WaterPerDepth): readonly [number, number] {
  const [low, high] = availableWaterInPerFt[group];
  return [convert(low, 'in/ft', unit), convert(high, 'in/ft', unit)];
}

/**
 * Water that a soil lacks to field capacity, most and least, from its texture group and feel. As the guide's table is made:
 * (1 - lower share) of the greatest capacity down to (1 - upper share) of the least (own reading; it gives every printed row
 * to 0.1 in/ft). Nothing lacks at capacity or above.
 */
export function waterLacking(group: FeelGroup, feel: FeelClass, unit: WaterPerDepth): readonly [number, number] {
  const [least, greatest] = availableWaterOf(group, unit);
  const [lower, upper] = availablePercentOfFeel[feel];
  return [multiply(greatest, shareLacking(lower)), multiply(least, shareLacking(upper))];
}

function shareLacking(availablePercent: number): number {
  return Math.max(0, 100 - availablePercent) / 100;
}
