import type { FactContext, TrustedForecast } from '../facts/context.ts';
import { type FactId, factIdsOf } from '../facts/registry/index.ts';
import { groupObservations, pickFact, placeOf } from '../facts/resolve.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import type { Resolved, Unknown } from '../facts/types.ts';
import type { CompiledRules } from '../rules/types.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import { growthAhead, trustIn } from '../weather/trust.ts';
import { type HeldObservation, holdObservations } from './hold-facts.ts';
import type { OutlookInput } from './input.ts';
import { slowFacts, slowlyMoving } from './slow-facts.ts';
import { steadyFacts } from './steady-facts.ts';

/** Facts in one hour: `held` with what was observed kept as assumptions, `strict` with those left out that will have aged. */
export interface HourFacts {
  readonly held: ResolvedFacts;
  readonly strict: ResolvedFacts;
  readonly aged: readonly FactId[];
  readonly trusted: TrustedForecast;
}

/** Facts hour by hour, or why the forecast tells nothing. */
export type FactsAhead =
  | { readonly known: true; readonly at: (at: EpochSeconds, compiled: CompiledRules) => HourFacts }
  | { readonly known: false; readonly untold: Unknown | null };

/**
 * Every fact wanted as it will stand in the hours ahead. The forecast's age counts at the moment asked about; its bands grow
 * with the age then and by `forecastLeadGrowthSharePerDay` with each day ahead.
 */
export function factsAhead(input: OutlookInput, compiled: CompiledRules, wanted: readonly FactId[]): FactsAhead {
  const { forecast, at: now } = input;
  const { zone } = input.pack;
  if (forecast === null) return { known: false, untold: null };
  const { parameters, registry } = compiled;
  const groups = groupObservations(input);
  const observations = (id: FactId) => groups.get(id) ?? [];
  const trust = trustIn(forecast, now, placeOf({ at: now, zone, parameters }, observations), parameters);
  if (!trust.usable) return { known: false, untold: { known: false, reason: trust.reason, note: trust.note } };
  const ageing = { zone, parameters, registry, forecast };
  const holders = new Map(factIdsOf(registry).map((id) => [id, holdObservations(id, observations(id), now, ageing)]));
  const heldOf = (id: FactId, at: EpochSeconds) => holders.get(id)!(at);
  const trustedAt = (at: EpochSeconds, grown: boolean): TrustedForecast => ({
    forecast,
    growth: grown ? growthAhead(trust.growth, now, at, parameters) : trust.growth,
    oldestAt: epochSeconds(Math.max(trust.oldestAt, at)),
  });
  const slow = slowFacts(now, zone);
  const contextAt = (at: EpochSeconds, rules: CompiledRules, grown = true): HourContext => {
    const resolved = new Map<FactId, Resolved>();
    const context: HourContext = {
      at,
      zone,
      parameters: rules.parameters,
      registry,
      trusted: trustedAt(at, grown),
      untrusted: null,
      observations,
      fact: (id) => {
        const already = resolved.get(id);
        if (already) return already;
        const held = heldOf(id, at);
        const fresh = slowlyMoving[id]
          ? slow({ id, at, held, contextAt: (moment, grown) => contextAt(moment, rules, grown) })
          : pickFact(id, held.observed, context);
        resolved.set(id, fresh);
        return fresh;
      },
    };
    return context;
  };
  const steady = steadyFacts();
  return { known: true, at: (at, rules) => hourFacts(contextAt(at, rules), wanted, (id) => heldOf(id, at), steady) };
}

type HourContext = FactContext & { readonly trusted: TrustedForecast };

function hourFacts(
  { fact, trusted }: HourContext,
  wanted: readonly FactId[],
  heldOf: (id: FactId) => HeldObservation,
  steady: (id: FactId, fact: Resolved) => Resolved,
): HourFacts {
  const held: Record<FactId, Resolved> = {};
  const left: Record<FactId, Resolved> = {};
  const aged: FactId[] = [];
  for (const id of wanted) {
    const value = fact(id);
    held[id] = steady(id, value);
    const { observed, aged: rest } = heldOf(id);
    if (rest === null || value !== observed.given) continue;
    left[id] = rest;
    aged.push(id);
  }
  return { held, strict: aged.length === 0 ? held : { ...held, ...left }, aged, trusted };
}
