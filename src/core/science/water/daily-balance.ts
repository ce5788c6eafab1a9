import type { TextureClass } from '../soil/texture-class.ts';
import { availableShareFromFieldCapacityShare } from '../soil/water-shares.ts';
import { deficitOfState, startState, stepWater, type WaterState } from './balance.ts';
import { type Cover, type SoilStore, soilStoreOf } from './soil-store.ts';

/** A soil that the field may have and what it lacks to field capacity at the start, mm, with its band. */
export interface SoilStart {
  readonly texture: TextureClass;
  readonly deficitMm: number;
  readonly lowMm: number;
  readonly highMm: number;
}

/** Rain with its band and reference evapotranspiration of a step, mm. */
export interface BandedFlow {
  /** ISO day at the field to which the step belongs. */
  readonly day: string;
  readonly rainMm: number;
  readonly rainLowMm: number;
  readonly rainHighMm: number;
  readonly referenceMm: number;
}

/** What the balance starts from. */
export interface BalanceInput {
  /** One soil, or every soil that may be; not empty. */
  readonly soils: readonly SoilStart[];
  /** Depth of soil looked at, 0.01 to 3 m. */
  readonly depthM: number;
  readonly cover: Cover;
  /** In order of time. */
  readonly flows: readonly BandedFlow[];
}

/** Water in the soil at the end of one day (mm over the depth looked at), with the band from rain, start and texture. */
export interface DayOfWater {
  /** ISO day at the field. */
  readonly day: string;
  readonly rainMm: number;
  /** Used by the crop or bare soil. */
  readonly etMm: number;
  /** Below field capacity; 0 at field capacity. */
  readonly deficitMm: number;
  readonly deficitLowMm: number;
  readonly deficitHighMm: number;
  /** Ran through that day. */
  readonly surplusMm: number;
  readonly surplusLowMm: number;
  readonly surplusHighMm: number;
  /** Water held as a share of that at field capacity, 0 to 100. */
  readonly fieldCapacityPercent: number;
  /** Water held above wilting point as a share of that at field capacity, 0 to 100. */
  readonly availableWaterPercent: number;
  /** Share of all pores filled at the end of the day, 0 to 100. */
  readonly saturationPercent: number;
  /** The same at most during the day: nothing of its surplus had run off yet. */
  readonly mostSaturationPercent: number;
}

/** A day followed along one line: one soil, one start, one rain. */
interface Line {
  readonly store: SoilStore;
  readonly rain: 'rainMm' | 'rainLowMm' | 'rainHighMm';
  state: WaterState;
}

/**
 * The soil water balance day by day: middle (mean over the soils that may be), and the band from the driest start with the
 * least rain to the wettest with the most. Throws SCIENCE_OUT_OF_RANGE for water that cannot be.
 */
export function balanceDays({ soils, depthM, cover, flows }: BalanceInput): DayOfWater[] {
  const stores = soils.map((soil) => [soil, soilStoreOf(soil.texture, depthM, cover)] as const);
  const lines = (rain: Line['rain'], from: 'deficitMm' | 'lowMm' | 'highMm') =>
    stores.map(([soil, store]): Line => ({ store, rain, state: startState(soil[from], store) }));
  const bundle = {
    middle: lines('rainMm', 'deficitMm'),
    wet: lines('rainHighMm', 'lowMm'),
    dry: lines('rainLowMm', 'highMm'),
  };
  return groupByDay(flows).map(([day, ofDay]) => {
    const middle = bundle.middle.map((line) => follow(line, ofDay));
    const wet = bundle.wet.map((line) => follow(line, ofDay));
    const dry = bundle.dry.map((line) => follow(line, ofDay));
    const all = [...middle, ...wet, ...dry];
    const mean = (of: (end: LineDay) => number) => middle.reduce((sum, end) => sum + of(end), 0) / middle.length;
    return {
      day,
      rainMm: ofDay.reduce((sum, { rainMm }) => sum + rainMm, 0),
      etMm: mean(({ usedMm }) => usedMm),
      deficitMm: mean(({ deficitMm }) => deficitMm),
      deficitLowMm: Math.min(...all.map(({ deficitMm }) => deficitMm)),
      deficitHighMm: Math.max(...all.map(({ deficitMm }) => deficitMm)),
      surplusMm: mean(({ surplusMm }) => surplusMm),
      surplusLowMm: Math.min(...all.map(({ surplusMm }) => surplusMm)),
      surplusHighMm: Math.max(...all.map(({ surplusMm }) => surplusMm)),
      fieldCapacityPercent: mean(fieldCapacityPercent),
      availableWaterPercent: mean((end) =>
        availableShareFromFieldCapacityShare(end.store.texture, fieldCapacityPercent(end)),
      ),
      saturationPercent: mean((end) => poresFilled(end, 0)),
      mostSaturationPercent: mean((end) => poresFilled(end, end.surplusMm)),
    };
  });
}

interface LineDay {
  readonly store: SoilStore;
  readonly usedMm: number;
  readonly surplusMm: number;
  readonly deficitMm: number;
}

function follow(line: Line, flows: readonly BandedFlow[]): LineDay {
  let usedMm = 0;
  let surplusMm = 0;
  for (const flow of flows) {
    const end = stepWater(line.state, { rainMm: flow[line.rain], referenceMm: flow.referenceMm }, line.store.drying);
    line.state = end.state;
    usedMm += end.usedMm;
    surplusMm += end.surplusMm;
  }
  return { store: line.store, usedMm, surplusMm, deficitMm: deficitOfState(line.state) };
}

function fieldCapacityPercent({ store, deficitMm }: LineDay): number {
  return (100 * Math.max(0, store.atCapacityMm - deficitMm)) / store.atCapacityMm;
}

function poresFilled({ store, deficitMm }: LineDay, extraMm: number): number {
  return (
    (100 * Math.min(store.atSaturationMm, Math.max(0, store.atCapacityMm - deficitMm) + extraMm)) / store.atSaturationMm
  );
}

function groupByDay(flows: readonly BandedFlow[]): [string, BandedFlow[]][] {
  const days = new Map<string, BandedFlow[]>();
  for (const flow of flows) {
    const ofDay = days.get(flow.day);
    if (ofDay) ofDay.push(flow);
    else days.set(flow.day, [flow]);
  }
  return [...days];
}
