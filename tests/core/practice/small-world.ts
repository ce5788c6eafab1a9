import { definitionsOf } from '../../../src/core/facts/registry/index.ts';
import type { PracticeWorld } from '../../../src/core/practice/types.ts';
import type { Pack } from '../../../src/core/rules/pack-types.ts';
import { good, smallPack } from '../compare/small-pack.ts';

/** The moment of the invented day on which all is well. */
export const smallAt = '2026-11-06T12:00:00Z';

/** Practice over the small pack, from that day. */
export function smallWorld(change: Partial<Pack> = {}): PracticeWorld {
  const pack = { ...smallPack(), ...change };
  return { pack, plain: { facts: good, at: smallAt }, definitionOf: definitionsOf(pack.facts) };
}
