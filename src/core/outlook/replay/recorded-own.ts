import { cautiousEnd, cautiousNote } from '../../facts/observed-known.ts';
import { atPrecision } from '../../facts/precision.ts';
import type { FactDefinition, ForecastTaking, Resolved } from '../../facts/types.ts';
import type { EpochSeconds } from '../../units/brands.ts';
import { numberParameter, type Parameters } from '../../units/parameter.ts';
import { type Banded, withoutBinaryNoise } from '../../weather/banded.ts';
import type { WeatherDay } from './types.ts';

/** What a record tells of a pack's own fact at noon of a day. */
export interface OwnRecord {
  readonly at: EpochSeconds;
  /** The day itself and those after it. */
  readonly days: readonly WeatherDay[];
  readonly parameters: Parameters;
}

type Span = readonly [low: number, high: number];
type Of = (days: readonly WeatherDay[]) => Span | null;

/** Days of a record that the hours to come may lie in; their rain is that of whole days from the day itself on, as of the facts built in. */
function daysOver({ over }: ForecastTaking, { days, parameters }: OwnRecord): readonly WeatherDay[] | null {
  const count = typeof over === 'object' ? Math.ceil(numberParameter(parameters, over.hoursAhead) / 24) : 1;
  const wanted = over === 'now' ? days.slice(0, 1) : days.slice(0, count + 1);
  return wanted.length < (over === 'now' ? 1 : count + 1) ? null : wanted;
}

const lowest = (days: readonly WeatherDay[]) => numbers(days, ({ airMinC }) => airMinC);
const highest = (days: readonly WeatherDay[]) => numbers(days, ({ airMaxC }) => airMaxC);
const middle = (days: readonly WeatherDay[]) => numbers(days, ({ airMeanC }) => airMeanC);

function numbers(days: readonly WeatherDay[], of: (day: WeatherDay) => number | null): readonly number[] | null {
  const known = days.map(of).filter((one) => one !== null);
  return known.length < days.length ? null : known;
}

const air: Readonly<Record<string, Of>> = {
  min: (days) => spanOf(lowest(days), middle(days), Math.min),
  max: (days) => spanOf(middle(days), highest(days), Math.max),
  mean: (days) => spanOf(lowest(days), highest(days), Math.min, Math.max),
  value: (days) => spanOf(middle(days), highest(days), Math.min),
};

function spanOf(
  low: readonly number[] | null,
  high: readonly number[] | null,
  ofLow: (...values: number[]) => number,
  ofHigh = ofLow,
): Span | null {
  return low === null || high === null ? null : [ofLow(...low), ofHigh(...high)];
}

const rainSum: Of = (days) => {
  const all = numbers(days.slice(0, -1), ({ rainMm }) => rainMm);
  return all && [0, all.reduce((sum, mm) => sum + mm, 0)];
};

/**
 * A pack's own fact by a record of days: the air between what the days' lowest, mean and highest allow, and a sum of rain between
 * none and all that fell in those days. Null where days cannot tell it.
 */
export function recordedOwn(definition: FactDefinition, record: OwnRecord): Resolved | null {
  const { forecast: taking } = definition;
  const days = taking && daysOver(taking, record);
  if (!taking || !days) return null;
  const isSum = taking.variable === 'rain' && taking.take === 'sum' && typeof taking.over === 'object';
  const of = taking.variable === 'air-temperature' ? air[taking.take] : isSum ? rainSum : undefined;
  const span = of?.(days) ?? null;
  if (span === null) return null;
  const [low, high] = span;
  const banded: Banded = { value: withoutBinaryNoise((low + high) / 2), low, high };
  const kept = atPrecision(definition, banded);
  const origin = { known: true, type: 'number', source: 'derived', at: record.at, goodUntil: null } as const;
  const { end } = taking;
  if (end !== undefined) return { ...origin, ...cautiousEnd(kept[end]), note: cautiousNote(kept.low, kept.high) };
  return { ...origin, ...kept, note: `from the record, ${definition.label}` };
}
