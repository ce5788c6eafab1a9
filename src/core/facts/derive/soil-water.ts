import { DateTime } from 'luxon';
import { type BandedFlow, balanceDays, type DayOfWater } from '../../science/water/daily-balance.ts';
import { numberParameter } from '../../units/parameter.ts';
import { lastStamp } from '../../weather/series.ts';
import { waterHours } from '../../weather/water-hours.ts';
import type { FactContext } from '../context.ts';
import { deficitOf } from './deficit.ts';

/**
 * Water in the soil day by day from the moment at which it was felt or measured to the last whole day that the forecast
 * holds, under young rape (`youngCropCoefficient`) over `deficitDepthM`, with rain's band. Empty without a forecast that may
 * be used, without the soil felt or measured, or where rain or evapotranspiration is missing from the start.
 */
export function soilWaterDays(context: Omit<FactContext, 'untrusted' | 'observations'>): DayOfWater[] {
  const { at, zone, parameters, trusted } = context;
  const start = deficitOf(context);
  const until = trusted === null ? null : lastStamp(trusted.forecast);
  if (start === null || trusted === null || until === null) return [];
  const { hours, reachesTo } = waterHours(trusted.forecast, { since: start.at, at, until });
  const share = numberParameter(parameters, 'forecastRainBandShare') * trusted.growth;
  const endsOn = DateTime.fromSeconds(reachesTo, { zone }).toISODate();
  const flows = hours.flatMap(({ begin, rainMm, referenceMm }): BandedFlow[] => {
    const day = DateTime.fromSeconds(begin, { zone }).toISODate() ?? '';
    if (day === endsOn) return [];
    const rainLowMm = rainMm * Math.max(0, 1 - share);
    return [{ day, rainMm, rainLowMm, rainHighMm: rainMm * (1 + share), referenceMm }];
  });
  return balanceDays({
    soils: start.soils,
    depthM: numberParameter(parameters, 'deficitDepthM'),
    cover: { kind: 'crop', coefficient: numberParameter(parameters, 'youngCropCoefficient') },
    flows,
  });
}
