import { factsBehind } from '../facts/derive/reads.ts';
import { type CoreFactId, type FactId, type FactRegistry, factIdsOf } from '../facts/registry/index.ts';
import type { Pack } from './pack-types.ts';
import { comparisonsOf } from './reads.ts';

/** The parts of a pack that say which facts it reaches. */
export type ReachingPack = Pick<Pack, 'rules' | 'questions' | 'parameters' | 'facts'>;

/** Facts that every pack reaches: the day, and the place that the forecast is for. */
const always: readonly CoreFactId[] = ['date', 'field.latitude', 'field.longitude'];

/** Facts that the dose is worked out from. */
const ofDose: readonly CoreFactId[] = ['product.activeGPerL', 'product.labelMaxGPerHa', 'weed.plantsPerM2'];

const reached = new WeakMap<ReachingPack, FactRegistry>();

/**
 * The facts that a pack reaches, in the order of its registry: those that its rules and questions name, those of the dose where it
 * gives one, and what all these are worked out from. No other fact is resolved, asked for, understood or shown.
 */
export function reachedFacts(pack: ReachingPack): FactRegistry {
  const known = reached.get(pack);
  if (known) return known;
  const wanted = new Set<FactId>([...always, ...(givesDose(pack.parameters) ? ofDose : [])]);
  for (const { when, earlier = [] } of pack.rules) {
    for (const condition of [when, ...earlier]) {
      for (const { fact } of comparisonsOf(condition, new Map())) wanted.add(fact);
    }
  }
  for (const { facts } of pack.questions) for (const fact of facts) wanted.add(fact);
  const behind = factsBehind([...wanted]);
  const ids = factIdsOf(pack.facts);
  const isAll = ids.every((id) => behind.has(id));
  const registry = isAll ? pack.facts : Object.fromEntries(Object.entries(pack.facts).filter(([id]) => behind.has(id)));
  reached.set(pack, registry);
  return registry;
}

/** True for a pack that tells a dose: it holds the usual one. */
export function givesDose(parameters: Pack['parameters']): boolean {
  return parameters.some(({ id }) => id === 'usualDoseGPerHa');
}
