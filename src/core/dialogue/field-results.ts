import { localDate } from '../facts/local-day.ts';
import type { Pack } from '../rules/pack-types.ts';
import type { StartedEvent } from './events.ts';
import { momentOf } from './note-down.ts';
import { standingVerdict } from './standing-verdict.ts';
import type { FieldResult, State } from './state.ts';

/** How the field of a conversation stands now; null for one's own field, which has no name. */
export function fieldResult(state: State, pack: Pack): FieldResult | null {
  const field = state.started?.field;
  if (!field || state.at === null) return null;
  return { id: field.id, name: field.name, at: state.at, given: givenNow(state, pack) };
}

/** What is kept of the answer that stands in a conversation, for its line among the fields; null where none stands. */
export function givenNow(state: State, pack: Pack): FieldResult['given'] {
  const last = state.at === null ? null : standingVerdict(state, pack, state.at);
  const given = last === null || last.is === 'stale' ? null : last.given.decision;
  return given && { verdict: given.verdict, slowest: given.slowest, validUntil: given.validUntil };
}

/** The fields of the same day, that left now last; the one that begins is not among them. */
export function fieldResults(state: State, event: StartedEvent, pack: Pack): readonly FieldResult[] {
  const left = fieldResult(state, pack);
  const day = localDate(momentOf({ ...state, started: event }, event), pack.zone);
  return [...state.fields.filter(({ id }) => id !== left?.id), ...(left ? [left] : [])].filter(
    ({ id, at }) => id !== event.field?.id && localDate(at, pack.zone) === day,
  );
}
