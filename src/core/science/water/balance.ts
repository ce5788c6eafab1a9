import { inRange } from '../../units/in-range.ts';
import type { DryingLayer, SoilStore } from './soil-store.ts';

/** Water lacking to field capacity, mm: in the layer that dries and below it; the former below 0 where more is held. */
export interface WaterState {
  readonly upperMm: number;
  readonly lowerMm: number;
}

/** What a step brought and asked for, mm: rain, and reference evapotranspiration (below 0 where dew forms). */
export interface WaterFlow {
  readonly rainMm: number;
  readonly referenceMm: number;
}

/** The end of a step, mm: what lacks then, what crop or bare soil used, and what ran through to the drains. */
export interface WaterStepEnd {
  readonly state: WaterState;
  readonly usedMm: number;
  readonly surplusMm: number;
}

/** A deficit spread evenly over the depth, -3,000 to 3,000 mm; what is beyond field capacity counts to the layer that dries. */
export function startState(deficitMm: number, { dryingShare }: Pick<SoilStore, 'dryingShare'>): WaterState {
  const deficit = inRange('a soil moisture deficit', deficitMm, -3000, 3000, 'mm');
  if (deficit <= 0) return { upperMm: deficit, lowerMm: 0 };
  return { upperMm: deficit * dryingShare, lowerMm: deficit * (1 - dryingShare) };
}

/** Water lacking to field capacity in all, mm; 0 at field capacity and wetter. */
export function deficitOfState({ upperMm, lowerMm }: WaterState): number {
  return Math.max(0, upperMm + lowerMm);
}

/**
 * One step (an hour to a day) of the soil water balance of FAO-56, run-off, rise and irrigation left out: what is used by
 * eq. 81 (`Ks Kc ET0`) under a crop or eq. 71 (`Kr Kc max ET0`) of bare soil, the deficit by eq. 85 (77 for bare soil), what
 * drains by eq. 88. Rain wets from above. A step so dry that the deficit would pass the layer's total is taken in parts, which
 * keeps eq. 86: more rain never leaves a larger deficit. Rain 0 to 2,000 mm, reference evapotranspiration -5 to 30 mm.
 */
export function stepWater(state: WaterState, { rainMm, referenceMm }: WaterFlow, layer: DryingLayer): WaterStepEnd {
  inRange('a rain', rainMm, 0, 2000, 'mm');
  const asked = layer.coefficient * inRange('a reference evapotranspiration', referenceMm, -5, 30, 'mm');
  const parts = Math.max(1, Math.ceil(asked / (layer.totalMm - layer.readyMm)));
  let { upperMm, lowerMm } = state;
  let usedMm = 0;
  let surplusMm = 0;
  for (let part = 0; part < parts; part += 1) {
    const used = (asked / parts) * (asked > 0 ? shareGiven(upperMm, layer) : 1);
    const balance = upperMm + used - rainMm / parts;
    const through = Math.max(0, -balance);
    surplusMm += Math.max(0, through - lowerMm);
    lowerMm = Math.max(0, lowerMm - through);
    upperMm = Math.max(0, balance);
    usedMm += used;
  }
  return { state: { upperMm, lowerMm }, usedMm, surplusMm };
}

/** Share of what the air asks for that the layer gives, 0 to 1: Ks (FAO-56 eq. 84) under a crop, Kr (eq. 74) of bare soil. */
export function shareGiven(lostMm: number, { totalMm, readyMm }: Omit<DryingLayer, 'coefficient'>): number {
  return lostMm <= readyMm ? 1 : Math.max(0, (totalMm - lostMm) / (totalMm - readyMm));
}
