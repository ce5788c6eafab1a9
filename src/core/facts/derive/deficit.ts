import type { FeelClass } from '../../science/soil/feel-classes.ts';
import { feelGroups } from '../../science/soil/feel-groups.ts';
import { waterLacking } from '../../science/soil/feel-water.ts';
import { type TextureClass, textureClasses } from '../../science/soil/texture-class.ts';
import { soilWaterOfClass } from '../../science/soil/water-shares.ts';
import { type EpochSeconds, epochSeconds } from '../../units/brands.ts';
import { numberParameter } from '../../units/parameter.ts';
import type { FactContext } from '../context.ts';
import type { KnownChoice, KnownNumber } from '../types.ts';
import { asChoice, asNumber, earliest } from './derived.ts';

/** Water that the soil lacks to field capacity over the depth of `deficitDepthM`, mm; below 0 where it holds more. */
export interface Deficit {
  readonly lowMm: number;
  readonly highMm: number;
  /** When it was so. */
  readonly at: EpochSeconds;
  readonly goodUntil: EpochSeconds | null;
}

/**
 * Deficit from the water measured (Saxton & Rawls 2006 for the texture) or from the feel of the soil (USDA NRCS 1998 for its
 * group), over every texture that may be; all classes where none is known. Where both are there, the wetter counts. Null
 * without either.
 */
export function deficitOf(context: FactContext): Deficit | null {
  const texture = asChoice(context.fact('field.texture'));
  const textures = (texture?.possible ?? textureClasses) as readonly TextureClass[];
  const depthM = numberParameter(context.parameters, 'deficitDepthM');
  const measured = asNumber(context.fact('soil.fieldCapacityPercent'));
  const felt = asChoice(context.fact('soil.feel'));
  const deficits = [
    ...(measured === null ? [] : [deficitMeasured(measured, textures, depthM)]),
    ...(felt === null ? [] : [deficitFelt(felt, textures, depthM)]),
  ];
  const [first, second = first] = deficits;
  if (first === undefined || second === undefined) return null;
  return {
    lowMm: Math.min(first.lowMm, second.lowMm),
    highMm: Math.min(first.highMm, second.highMm),
    at: epochSeconds(Math.min(first.at, second.at)),
    goodUntil: earliest(first.goodUntil, second.goodUntil, texture?.goodUntil ?? null),
  };
}

function deficitMeasured(measured: KnownNumber, textures: readonly TextureClass[], depthM: number): Deficit {
  const corners = textures.flatMap((texture) => {
    const atCapacityMm = soilWaterOfClass(texture).fieldCapacity * depthM * 1000;
    return [measured.low, measured.high].map((percent) => (1 - percent / 100) * atCapacityMm);
  });
  return hull(corners, measured);
}

function deficitFelt(felt: KnownChoice, textures: readonly TextureClass[], depthM: number): Deficit {
  const groups = new Set(textures.map((texture) => feelGroups[texture]));
  const corners = [...groups].flatMap((group) =>
    (felt.possible as readonly FeelClass[]).flatMap((feel) =>
      waterLacking(group, feel, 'mm/m').map((lacking) => lacking * depthM),
    ),
  );
  return hull(corners, felt);
}

function hull(corners: readonly number[], { at, goodUntil }: KnownNumber | KnownChoice): Deficit {
  return { lowMm: Math.min(...corners), highMm: Math.max(...corners), at, goodUntil };
}
