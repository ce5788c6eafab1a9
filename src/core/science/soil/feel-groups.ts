import type { TextureClass } from './texture-class.ts';

/** Texture group of the USDA NRCS feel-and-appearance guide (1998). */
export type FeelGroup = 'coarse' | 'moderately-coarse' | 'medium' | 'fine';

/**
 * The group of each texture class. The guide names fine sand and loamy fine sand; sandy loam and fine sandy loam; sandy clay
 * loam, loam and silt loam; clay, clay loam and silty clay loam. Silt, sandy clay and silty clay, which it does not name, go
 * with their nearest neighbours.
 */
export const feelGroups: Readonly<Record<TextureClass, FeelGroup>> = {
  sand: 'coarse',
  'loamy-sand': 'coarse',
  'sandy-loam': 'moderately-coarse',
  loam: 'medium',
  'silt-loam': 'medium',
  silt: 'medium',
  'sandy-clay-loam': 'medium',
  'clay-loam': 'fine',
  'silty-clay-loam': 'fine',
  'sandy-clay': 'fine',
  'silty-clay': 'fine',
  clay: 'fine',
};

/** Available water capacity of each group, lowest and highest, inches of water per foot of soil (USDA NRCS 1998). */
export const availableWaterInPerFt: Readonly<Record<FeelGroup, readonly [number, number]>> = {
  coarse: [0.6, 1.2],
  'moderately-coarse': [1.3, 1.7],
  medium: [1.5, 2.1],
  fine: [1.6, 2.4],
};
