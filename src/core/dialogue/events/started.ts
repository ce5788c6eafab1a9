import type { FoldContext } from '../context.ts';
import type { StartedEvent } from '../events.ts';
import { fieldResults } from '../field-results.ts';
import { moveTo, note } from '../note-down.ts';
import type { Note } from '../notes.ts';
import { emptyState, fieldDevice, type State } from '../state.ts';

/** A conversation begins: all that was told before is put aside, the log stays; the field's profile is what is known. */
export function applyStarted(state: State, event: StartedEvent, { pack }: FoldContext): State {
  const observations = (event.field?.observations ?? []).map((one) => ({
    ...one,
    event: event.id,
    device: fieldDevice,
    doubtful: false,
    quote: null,
  }));
  const carried = (event.carried?.observations ?? []).map((one) => ({
    ...one,
    event: event.id,
    device: fieldDevice,
    carriedFrom: event.carried?.from.name ?? '',
  }));
  const fresh: State = {
    ...emptyState,
    started: event,
    language: event.language ?? state.language,
    observations: [...observations, ...carried],
    notes: state.notes.map((one) => pastNote(one, state)),
    undone: state.undone,
    fields: fieldResults(state, event, pack),
  };
  const said = event.carried ? [{ kind: 'carried', carried: event.carried } as const] : [];
  return moveTo(note(fresh, event, { kind: 'hello', field: event.field }, ...said), event);
}

/** A verdict of a conversation that was put aside is no longer among the verdicts that notes point to: its sentence is kept. */
function pastNote(note: Note, { verdicts }: State): Note {
  if (note.kind !== 'verdict') return note;
  return { kind: 'past-verdict', event: note.event, headline: verdicts[note.index]?.decision.headline ?? '' };
}
