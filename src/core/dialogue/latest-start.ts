import type { ConversationEvent, StartedEvent } from './events.ts';

/** How a conversation last began; undefined where it has not. */
export function latestStart(events: readonly ConversationEvent[]): StartedEvent | undefined {
  return events.findLast((event) => event.kind === 'started');
}
