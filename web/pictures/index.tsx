import type { ComponentType } from 'preact';
import type { PictureId } from '../../src/core/rules/pack/picture-ids.ts';
import { BoomHeight, Inversion } from './air.tsx';
import { FeelByHand } from './feel-by-hand.tsx';
import { Slope, Thermometer, WaterDistance } from './field.tsx';
import { Quadrat, Tillers, TrueLeaves } from './plants.tsx';
import { DrainAndMole, SoilThread, SoilWater } from './soil-below.tsx';
import { SoilSurface } from './soil-surface.tsx';
import { TextureRoll } from './texture-roll.tsx';

/** The drawing of every id that a question or a term may name. */
export const pictures: Readonly<Record<PictureId, ComponentType>> = {
  'texture-roll': TextureRoll,
  'feel-by-hand': FeelByHand,
  'soil-surface': SoilSurface,
  'thermometer-30cm': Thermometer,
  'true-leaves': TrueLeaves,
  tillers: Tillers,
  quadrat: Quadrat,
  slope: Slope,
  'water-distance': WaterDistance,
  'soil-water': SoilWater,
  'soil-thread': SoilThread,
  'drain-and-mole': DrainAndMole,
  inversion: Inversion,
  'boom-height': BoomHeight,
};

/** The drawing of an id; nothing for one that a newer server names. */
export function Picture({ id }: { readonly id: string }) {
  const Known = (pictures as Readonly<Record<string, ComponentType | undefined>>)[id];
  return Known ? <Known /> : null;
}
