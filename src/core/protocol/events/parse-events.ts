import type { ConversationEvent } from '../../dialogue/events.ts';
import { type ErrorReport, reportOf } from '../../errors/coded-error.ts';
import { nearestName } from '../../errors/nearest.ts';
import { reportIssue, shortText } from '../zod-report.ts';
import { eventSchemas } from './event-schema.ts';

/** Events as read, or why they are none. */
export type ParsedEvents =
  | { readonly ok: true; readonly events: readonly ConversationEvent[] }
  | { readonly ok: false; readonly error: ErrorReport };

/**
 * Reads the body of a hand-over, `{ events: [...] }`. Never throws: EVENTS_UNREADABLE where it is not of that form or an event is
 * of no kind that there is, MESSAGE_FIELD_WRONG with a JSON Pointer where a field is not as it should be.
 */
export function parseEvents(body: unknown): ParsedEvents {
  const list: unknown = typeof body === 'object' && body !== null && 'events' in body ? body.events : undefined;
  if (!Array.isArray(list)) return refuse('an object with a list named events', shortText(body));
  const events: ConversationEvent[] = [];
  for (const [index, one] of (list as unknown[]).entries()) {
    const kind = typeof one === 'object' && one !== null && 'kind' in one ? one.kind : undefined;
    const schema =
      typeof kind === 'string' && Object.hasOwn(eventSchemas, kind)
        ? eventSchemas[kind as ConversationEvent['kind']]
        : undefined;
    if (!schema) {
      const names = Object.keys(eventSchemas);
      const nearest = typeof kind === 'string' ? nearestName(kind.slice(0, 64), names) : undefined;
      return refuse(`an event whose kind is one of ${names.join(', ')}`, shortText(kind), index, nearest);
    }
    const result = schema.safeParse(one);
    if (!result.success) {
      const report = reportIssue(result.error.issues, one);
      return { ok: false, error: { ...report, pointer: `/events/${index}${report.pointer ?? ''}` } };
    }
    events.push(result.data);
  }
  return { ok: true, events };
}

function refuse(expected: string, came: string, index?: number, nearest?: string): ParsedEvents {
  return {
    ok: false,
    error: reportOf('EVENTS_UNREADABLE', {
      expected,
      came,
      ...(index === undefined ? {} : { pointer: `/events/${index}/kind` }),
      ...(nearest ? { nearest } : {}),
    }),
  };
}
