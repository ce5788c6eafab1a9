import { type ErrorReport, LoamwardError } from '../../errors/coded-error.ts';
import { requireAgreement } from '../../rules/evaluate-checked.ts';
import type { Trace } from '../../rules/trace-types.ts';
import type { FoldContext } from '../context.ts';
import type { EvaluatedEvent } from '../events.ts';
import { note } from '../note-down.ts';
import { standingOf } from '../standing.ts';
import type { State } from '../state.ts';

/** The engine's answer: where it disagrees with the reference on any rule, no verdict is given for this tag. */
export function applyEvaluated(state: State, event: EvaluatedEvent, { pack }: FoldContext): State {
  const standing = standingOf(state, pack);
  if (standing?.tag !== event.tag) return state;
  const report = disagreement(standing.trace, event);
  if (report === null) return state;
  const failures = new Map([...state.failures, [event.tag, report]]);
  return note({ ...state, failures }, event, { kind: 'error', error: report });
}

/** Where the engine's outcomes are not those of the trace, rule by rule; null where they are. */
export function disagreement(trace: Trace, { outcomes }: EvaluatedEvent): ErrorReport | null {
  try {
    requireAgreement(trace, new Map(Object.entries(outcomes)));
    return null;
  } catch (error) {
    if (error instanceof LoamwardError) return error.toJSON();
    throw error;
  }
}
