import { wayOf } from './judge-pair.ts';
import type { Transition, VerdictPair } from './types.ts';

/** Counts verdicts by what they were and what they become. */
export interface Tally {
  readonly add: (pair: VerdictPair) => void;
  /** Each kind of transition that there was, in a fixed order, unchanged ones too. */
  readonly transitions: () => readonly Transition[];
}

const verdicts = ['spray-today', 'wait', 'do-not-spray'] as const;

/** An empty count. */
export function newTally(): Tally {
  const counts = new Map<string, number>();
  const keyOf = ({ a, b }: VerdictPair) => `${a} ${b}`;
  return {
    add: (pair) => {
      counts.set(keyOf(pair), (counts.get(keyOf(pair)) ?? 0) + 1);
    },
    transitions: () =>
      verdicts
        .flatMap((a) => verdicts.map((b) => ({ a, b })))
        .map((pair) => ({ ...pair, way: wayOf(pair), count: counts.get(keyOf(pair)) ?? 0 }))
        .filter(({ count }) => count > 0),
  };
}

/** How many verdicts change, of all that were counted. */
export function changedOf(transitions: readonly Transition[]): { readonly all: number; readonly changed: number } {
  const sum = (ones: readonly Transition[]) => ones.reduce((total, { count }) => total + count, 0);
  return { all: sum(transitions), changed: sum(transitions.filter(({ way }) => way !== 'same')) };
}
