import type { FactContext, TrustedForecast } from '../facts/context.ts';
import { localDate, noonOf } from '../facts/local-day.ts';
import { type FactId, factIds } from '../facts/registry/index.ts';
import { groupObservations, pickFact, placeOf } from '../facts/resolve.ts';
import type { Resolved, Unknown } from '../facts/types.ts';
import type { CompiledRules } from '../rules/types.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import { numberParameter } from '../units/parameter.ts';
import { hourSeconds } from '../weather/series.ts';
import { trustIn } from '../weather/trust.ts';
import { holdObservations } from './hold-facts.ts';
import type { OutlookInput } from './input.ts';

const daySeconds = 24 * hourSeconds;

/** Facts in one hour: `held` with what was observed kept as assumptions, `strict` with those left out that will have aged. */
export interface HourFacts {
  readonly held: Readonly<Partial<Record<FactId, Resolved>>>;
  readonly strict: Readonly<Partial<Record<FactId, Resolved>>>;
  readonly aged: readonly FactId[];
  readonly trusted: TrustedForecast;
}

/** Facts hour by hour, or why the forecast tells nothing. */
export type FactsAhead =
  | { readonly known: true; readonly at: (at: EpochSeconds, compiled: CompiledRules) => HourFacts }
  | { readonly known: false; readonly untold: Unknown | null };

/** Facts that move so slowly that the value of a day's noon stands for its hours. */
const daily: ReadonlySet<FactId> = new Set<FactId>(['date', 'soil.temperature30cmC', 'soil.temperatureTrendCPerDay']);

/**
 * Every fact as it will stand in the hours ahead. The forecast's age counts at the moment asked about; its bands grow with
 * the age then and by `forecastLeadGrowthSharePerDay` with each day ahead. `forWhich` are the facts wanted.
 */
export function factsAhead(input: OutlookInput, compiled: CompiledRules, forWhich: readonly FactId[]): FactsAhead {
  const { forecast, at: now, pack } = input;
  const { zone } = pack;
  if (forecast === null) return { known: false, untold: null };
  const { parameters } = compiled;
  const groups = groupObservations(input);
  const observations = (id: FactId) => groups.get(id) ?? [];
  const trust = trustIn(forecast, now, placeOf({ at: now, zone, parameters }, observations), parameters);
  if (!trust.usable) return { known: false, untold: { known: false, reason: trust.reason, note: trust.note } };
  const ageing = { zone, parameters, forecast };
  const holders = new Map(factIds.map((id) => [id, holdObservations(id, observations(id), now, ageing)]));
  const perDay = numberParameter(parameters, 'forecastLeadGrowthSharePerDay');
  const contextAt = (at: EpochSeconds, rules: CompiledRules): FactContext & { readonly trusted: TrustedForecast } => {
    const resolved = new Map<FactId, Resolved>();
    const growth = trust.growth * (1 + (perDay * Math.max(0, at - now)) / daySeconds);
    const context: FactContext & { readonly trusted: TrustedForecast } = {
      at,
      zone,
      parameters: rules.parameters,
      trusted: { forecast, growth, oldestAt: epochSeconds(Math.max(trust.oldestAt, at)) },
      untrusted: null,
      observations,
      fact: (id) => {
        const already = resolved.get(id);
        if (already) return already;
        const fresh = daily.has(id) ? dailyFact(id, context, rules) : pick(id, context);
        resolved.set(id, fresh);
        return fresh;
      },
    };
    return context;
  };
  const pick = (id: FactId, context: FactContext): Resolved =>
    pickFact(id, holders.get(id)!(context.at).observed, context);
  const days = new Map<FactId, { readonly iso: string; readonly fact: Resolved }>();
  const dailyFact = (id: FactId, { at }: FactContext, rules: CompiledRules): Resolved => {
    const { observed, aged } = holders.get(id)!(at);
    if (observed.given && aged === null) return observed.given;
    const iso = localDate(at, zone);
    const known = days.get(id);
    if (known?.iso === iso) return known.fact;
    const noon = epochSeconds(Math.max(at, noonOf(iso, zone)));
    const carried = pickFact(id, { ...observed, given: null }, contextAt(noon, rules));
    const fact = carried.known ? carried : (observed.given ?? carried);
    days.set(id, { iso, fact });
    return fact;
  };
  return {
    known: true,
    at: (at, rules) => {
      const context = contextAt(at, rules);
      const held: Partial<Record<FactId, Resolved>> = {};
      const strict: Partial<Record<FactId, Resolved>> = {};
      const aged: FactId[] = [];
      for (const id of forWhich) {
        const value = context.fact(id);
        const { observed, aged: left } = holders.get(id)!(at);
        const isAged = left !== null && value === observed.given;
        held[id] = value;
        strict[id] = isAged ? left : value;
        if (isAged) aged.push(id);
      }
      return { held, strict, aged, trusted: context.trusted };
    },
  };
}
