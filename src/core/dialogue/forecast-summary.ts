import { errorTable } from '../errors/table.ts';
import { rainAheadHours } from '../facts/forecast-facts.ts';
import { type FactRegistry, isFactOf } from '../facts/registry/index.ts';
import { type ResolvedFacts, resolvedFact } from '../facts/resolved.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { Parameters as RuleParameters } from '../units/parameter.ts';
import { ceilTo } from '../units/round.ts';
import type { Forecast } from '../weather/forecast.ts';
import { reachesFrom } from '../weather/quality.ts';
import { rainAheadOfMembers } from '../weather/rain-ahead.ts';
import { ageHours, isFetchedLater } from '../weather/series.ts';
import { isoMinute } from '../weather/show-time.ts';
import { trustIn } from '../weather/trust.ts';
import type { ForecastSummary, RainChance } from './decision-types.ts';
import { instantText } from './moment.ts';

/** What a forecast is judged by beside itself. */
export interface ForecastUse {
  readonly at: EpochSeconds;
  /** For the place of the field. */
  readonly facts: ResolvedFacts;
  readonly parameters: RuleParameters;
  readonly registry: FactRegistry;
}

/** Source, age and reach of a forecast at a moment, and whether it may be used there. */
export function summariseForecast(
  forecast: Forecast,
  { at, facts, parameters, registry }: ForecastUse,
): ForecastSummary {
  const { place, attribution, fetchedAt } = forecast;
  const trust = trustIn(forecast, at, fieldPlace(facts), parameters);
  const reach = reachesFrom(forecast, at);
  return {
    attribution,
    invented: forecast.invented === true,
    fetchedAt: instantText(fetchedAt),
    ageHours: Math.round(ageHours(forecast, at) * 100) / 100,
    reachesTo: reach === null ? null : instantText(reach),
    unused: trust.usable ? null : trust.reason === 'too-old' ? 'too-old' : 'too-far',
    note: noteOf(forecast, at),
    rainChance:
      trust.usable && isFactOf(registry, 'rain.next48hMm')
        ? rainChanceOf(forecast, { at, hours: rainAheadHours, growth: trust.growth }, parameters)
        : null,
    latitude: place.latitude,
    longitude: place.longitude,
    distanceKm: Math.round(place.distanceKm * 100) / 100,
  };
}

function rainChanceOf(...asked: Parameters<typeof rainAheadOfMembers>): RainChance | null {
  const rain = rainAheadOfMembers(...asked);
  if (rain === null) return null;
  const { members } = rain;
  const atMostMm = ceilTo(rain.totalMm.high, 0.1);
  const share = members.filter(({ totalMm }) => totalMm <= atMostMm).length / members.length;
  return { courses: members.length, share, atMostMm };
}

/** The forecast's own note, and what is to be known of one that was not yet there at the moment asked about. */
function noteOf(forecast: Forecast, at: EpochSeconds): string | null {
  const own = forecast.note === undefined ? [] : [forecast.note];
  const later = isFetchedLater(forecast, at)
    ? [`${errorTable.FORECAST_FETCHED_LATER.says} (FORECAST_FETCHED_LATER: ${isoMinute(forecast.fetchedAt)})`]
    : [];
  return own.length + later.length === 0 ? null : [...own, ...later].join(' ');
}

function fieldPlace(facts: ResolvedFacts): { readonly latitude: number; readonly longitude: number } | null {
  const latitude = resolvedFact(facts, 'field.latitude');
  const longitude = resolvedFact(facts, 'field.longitude');
  const known = latitude.known && latitude.type === 'number' && longitude.known && longitude.type === 'number';
  return known ? { latitude: latitude.value, longitude: longitude.value } : null;
}
