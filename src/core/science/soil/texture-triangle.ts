import { inRange } from '../../units/in-range.ts';
import type { SandAndClay, TextureClass } from './texture-class.ts';

/**
 * The USDA texture class of a soil, from its sand and clay (percent of the mineral part, together at most 100), by the class
 * limits of the USDA Soil Survey Manual (Handbook 18, ch. 3). Every soil falls into exactly one class.
 */
export function textureClassOf({ sandPercent: sand, clayPercent: clay }: SandAndClay): TextureClass {
  inRange('a sand content', sand, 0, 100, '%');
  inRange('a clay content', clay, 0, 100, '%');
  inRange('sand and clay together', sand + clay, 0, 100, '%');
  const silt = 100 - sand - clay;
  return clay >= 27 ? heavyClass(sand, silt, clay) : lightClass(sand, silt, clay);
}

function heavyClass(sand: number, silt: number, clay: number): TextureClass {
  if (sand > 45) return clay >= 35 ? 'sandy-clay' : 'sandy-clay-loam';
  if (clay >= 40) return silt >= 40 ? 'silty-clay' : 'clay';
  return sand <= 20 ? 'silty-clay-loam' : 'clay-loam';
}

function lightClass(sand: number, silt: number, clay: number): TextureClass {
  if (silt + 1.5 * clay < 15) return 'sand';
  if (silt + 2 * clay < 30) return 'loamy-sand';
  if (silt >= 80 && clay < 12) return 'silt';
  if (silt >= 50) return 'silt-loam';
  if (clay >= 20 && silt < 28) return 'sandy-clay-loam';
  return clay >= 7 && sand <= 52 ? 'loam' : 'sandy-loam';
}
