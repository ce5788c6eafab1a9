import type { EvaluationFailedEvent } from '../events.ts';
import { note } from '../note-down.ts';
import type { State } from '../state.ts';

/** The engine's run failed: said; no verdict is given for this tag. */
export function applyEvaluationFailed(state: State, event: EvaluationFailedEvent): State {
  const failures = new Map([...state.failures, [event.tag, event.error]]);
  return note({ ...state, failures }, event, { kind: 'error', error: event.error });
}
