import type { ResolvedFacts } from '../facts/resolved.ts';
import type { Pack, PackCase } from '../rules/pack-types.ts';
import { type ResolvedCase, resolveCase } from '../rules/resolve-case.ts';
import type { Sides } from './types.ts';

/** A case as both rule sets see it. */
export interface CaseOnBoth {
  readonly day: string;
  readonly a: ResolvedFacts;
  readonly b: ResolvedFacts;
}

/** Resolves the facts of a case for both, each with the facts that it knows. Throws as `resolveCase` does. */
export function resolveOnBoth(one: PackCase, { a, b }: Sides): CaseOnBoth {
  const ofA = resolveKnown(one, a.pack);
  return { day: ofA.day, a: ofA.facts, b: resolveKnown(one, b.pack).facts };
}

/** A case without the facts that a pack does not know, which only another pack has of its own. */
function resolveKnown(one: PackCase, pack: Pack): ResolvedCase {
  const known = Object.entries(one.facts).filter(([id]) => pack.facts[id] !== undefined);
  return resolveCase({ ...one, facts: Object.fromEntries(known) }, pack);
}
