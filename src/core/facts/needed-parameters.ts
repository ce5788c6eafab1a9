import { type CoreFactId, type FactId, type FactRegistry, factIdsOf } from './registry/index.ts';
import type { FactDefinition, ForecastVariable } from './types.ts';

/** The parameters that ageing, derivation, the forecast's bands, the outlook and the dose read, with their unit. */
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
  forecastBandStandardErrors: 'standard errors',
  heavyRainMissedSharePerDay: 'share per day',
  rainChanceLeast: 'share',
  forecastWindBandShare: 'share',
  forecastWindBandKmh: 'km/h',
  forecastTemperatureBandC: 'C',
  forecastHumidityBandPercent: '%',
  forecastRainBandShare: 'share',
  forecastRainNowBandMmPerH: 'mm/h',
  forecastCellFurthestKm: 'km',
  nearFieldsKm: 'km',
  nearFieldsHours: 'h',
  noFrostAboveC: 'C',
  drainsSurplusMm: 'mm',
  deficitDepthM: 'm',
  youngCropCoefficient: 'share',
  balanceErrorMmPerRootDay: 'mm per square root of a day',
  boomHeightAboveCropM: 'm',
  cropHeightM: 'm',
  inversionWindBelowKmh: 'km/h',
  inversionCloudAtMostPercent: '%',
  inversionBeforeSunsetHours: 'h',
  inversionAfterSunriseHours: 'h',
  shortestWindowHours: 'h',
  windowLikelyLeast: 'share',
  usualDoseGPerHa: 'g/ha',
  severeDoseGPerHa: 'g/ha',
  severeDensityPlantsPerM2: 'plants/m2',
  productStepLPerHa: 'L/ha',
} as const satisfies Record<string, string>;

/** Id of a parameter that the core itself reads. */
export type NeededParameter = keyof typeof neededParameters;

/** Parameters that every pack holds: the season, how far a forecast is trusted, and which windows are worth telling. */
const always: readonly NeededParameter[] = [
  'fieldProfileSeasonStart',
  'forecastFreshHours',
  'forecastOldestHours',
  'forecastBandGrowthSharePerHour',
  'forecastLeadGrowthSharePerDay',
  'forecastBandStandardErrors',
  'forecastCellFurthestKm',
  'shortestWindowHours',
  'windowLikelyLeast',
];

/** Parameters of the dose; a pack that holds the first holds them all. */
const ofDose: readonly NeededParameter[] = [
  'usualDoseGPerHa',
  'severeDoseGPerHa',
  'severeDensityPlantsPerM2',
  'productStepLPerHa',
];

const ofNear: readonly NeededParameter[] = ['nearFieldsKm', 'nearFieldsHours'];

const windBand = ['cropHeightM', 'boomHeightAboveCropM', 'forecastWindBandShare', 'forecastWindBandKmh'] as const;
const rainAheadBand = ['forecastRainBandShare', 'rainChanceLeast', 'heavyRainMissedSharePerDay'] as const;

/** Parameters by which the band of each variable of a forecast is told. */
export const bandParameters: Readonly<Record<ForecastVariable, readonly NeededParameter[]>> = {
  'air-temperature': ['forecastTemperatureBandC'],
  'relative-humidity': ['forecastHumidityBandPercent'],
  'delta-t': ['forecastTemperatureBandC', 'forecastHumidityBandPercent'],
  rain: ['forecastRainBandShare', 'forecastRainNowBandMmPerH'],
  'wind-at-boom': windBand,
  'gusts-at-boom': windBand,
};

/** Parameters by which a fact built in is worked out, or told from the forecast. */
const needs: Readonly<Partial<Record<FactId, readonly NeededParameter[]>>> = {
  'crop.frostOnLeaves': ['noFrostAboveC'],
  'soil.drainsExpected7d': [
    'deficitDepthM',
    'youngCropCoefficient',
    'forecastRainBandShare',
    'drainsSurplusMm',
    'balanceErrorMmPerRootDay',
  ],
  'soil.temperature30cmC': ['soilTemperatureReadingBandC', 'soilTemperatureCarriedDays'],
  'soil.temperatureTrendCPerDay': ['trendReadingsWithinDays', 'trendReadingsSpanDays', 'trendAheadDays'],
  'air.inversionRisk': [
    'inversionWindBelowKmh',
    'inversionCloudAtMostPercent',
    'inversionBeforeSunsetHours',
    'inversionAfterSunriseHours',
  ],
  'rain.next48hMm': rainAheadBand,
  'rain.next48hMaxMmPerH': rainAheadBand,
  'rain.nowMmPerH': bandParameters.rain,
  'wind.boomKmh': windBand,
  'wind.gustKmh': windBand,
  'air.temperatureC': bandParameters['air-temperature'],
  'air.relativeHumidityPercent': bandParameters['relative-humidity'],
} satisfies Partial<Record<CoreFactId, readonly NeededParameter[]>>;

/** Ids of the parameters that a pack must hold for the facts that it reaches, and for its dose where it gives one. */
export function parametersFor(reached: FactRegistry, givesDose: boolean): ReadonlySet<string> {
  const wanted = new Set<string>([...always, ...(givesDose ? ofDose : [])]);
  for (const id of factIdsOf(reached)) {
    for (const parameter of [...ofDefinition(reached[id]), ...(needs[id] ?? [])]) wanted.add(parameter);
  }
  return wanted;
}

function ofDefinition(definition: FactDefinition | undefined): readonly string[] {
  if (definition === undefined) return [];
  const { goodFor, scope, forecast } = definition;
  const ageing = 'parameter' in goodFor ? [goodFor.parameter] : [];
  const rain = goodFor.kind === 'hours' && goodFor.untilRainMm !== undefined ? [goodFor.untilRainMm] : [];
  const ahead = forecast !== undefined && typeof forecast.over === 'object' ? [forecast.over.hoursAhead] : [];
  const band = forecast === undefined ? [] : bandParameters[forecast.variable];
  return [...ageing, ...rain, ...ahead, ...band, ...(scope === 'near' ? ofNear : [])];
}
