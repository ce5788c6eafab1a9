import { soilTrendAhead } from '../../science/soil/temperature/index.ts';
import { type DatedBand, slopePerDay } from '../../science/soil/trend.ts';
import { epochSeconds } from '../../units/brands.ts';
import { numberParameter } from '../../units/parameter.ts';
import { hourSeconds } from '../../weather/series.ts';
import type { FactContext, FactSource } from '../context.ts';
import { localTime } from '../local-day.ts';
import { checkRange } from '../plausible.ts';
import { type CoreFactId, coreFacts } from '../registry/index.ts';
import { endsStuck } from '../stuck-reading.ts';
import { derivedNumber, earliest } from './derived.ts';
import { soilInputOf } from './soil-days.ts';

const temperature: CoreFactId = 'soil.temperature30cmC';
const daySeconds = 24 * hourSeconds;

/**
 * Trend at 30 cm, C/day. Where the person's own readings of the last `trendReadingsWithinDays` span `trendReadingsSpanDays` and
 * the newest is still good: their ordinary least-squares slope, the band being the steepest and flattest slope if every reading
 * is off by its own band, or by `soilTemperatureReadingBandC` where that is wider; not where they are stuck at one value. Else the modelled change over the coming
 * `trendAheadDays`, from a reading at most `soilTemperatureCarriedDays` old.
 */
export const deriveSoilTemperatureTrend: FactSource = (context) => slopeOfReadings(context) ?? modelledTrend(context);

const slopeOfReadings: FactSource = (context) => {
  const { at, parameters } = context;
  const readings = readingsWithin(context, numberParameter(parameters, 'trendReadingsWithinDays') * daySeconds);
  const first = readings[0];
  const last = readings.at(-1);
  if (first === undefined || last === undefined || endsStuck(context)) return null;
  const goodUntil = last.at + numberParameter(parameters, 'goodForSoilTemperatureHours') * hourSeconds;
  const span = last.at - first.at;
  if (span < numberParameter(parameters, 'trendReadingsSpanDays') * daySeconds || goodUntil <= at) return null;
  const days = Math.round((span / daySeconds) * 10) / 10;
  const note = `slope through ${readings.length} readings over ${days} days`;
  return derivedNumber('soil.temperatureTrendCPerDay', slopePerDay(readings), last.at, epochSeconds(goodUntil), note);
};

const modelledTrend: FactSource = (context) => {
  const { at, zone, parameters, trusted } = context;
  const aheadDays = numberParameter(parameters, 'trendAheadDays');
  const input = trusted && soilInputOf(context, trusted, 0);
  const newest = input?.readings.at(-1);
  if (!trusted || !input || !newest) return null;
  const oldestAt = newest.at + numberParameter(parameters, 'soilTemperatureCarriedDays') * daySeconds;
  const trend = oldestAt <= at || at > input.days.at(-1)!.at ? null : soilTrendAhead(input, aheadDays);
  if (trend === null) return null;
  const fresh = epochSeconds(at + numberParameter(parameters, 'forecastFreshHours') * hourSeconds);
  const goodUntil = earliest(epochSeconds(oldestAt), fresh, trusted.oldestAt);
  const note = `modelled over ${aheadDays} days from ${newest.valueC} C read ${localTime(newest.at, zone)}`;
  return derivedNumber('soil.temperatureTrendCPerDay', trend, at, goodUntil, note);
};

function readingsWithin({ at, observations, parameters }: FactContext, seconds: number): DatedBand[] {
  const band = numberParameter(parameters, 'soilTemperatureReadingBandC');
  return observations(temperature).flatMap(({ reading, at: seenAt }) => {
    if (reading.type !== 'number' || seenAt < at - seconds || checkRange(temperature, coreFacts[temperature], reading))
      return [];
    const { value, low = value, high = value } = reading;
    return [{ at: seenAt, value, low: Math.min(low, value - band), high: Math.max(high, value + band) }];
  });
}
