import type { EpochSeconds } from '../../../units/brands.ts';

/** One calendar day at the field. Days are given in order without a hole, past and ahead. */
export interface SoilAirDay {
  /** Noon of the day. */
  readonly at: EpochSeconds;
  /** The day, YYYY-MM-DD. */
  readonly iso: string;
  /** Mean air temperature at 2 m, C; null in a gap and beyond the forecast: the usual air of the place stands in. */
  readonly airC: number | null;
  /** The forecast's own soil temperature brought to 30 cm, C; null or absent where it has none. */
  readonly layerC?: number | null;
}

/** One reading of a thermometer in the soil. */
export interface SoilReading {
  readonly at: EpochSeconds;
  /** -20 to 45 C; anything else is left out and named. */
  readonly valueC: number;
  /** Standard error of the reading and its spot, C; at least 0.05 is taken. */
  readonly sdC: number;
  /** Depth, 0.05 to 1 m; 0.3 where absent. Another depth widens the band. */
  readonly depthM?: number;
}

/** What the air at a place usually is, from an archive of past years. */
export interface SiteClimatology {
  /** Usual mean air temperature of each day of the year, C: 366 values, the first of 1 January. */
  readonly meanAirCByDayOfYear: readonly number[];
  /** Spread of single days about it, C. */
  readonly spreadC: number;
  /** Years that it rests on. */
  readonly years: number;
  /** Where the archive is from, in a few words. */
  readonly source: string;
}

/** What a soil's temperature is worked out from. */
export interface SoilTemperatureInput {
  /** From the oldest day known to the last day asked for, at least 1 and at most 800. */
  readonly days: readonly SoilAirDay[];
  /** In any order; of this field. None gives climatology and air alone, with a wide band. */
  readonly readings: readonly SoilReading[];
  /** The moment of asking: later readings are not read, and the path begins on its day. */
  readonly at: EpochSeconds;
  /** When the forecast was made: air of later days carries its error, growing from here. The moment of asking where absent. */
  readonly airKnownUntil?: EpochSeconds;
  /** -90 to 90 degrees; null where not known, which widens what lies beyond the forecast. */
  readonly latitudeDeg: number | null;
  /** Usual air of the place from an archive; that of the latitude stands in where absent. */
  readonly climatology?: SiteClimatology;
  /** Factor on the error of the air forecast, 1 or more, for a forecast that has aged; 0 where the future air is known. Default 1. */
  readonly airErrorFactor?: number;
}

/** Soil temperature at 30 cm on one day (at noon): middle, standard error, and the bands that hold 80 % and 95 %. */
export interface SoilTemperatureDay {
  readonly at: EpochSeconds;
  readonly iso: string;
  readonly valueC: number;
  readonly sdC: number;
  readonly low80C: number;
  readonly high80C: number;
  readonly low95C: number;
  readonly high95C: number;
  /** Chance of being below the limit, 0 to 1. */
  readonly chanceBelow: number;
  /** No forecast of the air reaches this day: climatology stands in. */
  readonly beyondForecast: boolean;
}

/** When the soil falls through a limit for good. */
export interface SoilFallThrough {
  readonly limitC: number;
  /** ISO days by which it has fallen for good with a chance of 10, 50 and 90 %; null where later than the days looked at. */
  readonly day10: string | null;
  readonly day50: string | null;
  readonly day90: string | null;
  /** Chance that, once below, it warms back above within the days looked at, 0 to 1. */
  readonly chanceOfWarmingBack: number;
}
