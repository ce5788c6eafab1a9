import type { EventStamp } from './events.ts';
import { moveTo, note } from './note-down.ts';
import type { State } from './state.ts';

/** Takes back all that an event told; the log keeps what was said. Says so where it told nothing. */
export function takeBack(state: State, event: EventStamp, of: string): State {
  const told = [...state.observations, ...state.unusual].filter((one) => one.event === of);
  const undone = new Set([...state.undone, of]);
  if (told.length === 0 && !state.answered.some((one) => one.event === of)) {
    return note({ ...state, undone }, event, { kind: 'nothing-to-undo' });
  }
  const without: State = {
    ...state,
    undone,
    observations: state.observations.filter((one) => one.event !== of),
    unusual: state.unusual.filter((one) => one.event !== of),
    answered: state.answered.filter((one) => one.event !== of),
  };
  const readings = told.map(({ fact, reading }) => ({ fact, reading }));
  return moveTo(note(without, event, { kind: 'undone', readings }), event);
}

/** The last event that told something, or null; what came with the field is not undone by "undo". */
export function lastTelling(state: State): string | null {
  const started = state.started?.id;
  const events = [...state.observations, ...state.unusual].map((one) => one.event).filter((id) => id !== started);
  return events.at(-1) ?? null;
}
