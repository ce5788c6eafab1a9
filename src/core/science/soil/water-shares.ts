import { inRange } from '../../units/in-range.ts';
import { estimateSoilWater, type SoilWater } from './saxton-rawls.ts';
import { classCentres, type TextureClass } from './texture-class.ts';

/** Organic matter of the typical soils, percent (Saxton & Rawls 2006, Table 3). */
const typicalOrganicMatterPercent = 2.5;

/** Water held by the typical soil of a texture class with 2.5 % organic matter (Saxton & Rawls 2006, Table 3). */
export function soilWaterOfClass(texture: TextureClass): SoilWater {
  return estimateSoilWater({ ...classCentres[texture], organicMatterPercent: typicalOrganicMatterPercent });
}

/**
 * Share of the available water in percent, from the water held as a share of that at field capacity (0 to 250 %), for the
 * typical soil of a class (Saxton & Rawls 2006): 0 at wilting point and below, 100 at field capacity, above 100 wetter. Of the
 * same 80 % of field capacity, 31 % of the available water is left in clay and 75 % in silt, so it is for display only.
 */
export function availableShareFromFieldCapacityShare(texture: TextureClass, fieldCapacityPercent: number): number {
  inRange('a share of field capacity', fieldCapacityPercent, 0, 250, '%');
  const { wiltingPoint, fieldCapacity } = soilWaterOfClass(texture);
  const available = (fieldCapacityPercent / 100) * fieldCapacity - wiltingPoint;
  return Math.max(0, (100 * available) / (fieldCapacity - wiltingPoint));
}

/** The inverse: share of field capacity in percent from the share of available water (0 to 250 %) of a texture class. */
export function fieldCapacityShareFromAvailableShare(texture: TextureClass, availablePercent: number): number {
  inRange('a share of available water', availablePercent, 0, 250, '%');
  const { wiltingPoint, fieldCapacity } = soilWaterOfClass(texture);
  const held = wiltingPoint + (availablePercent / 100) * (fieldCapacity - wiltingPoint);
  return (100 * held) / fieldCapacity;
}
