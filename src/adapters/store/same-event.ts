import type { ConversationEvent } from '../../core/dialogue/events.ts';

/** True where two events have the same content, whatever the order of their keys. */
export function isSameEvent(a: ConversationEvent, b: ConversationEvent): boolean {
  return isSame(a, b);
}

function isSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every(
    (key) => Object.hasOwn(b, key) && isSame((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]),
  );
}
