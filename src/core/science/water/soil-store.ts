import { inRange } from '../../units/in-range.ts';
import type { TextureClass } from '../soil/texture-class.ts';
import { soilWaterOfClass } from '../soil/water-shares.ts';
import { readilyAvailableWater, totalAvailableWater, totalEvaporableWater } from './root-zone.ts';

/** What takes water from the soil: a crop by its coefficient on reference evapotranspiration (FAO-56 eq. 58), or bare soil. */
export type Cover = { readonly kind: 'crop'; readonly coefficient: number } | { readonly kind: 'bare' };

/** A layer that gives up water to the air: easily at first, then ever less, in mm below field capacity. */
export interface DryingLayer {
  /** Lost where nothing more is given up: TAW (eq. 82) under a crop, TEW (eq. 73) of bare soil. */
  readonly totalMm: number;
  /** Lost before it gives up less than the air asks for: RAW (eq. 83), or REW. */
  readonly readyMm: number;
  /** Coefficient on reference evapotranspiration while it gives freely. */
  readonly coefficient: number;
}

/** Water that a depth of soil can hold, mm, and the layer of it that dries. */
export interface SoilStore {
  readonly texture: TextureClass;
  readonly atCapacityMm: number;
  readonly atSaturationMm: number;
  readonly drying: DryingLayer;
  /** Share of a deficit spread evenly over the depth that lies in the drying layer, 0 to 1. */
  readonly dryingShare: number;
}

/** Share p that rapeseed takes up without stress (FAO-56 Table 22), kept the same all season as the paper allows. */
const easyShareOfRape = 0.6;
/** Depth of the layer of bare soil that dries by evaporation, m: the paper's 0.10 to 0.15 m (FAO-56 eq. 73), its thinner end. */
const evaporatingDepthM = 0.1;
/** Greatest coefficient of a wet bare surface (FAO-56 eq. 72 with a crop of no height). */
const wetSurfaceCoefficient = 1.2;
/** Readily evaporable water, mm, middle of the range of each class (FAO-56 Table 19, from memory; neighbours where it names none). */
const readilyEvaporableMm: Readonly<Record<TextureClass, number>> = {
  sand: 4.5,
  'loamy-sand': 6,
  'sandy-loam': 8,
  loam: 9,
  'silt-loam': 9.5,
  silt: 9.5,
  'sandy-clay-loam': 9,
  'clay-loam': 9.5,
  'silty-clay-loam': 9.5,
  'sandy-clay': 10,
  'silty-clay': 10,
  clay: 10,
};

/** Water held by 0.01 to 3 m of the typical soil of a texture class (Saxton & Rawls 2006), under a crop of rape or bare. */
export function soilStoreOf(texture: TextureClass, depthM: number, cover: Cover): SoilStore {
  const depth = inRange('a depth of soil', depthM, 0.01, 3, 'm');
  const soil = soilWaterOfClass(texture);
  return {
    texture,
    atCapacityMm: 1000 * soil.fieldCapacity * depth,
    atSaturationMm: 1000 * soil.saturation * depth,
    drying: cover.kind === 'bare' ? bareLayer(texture, soil) : rootedLayer(soil, depth, cover.coefficient),
    dryingShare: cover.kind === 'bare' ? Math.min(1, evaporatingDepthM / depth) : 1,
  };
}

type Held = Parameters<typeof totalAvailableWater>[0];

function rootedLayer(soil: Held, depthM: number, coefficient: number): DryingLayer {
  const totalMm = totalAvailableWater(soil, depthM);
  inRange('a crop coefficient', coefficient, 0, 1.5, '');
  return { totalMm, readyMm: readilyAvailableWater(totalMm, easyShareOfRape), coefficient };
}

function bareLayer(texture: TextureClass, soil: Held): DryingLayer {
  const totalMm = totalEvaporableWater(soil, evaporatingDepthM);
  return { totalMm, readyMm: readilyEvaporableMm[texture], coefficient: wetSurfaceCoefficient };
}
