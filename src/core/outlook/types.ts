import type { FactId } from '../facts/registry/index.ts';
import type { Resolved, Unknown } from '../facts/types.ts';
import type { Authority, Effect, Lifts } from '../rules/types.ts';
import type { SoilFallThrough, SoilTemperatureDay } from '../science/soil/temperature/types.ts';
import type { DayOfWater } from '../science/water/daily-balance.ts';
import type { EpochSeconds } from '../units/brands.ts';

/**
 * What an hour ahead comes to. `clear-if`: nothing blocks as long as what was observed still holds then, which must be looked
 * at again. `beyond-forecast`: the forecast does not reach what the rules need. A future hour never says spray today.
 */
export type HourState = 'clear' | 'clear-if' | 'blocked' | 'beyond-forecast';

/** A rule that blocks an hour, and what lifts it. */
export interface HourBlock {
  readonly rule: string;
  readonly effect: Exclude<Effect, 'advise'>;
  readonly authority: Authority;
  readonly lifts: Lifts;
}

/** One forecast hour, named by the stamp at which it begins. */
export interface HourOutlook {
  readonly at: EpochSeconds;
  readonly state: HourState;
  /** Met stops and holds that weather of that hour lifts. */
  readonly hourBlocks: readonly HourBlock[];
  /** Met stops and holds that days, the season or a person lift. */
  readonly dayBlocks: readonly HourBlock[];
  /** Facts that a person observed and that will be too old by then: look again. */
  readonly lookAgain: readonly FactId[];
  /** Day-lifted stops and holds met by what was observed, which must have gone by then ("clear if the cracks have closed"). */
  readonly ifLifted: readonly HourBlock[];
  /** Facts that could not be told for that hour and that could still block it: to be looked at or measured then. */
  readonly unknown: readonly FactId[];
  /** Ids of the advice that is met in that hour, for example `dark`. */
  readonly advice: readonly string[];
  /**
   * Chance that no hour-lifted rule blocks, 0 to 1, from bands or ensemble members; what only eyes can settle is listed above
   * and not counted. Null where the forecast gives none.
   */
  readonly sureness: number | null;
}

/**
 * Consecutive hours in which nothing blocks; `clear-if` where any of them is. Where what was observed ages within them there are
 * two windows, the first ended by `look-again`; the shortest useful length is asked of both together.
 */
export interface Window {
  readonly from: EpochSeconds;
  /** End of the last hour. */
  readonly until: EpochSeconds;
  readonly hours: number;
  readonly state: 'clear' | 'clear-if';
  /** What has to be looked at again for it to hold. */
  readonly lookAgain: readonly FactId[];
  /** Observed blocks that must have gone by then ("clear if the cracks have closed"): day-lifted rules met now. */
  readonly ifLifted: readonly HourBlock[];
  /** Facts to be found out then, which could still block: never told, or too near a limit to tell from the forecast. */
  readonly unknown: readonly FactId[];
  /** What ends it: rules of the hour after, the end of the forecast, or that what was observed must be looked at again. */
  readonly endedBy: readonly HourBlock[] | 'forecast-ends' | 'look-again';
  /** Least sureness of its first hours, as many as are useful at least; null where the forecast gives none. */
  readonly firstSureness: number | null;
  /**
   * The longest stretch of useful length in it whose every hour is likely (`windowLikelyLeast`); where there is none, the one
   * of the least useful length whose least sure hour is the surest. Within daylight where that is long enough. Null where the
   * forecast gives none.
   */
  readonly surest: SureStretch | null;
  /** Chance that the soil at 30 cm is below the limit, as it begins and as it ends; null where that is settled or not told. */
  readonly soilBelow: { readonly limitC: number; readonly first: number; readonly last: number } | null;
  /** When the sun is up within it, to 5 minutes inwards; null where the place is not known. */
  readonly daylight: readonly Span[] | null;
}

/** From one moment to another. */
export interface Span {
  readonly from: EpochSeconds;
  readonly until: EpochSeconds;
}

/** A stretch of hours and the sureness of its least sure hour, 0 to 1. */
export interface SureStretch extends Span {
  readonly sureness: number;
}

/** Soil temperature at 30 cm at one moment, as the model gives it for the noon of a day. */
export type SoilTemperaturePoint = Omit<SoilTemperatureDay, 'iso' | 'sdC'>;

/** When the soil falls through the limit for good, as a range of ISO days at the field with its chance. */
export type FallThrough = SoilFallThrough;

/** Water in the soil on one day, against what the texture holds. */
export type SoilWaterDay = Pick<
  DayOfWater,
  | 'day'
  | 'rainMm'
  | 'etMm'
  | 'deficitMm'
  | 'deficitLowMm'
  | 'deficitHighMm'
  | 'surplusMm'
  | 'fieldCapacityPercent'
  | 'availableWaterPercent'
>;

/** The smallest change of one fact that lifts a blocking rule. */
export interface NeededChange {
  readonly rule: string;
  readonly fact: FactId;
  readonly unit: string | null;
  readonly now: Resolved;
  /** `reach`: `to` is the value, choice or ISO day to be had. `without`: `to` is the sign that must have gone. */
  readonly how: 'reach' | 'without';
  /** Limit to be reached, in the fact's unit; the choice or ISO day to be had; or the sign that must have gone. */
  readonly to: number | string;
  /** In the fact's unit (days for a date), positive = must rise; null for choices and where nothing is known yet. */
  readonly by: number | null;
  readonly lifts: Lifts;
  /** First hour at which the forecast holds it; null where it does not. */
  readonly forecastAt: EpochSeconds | null;
}

/** The first hour ahead that something in the forecast would spoil for a spray-today. */
export interface Spoiled {
  readonly at: EpochSeconds;
  readonly by: readonly HourBlock[];
}

/** All that can be said of the coming days. */
export interface Outlook {
  readonly at: EpochSeconds;
  readonly zone: string;
  readonly hours: readonly HourOutlook[];
  /** Why no hour can be told although a forecast is there (too old, of another place); null where hours can be told. */
  readonly untold: Unknown | null;
  readonly windows: readonly Window[];
  /** Where the forecast ends for what the rules need; null without a forecast. */
  readonly reachesTo: EpochSeconds | null;
  readonly soilTemperature: readonly SoilTemperaturePoint[];
  /** Past years that the usual air beyond the forecast is told from; null where it is that of the latitude. */
  readonly usualAirYears: number | null;
  readonly fallThrough: FallThrough | null;
  readonly soilWater: readonly SoilWaterDay[];
  /** For each blocking rule the smallest change that lifts it. */
  readonly changes: readonly NeededChange[];
  /** The smallest set of changes that would give spray today. */
  readonly smallestSet: readonly NeededChange[];
  /** For a spray-today: what in the forecast first spoils it; null where nothing does, and for another verdict. */
  readonly spoiled: Spoiled | null;
}
