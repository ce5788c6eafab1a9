import type { UndoneEvent } from '../events.ts';
import type { State } from '../state.ts';
import { takeBack } from '../take-back.ts';

/** Something said or answered is taken back. */
export function applyUndone(state: State, event: UndoneEvent): State {
  return takeBack(state, event, event.of);
}
