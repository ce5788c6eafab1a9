import type { ConversationEvent, EventStamp, StartedEvent } from '../../core/dialogue/events.ts';
import type { EventMessage } from '../../core/protocol/messages.ts';
import { epochSeconds } from '../../core/units/brands.ts';
import type { OfferedField } from './types.ts';

/** What a client message turns into an event with. */
export interface EventContext {
  /** Id of the question now open. */
  readonly asked: string | null;
  /** Field named by a start; null for an own one. */
  readonly field: OfferedField | null;
  readonly pack: { readonly id: string; readonly hash: string };
}

/** The event that a client message stands for. */
export function eventOfMessage(message: EventMessage, context: EventContext): ConversationEvent {
  const { id, device, count } = message;
  const stamp = { id, device, count, at: epochSeconds(message.at) };
  switch (message.type) {
    case 'start':
      return startedEvent(stamp, context);
    case 'say':
      return { kind: 'said', ...stamp, text: message.text, asked: context.asked };
    case 'answer': {
      const { question, choices, numbers, doesNotKnow } = message;
      return { kind: 'answered', ...stamp, question, choices, numbers, doesNotKnow };
    }
    case 'request':
      return { kind: 'requested', ...stamp, request: message.request };
    case 'undo':
      return { kind: 'undone', ...stamp, of: message.of };
  }
}

/** A field with an invented day moves the whole conversation there, to the second, counted from when it was begun. */
export function startedEvent(stamp: EventStamp, { field, pack }: Pick<EventContext, 'field' | 'pack'>): StartedEvent {
  const shiftSeconds = field?.inventedNow == null ? 0 : Math.ceil(field.inventedNow - stamp.at);
  return {
    kind: 'started',
    ...stamp,
    packId: pack.id,
    packHash: pack.hash,
    field: field?.profile ?? null,
    shiftSeconds,
  };
}
