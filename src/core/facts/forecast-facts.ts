import { epochSeconds } from '../units/brands.ts';
import { numberParameter } from '../units/parameter.ts';
import type { Banded } from '../weather/banded.ts';
import { type RainAhead, rainAhead, rainAheadOfMembers } from '../weather/rain-ahead.ts';
import { hourSeconds } from '../weather/series.ts';
import { airTemperatureNow, boomGustNow, boomWindNow, humidityNow, rainNow } from '../weather/weather-now.ts';
import type { FactContext, FactSource, TrustedForecast } from './context.ts';
import { cautiousEnd, cautiousNote } from './observed-known.ts';
import { atPrecision } from './precision.ts';
import { type CoreFactId, definitionIn, type FactId, type FactRegistry } from './registry/index.ts';
import { takenFrom } from './taken-facts.ts';
import type { ForecastTaking, Resolved } from './types.ts';

/** Hours over which rain ahead is judged: those of the facts `rain.next48h*`. */
export const rainAheadHours = 48;

type NowValue = typeof rainNow;

/** Facts that a forecast gives, each with its band. */
const forecastFacts: Readonly<Partial<Record<FactId, FactSource>>> = {
  'rain.next48hMm': ahead('rain.next48hMm', ({ totalMm }) => totalMm),
  'rain.next48hMaxMmPerH': ahead('rain.next48hMaxMmPerH', ({ maxMmPerH }) => maxMmPerH),
  'rain.nowMmPerH': now('rain.nowMmPerH', rainNow),
  'wind.boomKmh': now('wind.boomKmh', boomWindNow, '10 m forecast wind brought down to boom height'),
  'wind.gustKmh': now(
    'wind.gustKmh',
    boomGustNow,
    '10 m forecast gust of the hour, brought down to boom height in the same ratio as the wind',
  ),
  'air.temperatureC': now('air.temperatureC', airTemperatureNow),
  'air.relativeHumidityPercent': now('air.relativeHumidityPercent', humidityNow),
} satisfies Partial<Record<CoreFactId, FactSource>>;

/** How a forecast gives a fact of a registry; undefined where it does not. */
export function forecastSourceOf(id: FactId, registry: FactRegistry): FactSource | undefined {
  const taking = registry[id]?.forecast;
  return taking === undefined ? forecastFacts[id] : taken(id, taking);
}

function now(id: CoreFactId, value: NowValue, note?: string): FactSource {
  return (context) =>
    withForecast(context, (trusted) => {
      const banded = value(trusted.forecast, context.at, trusted.growth, context.parameters);
      return knownForecast(context, trusted, id, banded, 'goodForSeenNowHours', note);
    });
}

function ahead(id: CoreFactId, part: (rain: RainAhead) => Banded): FactSource {
  return (context) =>
    withForecast(context, (trusted) => {
      const { forecast, growth } = trusted;
      const { at, parameters } = context;
      const rain =
        rainAheadOfMembers(forecast, { at, hours: rainAheadHours, growth }, parameters) ??
        rainAhead(forecast, at, rainAheadHours, growth, parameters);
      return knownForecast(context, trusted, id, rain && part(rain), 'forecastFreshHours');
    });
}

function taken(id: FactId, taking: ForecastTaking): FactSource {
  return (context) =>
    withForecast(context, (trusted) => {
      const { goodFor } = definitionIn(context.registry, id);
      const seen = taking.over === 'now' && goodFor.kind === 'hours' ? goodFor.parameter : 'forecastFreshHours';
      return knownForecast(context, trusted, id, takenFrom(taking, context, trusted), seen);
    });
}

function withForecast(context: FactContext, value: (trusted: TrustedForecast) => Resolved): Resolved | null {
  return context.trusted === null ? context.untrusted : value(context.trusted);
}

function knownForecast(
  { at, parameters, registry }: FactContext,
  { oldestAt }: TrustedForecast,
  id: FactId,
  banded: Banded | null,
  goodFor: string,
  note?: string,
): Resolved {
  if (banded === null) return { known: false, reason: 'forecast-gap' };
  const definition = definitionIn(registry, id);
  const [lowest, highest] = definition.range!;
  if (!(banded.value >= lowest && banded.value <= highest)) {
    return { known: false, reason: 'implausible', note: `forecast ${banded.value} ${definition.unit}` };
  }
  const kept = atPrecision(definition, {
    value: banded.value,
    low: Math.max(lowest, banded.low),
    high: Math.min(highest, banded.high),
  });
  const until = at + numberParameter(parameters, goodFor) * hourSeconds;
  const origin = { source: 'forecast', at, goodUntil: epochSeconds(Math.min(until, oldestAt)) } as const;
  const end = definition.cautiousEnd ?? definition.forecast?.end;
  if (end !== undefined) {
    const cautious = cautiousNote(kept.low, kept.high);
    return { known: true, type: 'number', ...cautiousEnd(kept[end]), ...origin, note: cautious };
  }
  return { known: true, type: 'number', ...kept, ...origin, ...(note === undefined ? {} : { note }) };
}
