import type { FoldContext } from './context.ts';
import type { ConversationEvent } from './events.ts';
import { foldEvents } from './fold.ts';
import { compareEvents } from './order.ts';
import { emptyState, type State } from './state.ts';

/** A conversation: its events in order (time said, device, count), their fold, and the effects already asked for. */
export interface Conversation {
  readonly events: readonly ConversationEvent[];
  readonly state: State;
  /** Keys of the effects that were asked for and have not come back. */
  readonly waiting: readonly string[];
}

/** A conversation in which nothing has happened. */
export const emptyConversation: Conversation = { events: [], state: emptyState, waiting: [] };

/** A conversation from stored events in any order; `wantedEffects` of its state tells what is still to be carried out. */
export function foldConversation(events: readonly ConversationEvent[], context: FoldContext): Conversation {
  const byId = new Map(events.map((event) => [event.id, event]));
  const ordered = [...byId.values()].sort(compareEvents);
  return { events: ordered, state: foldEvents(ordered, context), waiting: [] };
}
