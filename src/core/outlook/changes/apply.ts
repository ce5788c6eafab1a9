import { definitionIn, type FactRegistry } from '../../facts/registry/index.ts';
import { type ResolvedFacts, resolvedFact } from '../../facts/resolved.ts';
import type { Known, Origin } from '../../facts/types.ts';
import type { EpochSeconds } from '../../units/brands.ts';
import type { LeafChange } from './leaf.ts';

/** Facts with a change made; the changed fact counts as said at `at`. */
export function applyChange(
  facts: ResolvedFacts,
  change: Pick<LeafChange, 'fact' | 'how' | 'to'>,
  at: EpochSeconds,
  registry: FactRegistry,
): ResolvedFacts {
  return { ...facts, [change.fact]: changed(facts, registry, change, { source: 'said', at, goodUntil: null }) };
}

function changed(
  facts: ResolvedFacts,
  registry: FactRegistry,
  { fact: id, how, to }: Pick<LeafChange, 'fact' | 'how' | 'to'>,
  origin: Origin,
): Known {
  const { type, choices } = definitionIn(registry, id);
  if (typeof to === 'number') return { known: true, type: 'number', value: to, low: to, high: to, ...origin };
  if (type === 'date') return { known: true, type, iso: to, ...origin };
  if (type !== 'signs') return { known: true, type: 'choice', possible: [to], ...origin };
  const now = resolvedFact(facts, id);
  const signs = now.known && now.type === 'signs' ? now : { present: [], possible: choices ?? [] };
  const others = (list: readonly string[]) => list.filter((sign) => sign !== to);
  const kept = { present: others(signs.present), possible: others(signs.possible) };
  if (how === 'without') return { known: true, type, ...kept, ...origin };
  return { known: true, type, present: [...kept.present, to], possible: [...kept.possible, to], ...origin };
}
