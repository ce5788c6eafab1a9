import { type DatedBand, slopePerDay } from '../../science/soil/trend.ts';
import { epochSeconds } from '../../units/brands.ts';
import { numberParameter } from '../../units/parameter.ts';
import { hourSeconds } from '../../weather/series.ts';
import type { FactContext, FactSource } from '../context.ts';
import { checkRange } from '../plausible.ts';
import { derivedNumber } from './derived.ts';

const daySeconds = 24 * hourSeconds;

/**
 * Trend at 30 cm, C/day: ordinary least-squares slope through the person's own readings of the last
 * `trendReadingsWithinDays`, where they span `trendReadingsSpanDays` and the newest is still good. The band is the
 * steepest and flattest slope if every reading is off by its own band, or by `soilTemperatureReadingBandC` where that is
 * wider.
 */
export const deriveSoilTemperatureTrend: FactSource = (context) => {
  const { at, parameters } = context;
  const readings = readingsWithin(context, numberParameter(parameters, 'trendReadingsWithinDays') * daySeconds);
  const first = readings[0];
  const last = readings.at(-1);
  if (first === undefined || last === undefined) return null;
  const goodUntil = last.at + numberParameter(parameters, 'goodForSoilTemperatureHours') * hourSeconds;
  const span = last.at - first.at;
  if (span < numberParameter(parameters, 'trendReadingsSpanDays') * daySeconds || goodUntil <= at) return null;
  const days = Math.round((span / daySeconds) * 10) / 10;
  const note = `slope through ${readings.length} readings over ${days} days`;
  return derivedNumber('soil.temperatureTrendCPerDay', slopePerDay(readings), last.at, epochSeconds(goodUntil), note);
};

function readingsWithin({ at, observations, parameters }: FactContext, seconds: number): DatedBand[] {
  const band = numberParameter(parameters, 'soilTemperatureReadingBandC');
  return observations('soil.temperature30cmC').flatMap(({ reading, at: seenAt }) => {
    if (reading.type !== 'number' || seenAt < at - seconds || checkRange('soil.temperature30cmC', reading)) return [];
    const { value, low = value, high = value } = reading;
    return [{ at: seenAt, value, low: Math.min(low, value - band), high: Math.max(high, value + band) }];
  });
}
