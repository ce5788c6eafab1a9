import type { VerdictGivenEvent } from '../events.ts';
import { note } from '../note-down.ts';
import type { State } from '../state.ts';

/** A verdict was given; it is kept as it was given. */
export function applyVerdictGiven(state: State, event: VerdictGivenEvent): State {
  const verdicts = [...state.verdicts, event];
  return note({ ...state, verdicts, wantsVerdict: false }, event, { kind: 'verdict', index: state.verdicts.length });
}
