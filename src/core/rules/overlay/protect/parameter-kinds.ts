import { bandParameters, type NeededParameter } from '../../../facts/needed-parameters.ts';
import type { FactId } from '../../../facts/registry/index.ts';
import type { FactDefinition } from '../../../facts/types.ts';
import type { Way } from './rises-with.ts';

/** In which way the program itself reads a parameter. */
export type ParameterKind = 'ageing' | 'band' | 'derivation' | 'dose' | 'outlook';

/** What a parameter that the program reads bears on: some facts, all of those that come from a forecast, or every fact. */
export interface ParameterReach {
  readonly kind: ParameterKind;
  readonly facts: readonly FactId[] | 'of-forecast' | 'every';
  readonly rises?: Rise;
}

/** A move of a parameter by which its facts can only go one way: a choice towards yes, or not known where it was no; a number up or down. */
export interface Rise {
  readonly moved: 'higher' | 'lower';
  readonly way: Way;
}

const rainAhead: readonly FactId[] = ['rain.next48hMm', 'rain.next48hMaxMmPerH'];
const wind: readonly FactId[] = ['wind.boomKmh', 'wind.gustKmh'];
const soilTemperature: readonly FactId[] = ['soil.temperature30cmC', 'soil.temperatureTrendCPerDay'];
const trend: readonly FactId[] = ['soil.temperatureTrendCPerDay'];
const drains: readonly FactId[] = ['soil.drainsExpected7d'];
const inversion: readonly FactId[] = ['air.inversionRisk'];

const band = (facts: ParameterReach['facts']): ParameterReach => ({ kind: 'band', facts });
const derivation = (facts: ParameterReach['facts']): ParameterReach => ({ kind: 'derivation', facts });
const towardsYes = (moved: Rise['moved'], facts: readonly FactId[]): ParameterReach => ({
  kind: 'derivation',
  facts,
  rises: { moved, way: 'yes' },
});
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
  noFrostAboveC: towardsYes('higher', ['crop.frostOnLeaves']),
  drainsSurplusMm: towardsYes('lower', drains),
  deficitDepthM: towardsYes('lower', drains),
  youngCropCoefficient: towardsYes('lower', drains),
  balanceErrorMmPerRootDay: band(drains),
  boomHeightAboveCropM: derivation(wind),
  cropHeightM: derivation(wind),
  inversionWindBelowKmh: towardsYes('higher', inversion),
  inversionCloudAtMostPercent: towardsYes('higher', inversion),
  inversionBeforeSunsetHours: towardsYes('higher', inversion),
  inversionAfterSunriseHours: towardsYes('higher', inversion),
  shortestWindowHours: outlook,
  windowLikelyLeast: outlook,
  usualDoseGPerHa: dose,
  severeDoseGPerHa: dose,
  severeDensityPlantsPerM2: dose,
  productStepLPerHa: dose,
};

/** How the program reads a parameter, the facts that this bears on, and the move by which those can only go one way, if there is one. */
export interface IndirectReach {
  readonly kind: Exclude<ParameterKind, 'outlook'>;
  readonly facts: readonly FactId[];
  readonly rises: Rise | null;
}

/**
 * How the program reads a parameter where that bears on one of some facts, and on which of them; null where it does not. The dose
 * always counts as protected: the label limits it.
 */
export function indirectReach(
  parameter: string,
  facts: ReadonlySet<FactId>,
  definitionOf: (fact: FactId) => FactDefinition,
): IndirectReach | null {
  const aged = [...facts].filter((fact) => agesBy(definitionOf(fact), parameter));
  const taken = [...facts].flatMap((fact) => takenBy(parameter, definitionOf(fact)) ?? []);
  const [first] = taken;
  if (first !== undefined) {
    const isAlike = taken.every(({ rises }) => JSON.stringify(rises) === JSON.stringify(first.rises));
    const reached = [...facts].filter((fact) => takenBy(parameter, definitionOf(fact)) !== null);
    return { kind: first.kind, facts: reached, rises: isAlike && aged.length === 0 ? first.rises : null };
  }
  const reach: ParameterReach | undefined = Object.hasOwn(reaches, parameter)
    ? reaches[parameter as NeededParameter]
    : undefined;
  const asAged: IndirectReach | null = aged.length > 0 ? { kind: 'ageing', facts: aged, rises: null } : null;
  if (!reach) return asAged;
  if (reach.kind === 'outlook') return null;
  if (reach.kind === 'dose') return { kind: 'dose', facts: [], rises: null };
  const touched = (fact: FactId) => touches(reach.facts, fact, definitionOf(fact));
  if (![...facts].some(touched)) return asAged;
  const reached = [...facts].filter((fact) => touched(fact) || aged.includes(fact));
  return { kind: reach.kind, facts: reached, rises: aged.length === 0 ? (reach.rises ?? null) : null };
}

/**
 * How facts of a pack's own are taken from the forecast by a parameter: with its band, or over hours which it tells. The most and
 * the sum of more hours are never less, the least never more.
 */
function takenBy(parameter: string, { forecast }: FactDefinition): Pick<IndirectReach, 'kind' | 'rises'> | null {
  if (!forecast) return null;
  const { over, variable, take } = forecast;
  if (typeof over === 'object' && over.hoursAhead === parameter) {
    const way: Way | null = take === 'min' ? 'lower' : take === 'max' || take === 'sum' ? 'higher' : null;
    return { kind: 'derivation', rises: way && { moved: 'higher', way } };
  }
  return bandParameters[variable].some((id) => id === parameter) ? { kind: 'band', rises: null } : null;
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
