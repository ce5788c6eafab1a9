import { type FactId, isFactOf } from '../facts/registry/index.ts';
import { groupObservations, placeOf } from '../facts/resolve.ts';
import type { FactObservation } from '../facts/resolved.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { numberParameter } from '../units/parameter.ts';
import { distanceKm } from '../weather/distance.ts';
import type { CarriedOver, FieldProfile } from './events.ts';
import { standingOf } from './standing.ts';
import { fieldDevice, type State } from './state.ts';

/**
 * What was told for one field and holds for another at a moment: facts of the farm, and weather seen within the pack's limits of
 * distance and time, none of it where a place is not known. Never what holds for a field alone, nor what the other's profile tells.
 * Null where nothing does.
 */
export function carriedOver(state: State, to: FieldProfile | null, at: EpochSeconds, pack: Pack): CarriedOver | null {
  const standing = standingOf(state, pack);
  const from = state.started?.field;
  if (standing === null || !from) return null;
  const { parameters, registry } = standing.compiled;
  const placeIn = (observations: readonly FactObservation[]) => {
    const byFact = groupObservations({ observations, at });
    return placeOf({ at, zone: pack.zone, parameters }, (fact) => byFact.get(fact) ?? []);
  };
  const here = placeIn(state.observations);
  const there = placeIn(to?.observations ?? []);
  const isNear = () =>
    here !== null && there !== null && distanceKm(here, there) <= numberParameter(parameters, 'nearFieldsKm');
  const oldest = () => at - numberParameter(parameters, 'nearFieldsHours') * 3600;
  const toldThere = new Set((to?.observations ?? []).map(({ fact }) => fact));
  const newest = new Map<FactId, State['observations'][number]>();
  for (const one of state.observations) newest.set(one.fact, one);
  const observations = [...newest.values()]
    .filter(({ fact, reading, at: seen, device, carriedFrom }) => {
      if (toldThere.has(fact) || seen > at || reading.type === 'does-not-know' || standing.conflicts.has(fact))
        return false;
      const scope = isFactOf(registry, fact) ? registry[fact]?.scope : undefined;
      if (device === fieldDevice && carriedFrom === undefined && scope !== 'farm') return false;
      return scope === 'farm' || (scope === 'near' && isNear() && seen >= oldest());
    })
    .map(({ fact, reading, at: seen, source, doubtful, quote }) => ({
      fact,
      reading,
      at: seen,
      source,
      doubtful,
      quote,
    }));
  return observations.length === 0 ? null : { from: { id: from.id, name: from.name }, observations };
}
