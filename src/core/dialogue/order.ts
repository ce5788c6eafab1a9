import type { ConversationEvent } from './events.ts';

/** Order of a conversation: time said, device, count; a verdict after what it answers; then id, so that it is total. */
export function compareEvents(a: ConversationEvent, b: ConversationEvent): number {
  return (
    a.at - b.at ||
    byText(a.device, b.device) ||
    a.count - b.count ||
    Number(a.kind === 'verdict-given') - Number(b.kind === 'verdict-given') ||
    byText(a.id, b.id)
  );
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** The events with one more, in order. */
export function insertEvent(
  events: readonly ConversationEvent[],
  event: ConversationEvent,
): readonly ConversationEvent[] {
  const before = events.findLastIndex((one) => compareEvents(one, event) <= 0) + 1;
  return events.toSpliced(before, 0, event);
}
