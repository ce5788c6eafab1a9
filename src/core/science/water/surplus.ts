import { startState, stepWater, type WaterFlow } from './balance.ts';
import type { BalanceInput } from './daily-balance.ts';
import { type SoilStore, soilStoreOf } from './soil-store.ts';

/** The balance of every soil that may be, with one share by which rain may be off either way. */
export interface SurplusInput extends Omit<BalanceInput, 'flows'> {
  readonly flows: readonly WaterFlow[];
  readonly rainBandShare: number;
}

/**
 * Water that runs through the soil over all flows, mm: at least (driest start, least rain, the soil that keeps on using
 * water longest) and at most (the opposites), over every soil that may be.
 */
export function greatestSurplus(input: SurplusInput): { readonly lowMm: number; readonly highMm: number } {
  const { soils, depthM, cover, flows, rainBandShare } = input;
  const stores = soils
    .map(({ texture }) => soilStoreOf(texture, depthM, cover))
    .sort((one, other) => one.drying.totalMm - other.drying.totalMm);
  const [least, most] = [stores[0]!, stores.at(-1)!];
  const driest = Math.max(...soils.map(({ highMm }) => highMm));
  const wettest = Math.min(...soils.map(({ lowMm }) => lowMm));
  return {
    lowMm: through(driest, most, flows, Math.max(0, 1 - rainBandShare)),
    highMm: through(wettest, least, flows, 1 + rainBandShare),
  };
}

function through(deficitMm: number, store: SoilStore, flows: readonly WaterFlow[], rainShare: number): number {
  let state = startState(deficitMm, store);
  let surplusMm = 0;
  for (const { rainMm, referenceMm } of flows) {
    const end = stepWater(state, { rainMm: rainMm * rainShare, referenceMm }, store.drying);
    state = end.state;
    surplusMm += end.surplusMm;
  }
  return surplusMm;
}
