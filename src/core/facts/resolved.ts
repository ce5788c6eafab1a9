import type { FactId } from './registry/index.ts';
import type { Observation, Resolved } from './types.ts';

/** Facts as the rules see them at one moment; an absent key counts as unknown, not asked. */
export type ResolvedFacts = Readonly<Record<FactId, Resolved>>;

/** An observation of a registered fact. */
export type FactObservation = Observation<FactId>;

/** The resolved value of a fact, unknown (not asked) where there is none. */
export function resolvedFact(facts: ResolvedFacts, id: FactId): Resolved {
  return facts[id] ?? { known: false, reason: 'not-asked' };
}
