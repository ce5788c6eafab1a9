import { judgePlausible } from '../facts/plausible.ts';
import { definitionIn } from '../facts/registry/index.ts';
import { resolveFacts } from '../facts/resolve.ts';
import { evaluateReference } from '../rules/reference.ts';
import { reasonsOf } from '../verdict/reasons.ts';
import { verdictWord } from '../verdict/verdict-of.ts';
import type { FoldContext } from './context.ts';
import type { SaidEvent } from './events.ts';
import { momentOf, note } from './note-down.ts';
import { compiledFor, standingOf } from './standing.ts';
import type { State } from './state.ts';
import { observationOf } from './take-readings.ts';
import type { UnderstandContext } from './understand/types.ts';

/**
 * What the rules would say if something were otherwise: only a note comes of it, no fact and no verdict. Judged by the
 * synchronous evaluator on what stands, with the supposed values in place.
 */
export function suppose(
  state: State,
  event: SaidEvent,
  text: string,
  told: UnderstandContext,
  { pack, understand }: FoldContext,
): State {
  const standing = standingOf(state, pack);
  const { readings, refused } = understand(text, told);
  if (refused[0]) return note(state, event, { kind: 'error', error: refused[0] });
  if (standing === null || readings.length === 0) {
    return note(state, event, { kind: 'not-understood', pieces: [event.text.trim()] });
  }
  for (const { fact, reading } of readings) {
    const judged = judgePlausible(fact, definitionIn(pack.facts, fact), reading);
    if (typeof judged === 'object') return note(state, event, { kind: 'error', error: judged });
  }
  const at = momentOf(state, event);
  const compiled = compiledFor(pack, at);
  const { parameters, registry } = compiled;
  const supposed = readings.map((one) => ({
    ...observationOf(state, event, { ...one, agoHours: 0 }, registry),
    source: 'said' as const,
  }));
  const facts = resolveFacts({
    observations: [...state.observations.filter(({ fact }) => !standing.conflicts.has(fact)), ...supposed],
    forecast: state.forecast,
    at,
    zone: pack.zone,
    parameters,
    registry,
  });
  const trace = evaluateReference(compiled, facts);
  const reasons = reasonsOf(trace);
  const met = reasons.filter(({ outcome }) => outcome === 'met');
  return note(state, event, {
    kind: 'supposed',
    readings: readings.map(({ fact, reading }) => ({ fact, reading })),
    verdict: verdictWord(trace),
    outcome: met.length > 0 ? 'met' : 'unknown',
    rules: (met.length > 0 ? met : reasons).map(({ rule }) => rule),
  });
}
