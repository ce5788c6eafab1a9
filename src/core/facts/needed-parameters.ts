/**
 * Parameters that every pack must hold because ageing, derivation or the forecast's bands read them, with their unit.
 * The loader refuses a pack that lacks one.
 */
export const neededParameters = {
  goodForSoilSeenHours: 'h',
  goodForSoilSeenRainMm: 'mm',
  goodForStageDays: 'days',
  goodForSeenNowHours: 'h',
  goodForToldForecastHours: 'h',
  goodForSoilTemperatureHours: 'h',
  fieldProfileSeasonStart: 'month-day',
  trendReadingsWithinDays: 'days',
  trendReadingsSpanDays: 'days',
  soilTemperatureReadingBandC: 'C',
  soilTemperatureCarriedDays: 'days',
  trendAheadDays: 'days',
  forecastFreshHours: 'h',
  forecastOldestHours: 'h',
  forecastBandGrowthSharePerHour: 'share per h',
  forecastLeadGrowthSharePerDay: 'share per day',
  forecastWindBandShare: 'share',
  forecastWindBandKmh: 'km/h',
  forecastTemperatureBandC: 'C',
  forecastHumidityBandPercent: '%',
  forecastRainBandShare: 'share',
  forecastRainNowBandMmPerH: 'mm/h',
  forecastCellFurthestKm: 'km',
  noFrostAboveC: 'C',
  drainsSurplusMm: 'mm',
  deficitDepthM: 'm',
  youngCropCoefficient: 'share',
  boomHeightAboveCropM: 'm',
  cropHeightM: 'm',
  inversionWindBelowKmh: 'km/h',
  inversionCloudAtMostPercent: '%',
  inversionBeforeSunsetHours: 'h',
  inversionAfterSunriseHours: 'h',
  shortestWindowHours: 'h',
  usualDoseGPerHa: 'g/ha',
  severeDoseGPerHa: 'g/ha',
  severeDensityPlantsPerM2: 'plants/m2',
  productStepLPerHa: 'L/ha',
} as const satisfies Record<string, string>;

/** Id of a parameter that the core itself reads. */
export type NeededParameter = keyof typeof neededParameters;
