import { goodUntilOf } from '../facts/ageing.ts';
import { definitionIn, type FactId, type FactRegistry } from '../facts/registry/index.ts';
import type { Reading } from '../facts/types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { Parameters } from '../units/parameter.ts';
import { fieldDevice, type StateObservation } from './state.ts';

/** What tells whether an observation is still good. */
export interface ConflictInput {
  readonly observations: readonly StateObservation[];
  readonly at: EpochSeconds;
  readonly zone: string;
  readonly parameters: Parameters;
  readonly registry: FactRegistry;
  /** Facts that a stop or hold reads. */
  readonly matters: ReadonlySet<FactId>;
}

/**
 * Facts on which two devices gave still good answers that contradict each other, with those answers. An answer given while
 * they contradict settles it. The field profile and "does not know" contradict nobody.
 */
export function conflictsOf(input: ConflictInput): ReadonlyMap<FactId, readonly StateObservation[]> {
  const byFact = new Map<FactId, StateObservation[]>();
  for (const one of input.observations) {
    if (one.device === fieldDevice || one.reading.type === 'does-not-know' || !input.matters.has(one.fact)) continue;
    byFact.set(one.fact, [...(byFact.get(one.fact) ?? []), one]);
  }
  const conflicts = new Map<FactId, readonly StateObservation[]>();
  for (const [fact, observations] of byFact) {
    const standing = standingOnes(observations, input);
    if (contradict(standing)) conflicts.set(fact, standing);
  }
  return conflicts;
}

function standingOnes(observations: readonly StateObservation[], input: ConflictInput): StateObservation[] {
  let live = new Map<string, StateObservation>();
  for (const one of observations) {
    if (contradict([...live.values()])) live = new Map();
    live.set(one.device, one);
  }
  return [...live.values()].filter(({ fact, at }) => {
    const ageing = { zone: input.zone, parameters: input.parameters, forecast: null };
    return goodUntilOf(definitionIn(input.registry, fact).goodFor, at, ageing) > input.at;
  });
}

function contradict(observations: readonly StateObservation[]): boolean {
  return observations.some((a, index) => observations.slice(index + 1).some((b) => differ(a.reading, b.reading)));
}

function differ(a: Reading, b: Reading): boolean {
  if (a.type === 'number' && b.type === 'number') return a.value !== b.value;
  if (a.type === 'choice' && b.type === 'choice') return !sameSet(a.possible, b.possible);
  if (a.type === 'signs' && b.type === 'signs') return deniesSign(a, b) || deniesSign(b, a);
  return false;
}

function deniesSign(named: Extract<Reading, { type: 'signs' }>, denying: Extract<Reading, { type: 'signs' }>): boolean {
  return named.present.some(
    (sign) => denying.absent.includes(sign) || (denying.complete && !denying.present.includes(sign)),
  );
}

function sameSet(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((one) => b.includes(one));
}
