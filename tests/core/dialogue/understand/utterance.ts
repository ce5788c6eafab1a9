import type { FactId } from '../../../../src/core/facts/registry/index.ts';

/** One utterance of the table: the id of the open question, what is said, all that comes of it, what was last spoken of. */
export type Utterance = readonly [asked: string | null, say: string, meant: string, recent?: readonly FactId[]];
