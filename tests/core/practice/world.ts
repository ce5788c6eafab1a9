import { definitionsOf } from '../../../src/core/facts/registry/index.ts';
import type { PracticeWorld } from '../../../src/core/practice/types.ts';
import { shipped } from '../../cases/shipped-pack.ts';

/** Practice over the shipped pack. */
export const world: PracticeWorld = {
  pack: shipped.pack,
  plain: shipped.pack.plainDay ?? null,
  definitionOf: definitionsOf(shipped.pack.facts),
};
