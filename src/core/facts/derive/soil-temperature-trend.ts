import { type EpochSeconds, epochSeconds } from '../../units/brands.ts';
import { numberParameter } from '../../units/parameter.ts';
import { hourSeconds } from '../../weather/series.ts';
import type { FactContext, FactSource } from '../context.ts';
import { checkRange } from '../plausible.ts';
import { derivedNumber } from './derived.ts';

const daySeconds = 24 * hourSeconds;

interface DatedTemperature {
  readonly at: EpochSeconds;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

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
  return derivedNumber('soil.temperatureTrendCPerDay', slopeOf(readings), last.at, epochSeconds(goodUntil), note);
};

function readingsWithin({ at, observations, parameters }: FactContext, seconds: number): DatedTemperature[] {
  const band = numberParameter(parameters, 'soilTemperatureReadingBandC');
  return observations('soil.temperature30cmC').flatMap(({ reading, at: seenAt }) => {
    if (reading.type !== 'number' || seenAt < at - seconds || checkRange('soil.temperature30cmC', reading)) return [];
    const { value, low = value, high = value } = reading;
    return [{ at: seenAt, value, low: Math.min(low, value - band), high: Math.max(high, value + band) }];
  });
}

/** Ordinary least squares: slope = sum of w (T - mean) with w = (t - mean t) / sum of squares; days and C. */
function slopeOf(readings: readonly DatedTemperature[]) {
  const mean = readings.reduce((sum, { at }) => sum + at, 0) / readings.length;
  const offsets = readings.map(({ at }) => (at - mean) / daySeconds);
  const squares = offsets.reduce((sum, offset) => sum + offset * offset, 0);
  const slope = { value: 0, low: 0, high: 0 };
  readings.forEach(({ value, low, high }, index) => {
    const weight = offsets[index]! / squares;
    slope.value += weight * value;
    slope.low += weight * (weight < 0 ? high : low);
    slope.high += weight * (weight < 0 ? low : high);
  });
  return slope;
}
