import type { FoldContext } from '../context.ts';
import type { RequestedEvent } from '../events.ts';
import { note } from '../note-down.ts';
import { request } from '../requests.ts';
import type { State } from '../state.ts';

/** A person pressed a button that is no answer. */
export function applyRequested(state: State, event: RequestedEvent, context: FoldContext): State {
  if (event.request === 'language') return request(state, event, event.request, context);
  return request(note(state, event, { kind: 'requested', request: event.request }), event, event.request, context);
}
