import { definitionIn, definitionsOf, type FactId, isFactOf } from '../facts/registry/index.ts';
import { resolvedFact } from '../facts/resolved.ts';
import { labelOf } from '../words/facts.ts';
import { describeSource } from '../words/sources.ts';
import { describeValue } from '../words/values.ts';
import { questionOfFact } from './open-question.ts';
import { standingOf } from './standing.ts';
import type { State, StateObservation } from './state.ts';
import { sourceTimes, type ViewContext } from './view-context.ts';
import type { SaidView } from './view-types.ts';

/** What was told, one line a fact, in the order in which the facts were first told, with the event to undo. */
export function saidViews(state: State, { pack, now, words }: ViewContext): SaidView[] {
  const standing = standingOf(state, pack);
  if (standing === null) return [];
  const newest = new Map<FactId, StateObservation>();
  for (const one of state.observations) newest.set(one.fact, one);
  return [...newest]
    .filter(([fact]) => isFactOf(standing.compiled.registry, fact))
    .map(([fact, { event, carriedFrom }]) => {
      const definition = definitionIn(pack.facts, fact);
      const resolved = resolvedFact(standing.facts, fact);
      const from = describeSource(resolved, sourceTimes(state, now), words);
      return {
        fact,
        label: labelOf(fact, definitionsOf(pack.facts), words),
        value: describeValue(definition, resolved, words),
        from: carriedFrom === undefined ? from : words.asking.carriedFrom(carriedFrom, from),
        undo: event === state.started?.id ? null : event,
        canChange: questionOfFact(fact, pack) !== null,
      };
    });
}
