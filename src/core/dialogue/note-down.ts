import { epochSeconds } from '../units/brands.ts';
import type { EventStamp } from './events.ts';
import type { NoteBody } from './notes.ts';
import { keepStanding } from './standing.ts';
import type { State } from './state.ts';

/** The state with notes of an event added. */
export function note(state: State, event: EventStamp, ...bodies: readonly NoteBody[]): State {
  if (bodies.length === 0) return state;
  const notes = [...state.notes, ...bodies.map((body) => ({ ...body, event: event.id }))];
  return keepStanding(state, { ...state, notes });
}

/** The state with its moment moved to an event that bears on facts, the conversation's shift added. */
export function moveTo(state: State, event: EventStamp): State {
  return { ...state, at: momentOf(state, event) };
}

/** The moment of an event in the conversation's own time. */
export function momentOf({ started }: State, event: EventStamp) {
  return epochSeconds(event.at + (started?.shiftSeconds ?? 0));
}
