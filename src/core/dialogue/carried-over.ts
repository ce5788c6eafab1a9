import { type FactId, isFactOf } from '../facts/registry/index.ts';
import { resolvedFact } from '../facts/resolved.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import { numberParameter } from '../units/parameter.ts';
import { distanceKm } from '../weather/distance.ts';
import type { CarriedOver, FieldProfile } from './events.ts';
import { standingOf } from './standing.ts';
import { fieldDevice, type State } from './state.ts';

/**
 * What was told for one field and holds for another at a moment: facts of the farm, and weather seen within the pack's limits of
 * distance and time. Never what holds for a field alone, nor what the other's profile tells. Null where nothing does.
 */
export function carriedOver(state: State, to: FieldProfile | null, at: EpochSeconds, pack: Pack): CarriedOver | null {
  const standing = standingOf(state, pack);
  const from = state.started?.field;
  if (standing === null || !from) return null;
  const { parameters, registry } = standing.compiled;
  const isNear = () => areNear(standing.facts, to, numberParameter(parameters, 'nearFieldsKm'));
  const oldest = () => at - numberParameter(parameters, 'nearFieldsHours') * 3600;
  const there = new Set((to?.observations ?? []).map(({ fact }) => fact));
  const newest = new Map<FactId, State['observations'][number]>();
  for (const one of state.observations) newest.set(one.fact, one);
  const observations = [...newest.values()]
    .filter(({ fact, reading, at: seen, device, carriedFrom }) => {
      if (there.has(fact) || seen > at || reading.type === 'does-not-know' || standing.conflicts.has(fact))
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

/** False where a place is not known: then weather seen there is asked for anew. */
function areNear(facts: Parameters<typeof resolvedFact>[0], to: FieldProfile | null, furthestKm: number): boolean {
  const here = { latitude: numberOf(facts, 'field.latitude'), longitude: numberOf(facts, 'field.longitude') };
  const there = { latitude: toldNumber(to, 'field.latitude'), longitude: toldNumber(to, 'field.longitude') };
  if (here.latitude === null || here.longitude === null || there.latitude === null || there.longitude === null) {
    return false;
  }
  const point = ({ latitude, longitude }: { latitude: number | null; longitude: number | null }) => ({
    latitude: latitude ?? 0,
    longitude: longitude ?? 0,
  });
  return distanceKm(point(here), point(there)) <= furthestKm;
}

function numberOf(facts: Parameters<typeof resolvedFact>[0], id: FactId): number | null {
  const fact = resolvedFact(facts, id);
  return fact.known && fact.type === 'number' ? fact.value : null;
}

function toldNumber(field: FieldProfile | null, id: FactId): number | null {
  const reading = field?.observations.findLast(({ fact }) => fact === id)?.reading;
  return reading?.type === 'number' ? reading.value : null;
}
