/** How the soil feels in the hand: the classes of the USDA NRCS guide (1998), and saturated, which lies beyond it. */
export type FeelClass = 'dry' | 'slightly-moist' | 'moist' | 'wet' | 'at-capacity' | 'saturated';

/**
 * Share of the available water of each class, lowest and highest percent (USDA NRCS 1998; good to about 5 % with practice).
 * Saturated is wetter than field capacity: the guide stops at 100, so it has no upper end.
 */
export const availablePercentOfFeel: Readonly<Record<FeelClass, readonly [number, number]>> = {
  dry: [0, 25],
  'slightly-moist': [25, 50],
  moist: [50, 75],
  wet: [75, 100],
  'at-capacity': [100, 100],
  saturated: [100, Number.POSITIVE_INFINITY],
};
