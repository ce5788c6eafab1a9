import { availablePercentOfFeel, type FeelClass } from '../../science/soil/feel-classes.ts';
import { feelGroups } from '../../science/soil/feel-groups.ts';
import { waterLacking } from '../../science/soil/feel-water.ts';
import { type TextureClass, textureClasses } from '../../science/soil/texture-class.ts';
import { soilWaterOfClass } from '../../science/soil/water-shares.ts';
import type { SoilStart } from '../../science/water/daily-balance.ts';
import { totalAvailableWater } from '../../science/water/root-zone.ts';
import { type EpochSeconds, epochSeconds } from '../../units/brands.ts';
import { numberParameter } from '../../units/parameter.ts';
import type { FactContext } from '../context.ts';
import type { KnownChoice, KnownNumber } from '../types.ts';
import { asChoice, asNumber, earliest } from './derived.ts';

/** Water that the soil lacks to field capacity over the depth of `deficitDepthM`, mm; below 0 where it holds more. */
export interface Deficit {
  /** Over every soil that may be. */
  readonly lowMm: number;
  readonly highMm: number;
  readonly soils: readonly SoilStart[];
  /** When it was so. */
  readonly at: EpochSeconds;
  readonly goodUntil: EpochSeconds | null;
}

/**
 * Deficit from the water measured (Saxton & Rawls 2006 for the texture) or from the feel of the soil (USDA NRCS 1998 for its
 * group; its middle by Saxton & Rawls), for every texture that may be; all classes where none is known. Where both are
 * there, the wetter counts. Null without either.
 */
export function deficitOf(context: Pick<FactContext, 'fact' | 'parameters'>): Deficit | null {
  const texture = asChoice(context.fact('field.texture'));
  const textures = (texture?.possible ?? textureClasses) as readonly TextureClass[];
  const depthM = numberParameter(context.parameters, 'deficitDepthM');
  const measured = asNumber(context.fact('soil.fieldCapacityPercent'));
  const felt = asChoice(context.fact('soil.feel'));
  const origins = [measured, felt].filter((fact) => fact !== null);
  if (origins.length === 0) return null;
  const soils = textures.map((one) =>
    wetter([
      ...(measured === null ? [] : [deficitMeasured(measured, one, depthM)]),
      ...(felt === null ? [] : [deficitFelt(felt, one, depthM)]),
    ]),
  );
  return {
    lowMm: Math.min(...soils.map(({ lowMm }) => lowMm)),
    highMm: Math.max(...soils.map(({ highMm }) => highMm)),
    soils,
    at: epochSeconds(Math.min(...origins.map(({ at }) => at))),
    goodUntil: earliest(...origins.map(({ goodUntil }) => goodUntil), texture?.goodUntil ?? null),
  };
}

function wetter(starts: readonly SoilStart[]): SoilStart {
  return starts.reduce((first, second) => ({
    texture: first.texture,
    deficitMm: Math.min(first.deficitMm, second.deficitMm),
    lowMm: Math.min(first.lowMm, second.lowMm),
    highMm: Math.min(first.highMm, second.highMm),
  }));
}

function deficitMeasured({ low, value, high }: KnownNumber, texture: TextureClass, depthM: number): SoilStart {
  const atCapacityMm = soilWaterOfClass(texture).fieldCapacity * depthM * 1000;
  const lacking = (percent: number) => (1 - percent / 100) * atCapacityMm;
  return { texture, deficitMm: lacking(value), lowMm: lacking(high), highMm: lacking(low) };
}

function deficitFelt({ possible }: KnownChoice, texture: TextureClass, depthM: number): SoilStart {
  const feels = possible as readonly FeelClass[];
  const corners = feels.flatMap((feel) => waterLacking(feelGroups[texture], feel, 'mm/m').map((most) => most * depthM));
  const lowMm = Math.min(...corners);
  const highMm = Math.max(...corners);
  const availableMm = totalAvailableWater(soilWaterOfClass(texture), depthM);
  const middles = feels.map((feel) => (1 - middleShare(feel)) * availableMm);
  const middle = middles.reduce((sum, one) => sum + one, 0) / middles.length;
  return { texture, deficitMm: Math.min(highMm, Math.max(lowMm, middle)), lowMm, highMm };
}

function middleShare(feel: FeelClass): number {
  const [low, high] = availablePercentOfFeel[feel];
  return (low + Math.min(100, high)) / 200;
}
