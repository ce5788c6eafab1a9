import type { NeededParameter } from '../../src/core/facts/needed-parameters.ts';
import { neededParameters } from '../../src/core/facts/needed-parameters.ts';
import type { Parameter, Parameters } from '../../src/core/units/parameter.ts';

const values: Readonly<Record<NeededParameter, number | string>> = {
  goodForSoilSeenHours: 24,
  goodForSoilSeenRainMm: 5,
  goodForStageDays: 10,
  goodForSeenNowHours: 1,
  goodForToldForecastHours: 12,
  goodForSoilTemperatureHours: 24,
  fieldProfileSeasonStart: '07-01',
  trendReadingsWithinDays: 10,
  trendReadingsSpanDays: 2,
  soilTemperatureReadingBandC: 0.05,
  soilTemperatureCarriedDays: 10,
  trendAheadDays: 3,
  forecastFreshHours: 6,
  forecastOldestHours: 48,
  forecastBandGrowthSharePerHour: 0.05,
  forecastLeadGrowthSharePerDay: 0.1,
  forecastBandStandardErrors: 1.645,
  heavyRainMissedSharePerDay: 0.01,
  rainChanceLeast: 0.8,
  forecastWindBandShare: 0.2,
  forecastWindBandKmh: 1,
  forecastTemperatureBandC: 1,
  forecastHumidityBandPercent: 5,
  forecastRainBandShare: 0.25,
  forecastRainNowBandMmPerH: 0.1,
  nearFieldsKm: 2,
  nearFieldsHours: 1,
  forecastCellFurthestKm: 15,
  noFrostAboveC: 4,
  drainsSurplusMm: 5,
  deficitDepthM: 0.3,
  youngCropCoefficient: 0.5,
  balanceErrorMmPerRootDay: 3,
  boomHeightAboveCropM: 0.5,
  cropHeightM: 0.3,
  inversionWindBelowKmh: 6,
  inversionCloudAtMostPercent: 25,
  inversionBeforeSunsetHours: 2,
  inversionAfterSunriseHours: 2,
  shortestWindowHours: 2,
  windowLikelyLeast: 0.66,
  usualDoseGPerHa: 750,
  severeDoseGPerHa: 840,
  severeDensityPlantsPerM2: 100,
  productStepLPerHa: 0.01,
};

/** Parameters for tests, in force on any day: our own round numbers, not a pack's; some may be replaced. */
export function testParameters(replaced: Readonly<Partial<Record<NeededParameter, number | string>>> = {}): Parameters {
  const all = Object.entries({ ...values, ...replaced }) as [NeededParameter, number | string][];
  return new Map(all.map(([id, value]) => [id, parameter(id, value)]));
}

function parameter(id: NeededParameter, value: number | string): Parameter {
  const text = { source: 'test', why: { en: 'test' }, validFrom: '2000-01-01', tighter: 'neither' } as const;
  return { id, value, unit: neededParameters[id], ...text };
}
