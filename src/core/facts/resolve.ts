import { trustIn } from '../weather/trust.ts';
import type { FactContext, ResolveInput } from './context.ts';
import { derivations } from './derive/index.ts';
import { forecastSourceOf } from './forecast-facts.ts';
import { type Observed, observedOf } from './observed.ts';
import { type CoreFactId, coreFacts, type FactId, factIdsOf } from './registry/index.ts';
import type { FactObservation, ResolvedFacts } from './resolved.ts';
import { doubtStuck } from './stuck-reading.ts';
import type { Resolved } from './types.ts';

/** Seconds by which an observation may lie ahead of the moment, for clocks that differ; further ahead it is not yet so. */
const clockSlackSeconds = 60;

/**
 * Every fact as the rules see it at a moment. What was said or measured and is still good stands first, then what is
 * derived, then the forecast; a told forecast yields to a good one. The order of observations of different facts does not
 * matter. Throws PARAMETER_MISSING or ZONE_UNKNOWN.
 */
export function resolveFacts(input: ResolveInput): ResolvedFacts {
  const context = contextOf(input);
  return Object.fromEntries(factIdsOf(input.registry).map((id) => [id, context.fact(id)]));
}

/** What derivations read at a moment: every fact, resolved when first asked for. */
export function contextOf(input: ResolveInput): FactContext {
  const { at, zone, parameters, registry } = input;
  const byFact = groupObservations(input);
  const observations = (id: FactId) => byFact.get(id) ?? [];
  const place = placeOf(input, observations);
  const { forecast } = input;
  const trust = forecast && trustIn(forecast, at, place, parameters);
  const isOfThisPlace = trust?.usable || trust?.reason === 'too-old';
  const ageing = { zone, parameters, registry, forecast: isOfThisPlace ? forecast : null };
  const resolved = new Map<FactId, Resolved>();
  const context: FactContext = {
    at,
    zone,
    parameters,
    registry,
    trusted: forecast && trust?.usable ? { ...trust, forecast } : null,
    untrusted: !trust || trust.usable ? null : { known: false, reason: trust.reason, note: trust.note },
    observations,
    fact: (id) => {
      const already = resolved.get(id);
      if (already) return already;
      const fresh = pickFact(id, observedOf(id, observations(id), at, ageing), context);
      resolved.set(id, fresh);
      return fresh;
    },
  };
  return context;
}

/** What a fact comes to in a context: what was observed first, then what is derived, then the forecast, then what was told. */
export function pickFact(id: FactId, observed: Observed, context: FactContext): Resolved {
  if (observed.given) {
    return doubtStuck(id, observed.given, context, () => derivations[id]?.(context) ?? null);
  }
  const derived = derivations[id]?.(context) ?? null;
  if (derived?.known) return derived;
  const forecast = forecastSourceOf(id, context.registry)?.(context) ?? null;
  if (forecast?.known) return forecast;
  return observed.told ?? observed.unknown ?? derived ?? forecast ?? { known: false, reason: 'not-asked' };
}

/** Observations by fact, oldest first, without those that lie in the future of `at`. */
export function groupObservations({
  observations,
  at,
}: Pick<ResolveInput, 'observations' | 'at'>): ReadonlyMap<FactId, readonly FactObservation[]> {
  const groups = new Map<FactId, FactObservation[]>();
  for (const one of observations.toSorted((a, b) => a.at - b.at)) {
    if (one.at > at + clockSlackSeconds) continue;
    const group = groups.get(one.fact);
    if (group) group.push(one);
    else groups.set(one.fact, [one]);
  }
  return groups;
}

/** The place of the field as it was given; null where it was not. */
export function placeOf(
  { at, zone, parameters }: Pick<ResolveInput, 'at' | 'zone' | 'parameters'>,
  observations: (id: FactId) => readonly FactObservation[],
): { readonly latitude: number; readonly longitude: number } | null {
  const number = (id: CoreFactId) => {
    const ageing = { zone, parameters, registry: coreFacts, forecast: null };
    const { given } = observedOf(id, observations(id), at, ageing);
    return given?.type === 'number' ? given.value : null;
  };
  const latitude = number('field.latitude');
  const longitude = number('field.longitude');
  return latitude === null || longitude === null ? null : { latitude, longitude };
}
