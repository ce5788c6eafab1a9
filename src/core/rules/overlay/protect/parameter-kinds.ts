import { bandParameters, type NeededParameter } from '../../../facts/needed-parameters.ts';
import type { FactId } from '../../../facts/registry/index.ts';
import type { FactDefinition } from '../../../facts/types.ts';

/** In which way the program itself reads a parameter. */
export type ParameterKind = 'ageing' | 'band' | 'derivation' | 'dose' | 'outlook';

/** What a parameter that the program reads bears on: some facts, all of those that come from a forecast, or every fact. */
export interface ParameterReach {
  readonly kind: ParameterKind;
  readonly facts: readonly FactId[] | 'of-forecast' | 'every';
}

const rainAhead: readonly FactId[] = ['rain.next48hMm', 'rain.next48hMaxMmPerH'];
const wind: readonly FactId[] = ['wind.boomKmh', 'wind.gustKmh'];
const soilTemperature: readonly FactId[] = ['soil.temperature30cmC', 'soil.temperatureTrendCPerDay'];
const trend: readonly FactId[] = ['soil.temperatureTrendCPerDay'];
const drains: readonly FactId[] = ['soil.drainsExpected7d'];
const inversion: readonly FactId[] = ['air.inversionRisk'];

const band = (facts: ParameterReach['facts']): ParameterReach => ({ kind: 'band', facts });
const derivation = (facts: ParameterReach['facts']): ParameterReach => ({ kind: 'derivation', facts });
const ageing = (facts: ParameterReach['facts']): ParameterReach => ({ kind: 'ageing', facts });
const dose: ParameterReach = { kind: 'dose', facts: 'every' };
const outlook: ParameterReach = { kind: 'outlook', facts: [] };

/** What each parameter that the program reads bears on, apart from how long facts stay good, which the registry tells. */
const reaches: Readonly<Record<NeededParameter, ParameterReach>> = {
  goodForSoilSeenHours: ageing([]),
  goodForSoilSeenRainMm: ageing([]),
  goodForStageDays: ageing([]),
  goodForSeenNowHours: ageing(['sun.daylight', 'air.inversionRisk']),
  goodForToldForecastHours: ageing([]),
  goodForSoilTemperatureHours: ageing(soilTemperature),
  fieldProfileSeasonStart: ageing([]),
  trendReadingsWithinDays: derivation(trend),
  trendReadingsSpanDays: derivation(trend),
  soilTemperatureReadingBandC: band(soilTemperature),
  soilTemperatureCarriedDays: derivation(soilTemperature),
  trendAheadDays: derivation(trend),
  forecastFreshHours: band('of-forecast'),
  forecastOldestHours: ageing('of-forecast'),
  forecastBandGrowthSharePerHour: band('of-forecast'),
  forecastLeadGrowthSharePerDay: band('of-forecast'),
  forecastBandStandardErrors: band('of-forecast'),
  heavyRainMissedSharePerDay: band(rainAhead),
  rainChanceLeast: band(rainAhead),
  forecastWindBandShare: band(wind),
  forecastWindBandKmh: band(wind),
  forecastTemperatureBandC: band(['air.temperatureC', 'air.deltaTC']),
  forecastHumidityBandPercent: band(['air.relativeHumidityPercent', 'air.deltaTC']),
  forecastRainBandShare: band([...rainAhead, ...drains, 'rain.nowMmPerH']),
  forecastRainNowBandMmPerH: band(['rain.nowMmPerH']),
  forecastCellFurthestKm: ageing('of-forecast'),
  nearFieldsKm: ageing('of-forecast'),
  nearFieldsHours: ageing('of-forecast'),
  noFrostAboveC: derivation(['crop.frostOnLeaves']),
  drainsSurplusMm: derivation(drains),
  deficitDepthM: derivation(drains),
  youngCropCoefficient: derivation(drains),
  balanceErrorMmPerRootDay: band(drains),
  boomHeightAboveCropM: derivation(wind),
  cropHeightM: derivation(wind),
  inversionWindBelowKmh: derivation(inversion),
  inversionCloudAtMostPercent: derivation(inversion),
  inversionBeforeSunsetHours: derivation(inversion),
  inversionAfterSunriseHours: derivation(inversion),
  shortestWindowHours: outlook,
  windowLikelyLeast: outlook,
  usualDoseGPerHa: dose,
  severeDoseGPerHa: dose,
  severeDensityPlantsPerM2: dose,
  productStepLPerHa: dose,
};

/**
 * How the program reads a parameter where that bears on one of some facts, and on which of them; null where it does not. The dose
 * always counts as protected: the label limits it.
 */
export function indirectReach(
  parameter: string,
  facts: ReadonlySet<FactId>,
  definitionOf: (fact: FactId) => FactDefinition,
): { readonly kind: Exclude<ParameterKind, 'outlook'>; readonly facts: readonly FactId[] } | null {
  const aged = [...facts].filter((fact) => agesBy(definitionOf(fact), parameter));
  const taken = [...facts].filter((fact) => takenBy(parameter, definitionOf(fact)) !== null);
  const [first] = taken;
  if (first !== undefined) {
    const kind = takenBy(parameter, definitionOf(first)) === 'band' ? 'band' : 'derivation';
    return { kind, facts: taken };
  }
  const reach: ParameterReach | undefined = Object.hasOwn(reaches, parameter)
    ? reaches[parameter as NeededParameter]
    : undefined;
  if (!reach) return aged.length > 0 ? { kind: 'ageing', facts: aged } : null;
  if (reach.kind === 'outlook') return null;
  if (reach.kind === 'dose') return { kind: 'dose', facts: [] };
  const listed = [...facts].filter((fact) => touches(reach.facts, fact, definitionOf(fact)));
  if (listed.length > 0) return { kind: reach.kind, facts: listed };
  return aged.length > 0 ? { kind: 'ageing', facts: aged } : null;
}

/** Facts of a pack's own that are taken from the forecast over hours which a parameter tells, or with its band. */
function takenBy(parameter: string, { forecast }: FactDefinition): ParameterKind | null {
  if (!forecast) return null;
  const { over, variable } = forecast;
  if (typeof over === 'object' && over.hoursAhead === parameter) return 'derivation';
  return bandParameters[variable].some((id) => id === parameter) ? 'band' : null;
}

function touches(facts: ParameterReach['facts'], fact: FactId, { obtained }: FactDefinition): boolean {
  if (facts === 'every') return true;
  if (facts === 'of-forecast') return obtained.includes('forecast') || obtained.includes('derived');
  return facts.includes(fact);
}

function agesBy({ goodFor }: FactDefinition, parameter: string): boolean {
  if (goodFor.kind === 'season') return parameter === 'fieldProfileSeasonStart';
  if (goodFor.kind === 'days') return goodFor.parameter === parameter;
  return goodFor.kind === 'hours' && (goodFor.parameter === parameter || goodFor.untilRainMm === parameter);
}
