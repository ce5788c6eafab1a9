import type { FoldContext } from './context.ts';
import { eventTable } from './events/index.ts';
import type { ConversationEvent } from './events.ts';
import { note } from './note-down.ts';
import { openQuestion, questionNote } from './open-question.ts';
import { keepStanding } from './standing.ts';
import { emptyState, type State } from './state.ts';

/** The state after one more event, in order; a question newly put is noted. Before the start nothing counts. */
export function foldEvent(before: State, event: ConversationEvent, context: FoldContext): State {
  if (before.started === null && event.kind !== 'started') {
    return event.kind === 'undone' ? { ...before, undone: new Set([...before.undone, event.of]) } : before;
  }
  const apply = eventTable[event.kind] as (state: State, event: ConversationEvent, context: FoldContext) => State;
  const clamped =
    event.clampedFrom === undefined || event.kind.startsWith('evaluat')
      ? []
      : [{ kind: 'clamped', at: event.at } as const];
  return putQuestion(apply(note(before, event, ...clamped), event, context), event, context);
}

/** The state of events given in order. */
export function foldEvents(events: readonly ConversationEvent[], context: FoldContext): State {
  return events.reduce((state, event) => foldEvent(state, event, context), emptyState);
}

function putQuestion(state: State, event: ConversationEvent, { pack }: FoldContext): State {
  const open = openQuestion(state, pack);
  if (open === null) return state.asked === null ? state : keepStanding(state, { ...state, asked: null });
  if (open.id === state.asked) return state;
  const put = note(state, event, { kind: 'question', text: questionNote(open, state, pack) });
  return keepStanding(put, { ...put, asked: open.id });
}
