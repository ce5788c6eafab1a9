import { outcomeOf } from '../../rules/outcome.ts';
import type { CompiledCondition } from '../../rules/types.ts';
import { type LeafChange, type LeafWorld, leafChange } from './leaf.ts';

/**
 * The least changes that turn a condition that is met into one that is not (`wanted` false), or the other way; [] where it is so
 * already, null where no change of a fact can do it. A member of an `any` that is unknown is left as it is: that is for asking.
 */
export function leastChanges(
  condition: CompiledCondition,
  wanted: boolean,
  world: LeafWorld,
): readonly LeafChange[] | null {
  const { facts } = world;
  const outcome = outcomeOf(condition, facts);
  if (outcome === (wanted ? 'met' : 'not-met')) return [];
  switch (condition.kind) {
    case 'comparison': {
      const change = leafChange(condition, wanted, world);
      return change && [change];
    }
    case 'not':
      return leastChanges(condition.member, !wanted, world);
    case 'rule':
      return leastChanges(condition.member, wanted, world);
    default: {
      const isAll = condition.kind === 'all';
      const members = condition.members.filter((member) => isAll || wanted || outcomeOf(member, facts) !== 'unknown');
      const ways = members.map((member) => leastChanges(member, wanted, world));
      return isAll === wanted ? together(ways) : cheapest(ways);
    }
  }
}

type Way = readonly LeafChange[] | null;

function together(ways: readonly Way[]): Way {
  const possible = ways.filter((way) => way !== null);
  return possible.length < ways.length ? null : possible.flat();
}

function cheapest(ways: readonly Way[]): Way {
  const possible = ways.filter((way) => way !== null);
  return possible.toSorted((a, b) => costOf(a) - costOf(b))[0] ?? null;
}

function costOf(way: readonly LeafChange[]): number {
  return way.reduce((total, { cost }) => total + cost, 0);
}
