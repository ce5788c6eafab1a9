import { referenceEvapotranspirationOfDay } from '../../science/evapotranspiration/day.ts';
import { dayOfYear } from '../../science/soil/temperature/air.ts';
import type { TextureClass } from '../../science/soil/texture-class.ts';
import { deficitOfState, stepWater, type WaterFlow, type WaterState } from '../../science/water/balance.ts';
import type { BalanceInput } from '../../science/water/daily-balance.ts';
import { type SoilStore, soilStoreOf } from '../../science/water/soil-store.ts';
import { greatestSurplus } from '../../science/water/surplus.ts';
import { metresPerSecond } from '../../units/brands.ts';
import type { Banded } from '../../weather/banded.ts';
import type { RecordPlace, WeatherDay } from './types.ts';

/** The soil whose water is followed: every texture that it may have. */
export interface FollowedSoil extends Pick<BalanceInput, 'depthM' | 'cover'> {
  readonly textures: readonly TextureClass[];
}

/** Water in the soil as a day begins, over every soil that may be and every start that may have been. */
export interface WaterToday {
  /** Water held, with what ran through on the day before, as a share of that at field capacity, %. */
  readonly capacityPercent: Banded;
  /** What ran through to the drains on the day before, mm, at least and at most. */
  readonly throughLowMm: number;
  readonly throughHighMm: number;
}

/** Follows the water of a soil day by day. */
export interface WaterFollower {
  readonly today: () => WaterToday;
  /** Least and most that runs through over days to come, mm. */
  readonly surplusOver: (flows: readonly WaterFlow[]) => { readonly lowMm: number; readonly highMm: number };
  /** Takes in a day; null for one whose rain or evapotranspiration is not known, after which anything may be. */
  readonly takeIn: (flow: WaterFlow | null) => void;
}

interface Line {
  readonly store: SoilStore;
  readonly startMm: number;
  state: WaterState;
  throughMm: number;
}

/** Begins without knowing: from a soil at field capacity and from one that gives no more water. Rain brings both together. */
export function waterFollower({ textures, depthM, cover }: FollowedSoil): WaterFollower {
  const lines = textures.flatMap((texture) => {
    const store = soilStoreOf(texture, depthM, cover);
    return [0, store.drying.totalMm].map((startMm): Line => ({ store, startMm, ...begin(startMm) }));
  });
  const shareOf = ({ store, state, throughMm }: Line) => {
    const held = Math.min(store.atSaturationMm, store.atCapacityMm - deficitOfState(state) + throughMm);
    return (100 * held) / store.atCapacityMm;
  };
  return {
    today: () => {
      const shares = lines.map(shareOf);
      const through = lines.map(({ throughMm }) => throughMm);
      const value = shares.reduce((sum, one) => sum + one, 0) / shares.length;
      return {
        capacityPercent: { value, low: Math.min(...shares), high: Math.max(...shares) },
        throughLowMm: Math.min(...through),
        throughHighMm: Math.max(...through),
      };
    },
    surplusOver: (flows) => {
      const soils = lines.map(({ store, state }) => {
        const deficitMm = deficitOfState(state);
        return { texture: store.texture, deficitMm, lowMm: deficitMm, highMm: deficitMm };
      });
      return greatestSurplus({ soils, depthM, cover, flows, rainBandShare: 0 });
    },
    takeIn: (flow) => {
      for (const line of lines) {
        if (flow === null) Object.assign(line, begin(line.startMm));
        else {
          const end = stepWater(line.state, flow, line.store.drying);
          line.state = end.state;
          line.throughMm = end.surplusMm;
        }
      }
    },
  };
}

function begin(deficitMm: number): Pick<Line, 'state' | 'throughMm'> {
  return { state: { upperMm: deficitMm, lowerMm: 0 }, throughMm: 0 };
}

/** Rain and reference evapotranspiration of a day, mm; null where either is neither recorded nor to be worked out. */
export function flowOf(day: WeatherDay, place: RecordPlace): WaterFlow | null {
  const referenceMm = day.referenceMm ?? workedOut(day, place);
  return day.rainMm === null || referenceMm === null ? null : { rainMm: day.rainMm, referenceMm };
}

/** By FAO-56 with what a record of the air alone allows, within 65 degrees of the equator; null without the air's range. */
function workedOut({ iso, airMinC, airMaxC, windKmh }: WeatherDay, place: RecordPlace): number | null {
  if (airMinC === null || airMaxC === null || Math.abs(place.latitude) > 65) return null;
  return referenceEvapotranspirationOfDay({
    latitude: place.latitude,
    elevationM: place.elevationM,
    dayOfYear: dayOfYear(iso),
    highestC: Math.max(airMinC, airMaxC),
    lowestC: Math.min(airMinC, airMaxC),
    humidity: { unknown: true },
    wind: windKmh === null ? null : metresPerSecond(windKmh / 3.6),
    windHeightM: 10,
    sun: { unknown: 'inland' },
  });
}
