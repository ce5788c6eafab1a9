import { soilWaterOfClass } from '../science/soil/water-shares.ts';
import { type BandedFlow, balanceDays, type DayOfWater } from '../science/water/daily-balance.ts';
import { totalAvailableWater } from '../science/water/root-zone.ts';
import { numberParameter } from '../units/parameter.ts';
import { lastStamp } from '../weather/series.ts';
import { type WaterHours, waterHours } from '../weather/water-hours.ts';
import type { FactContext, ResolveInput } from './context.ts';
import { type Deficit, deficitOf } from './derive/deficit.ts';
import { localDate } from './local-day.ts';
import { contextOf } from './resolve.ts';

/**
 * Water in the soil day by day from the moment at which it was felt or measured to the last whole day that the forecast
 * holds, under young rape (`youngCropCoefficient`) over `deficitDepthM`, with the band of rain and of the balance itself
 * (`balanceErrorMmPerRootDay`). What was felt too long ago for the
 * rules still serves, as long as the forecast holds every hour since. Empty without a forecast that may be used, without the
 * soil felt or measured, or where rain or evapotranspiration is missing from the start.
 */
export function soilWaterDays(input: ResolveInput): DayOfWater[] {
  const context = contextOf(input);
  const { parameters, trusted } = context;
  const until = trusted === null ? null : lastStamp(trusted.forecast);
  if (trusted === null || until === null) return [];
  const hoursFrom = ({ at: since }: Deficit) => waterHours(trusted.forecast, { since, at: input.at, until });
  const fresh = deficitOf(context);
  const start = fresh ?? lastDeficit(input, context);
  if (start === null) return [];
  const found = hoursFrom(start);
  if (fresh === null && !found.completeBefore) return [];
  const share = numberParameter(parameters, 'forecastRainBandShare') * trusted.growth;
  const days = balanceDays({
    soils: start.soils,
    depthM: numberParameter(parameters, 'deficitDepthM'),
    cover: { kind: 'crop', coefficient: numberParameter(parameters, 'youngCropCoefficient') },
    flows: flowsOf(found, share, input.zone),
  });
  const error = numberParameter(parameters, 'balanceErrorMmPerRootDay');
  const mostMm = mostDeficitMm(start, numberParameter(parameters, 'deficitDepthM'));
  return days.map((day, index) => widened(day, error * Math.sqrt(index + 1), mostMm));
}

/** The band of a day wider by the balance's own error, mm, within what the soil can lack. */
function widened(day: DayOfWater, errorMm: number, mostMm: number): DayOfWater {
  return {
    ...day,
    deficitLowMm: Math.max(0, day.deficitLowMm - errorMm),
    deficitHighMm: Math.max(day.deficitHighMm, Math.min(mostMm, day.deficitHighMm + errorMm)),
  };
}

/** What the soils that may be can lack at most, mm: all their available water. */
function mostDeficitMm({ soils }: Deficit, depthM: number): number {
  return Math.max(...soils.map(({ texture }) => totalAvailableWater(soilWaterOfClass(texture), depthM)));
}

function lastDeficit(input: ResolveInput, { observations }: FactContext): Deficit | null {
  const seen = [...observations('soil.feel'), ...observations('soil.fieldCapacityPercent')];
  const last = seen.toSorted((one, other) => one.at - other.at).at(-1);
  return last === undefined ? null : deficitOf(contextOf({ ...input, at: last.at }));
}

function flowsOf({ hours, reachesTo }: WaterHours, share: number, zone: string): BandedFlow[] {
  const endsOn = localDate(reachesTo, zone);
  return hours.flatMap(({ begin, rainMm, referenceMm }): BandedFlow[] => {
    const day = localDate(begin, zone);
    if (day === endsOn) return [];
    const rainLowMm = rainMm * Math.max(0, 1 - share);
    return [{ day, rainMm, rainLowMm, rainHighMm: rainMm * (1 + share), referenceMm }];
  });
}
