import type {
  CarriedOver,
  ConversationEvent,
  EventStamp,
  FieldName,
  FieldProfile,
  StartedEvent,
} from '../../core/dialogue/events.ts';
import type { ClientMessageOf, EventMessage } from '../../core/protocol/messages.ts';
import { epochSeconds } from '../../core/units/brands.ts';
import type { OfferedField, PackName } from './types.ts';

/** What a client message turns into an event with. */
export interface EventContext {
  /** Id of the question now open. */
  readonly asked: string | null;
  readonly beginning: (start: ClientMessageOf<'start'>) => Beginning;
}

/** How a conversation begins. */
export interface Beginning {
  /** Field named by a start; null for an own one. */
  readonly field: OfferedField | null;
  readonly pack: PackName;
  readonly more?: NextField;
}

/** How a conversation about a next field begins: what is carried over and on which day, and the fields on offer. */
export interface NextField {
  readonly carried?: CarriedOver | null;
  /** The shift of the conversation before: the next field is looked at on the same day. */
  readonly shiftSeconds?: number;
  readonly fields?: readonly FieldName[];
}

/** The event that a client message stands for. */
export function eventOfMessage(message: EventMessage, context: EventContext): ConversationEvent {
  const { id, device, count } = message;
  const stamp = { id, device, count, at: epochSeconds(message.at) };
  switch (message.type) {
    case 'start':
      return startedEvent(stamp, context.beginning(message), message.language);
    case 'say':
      return { kind: 'said', ...stamp, text: message.text, asked: context.asked, ...spoken(message.language) };
    case 'answer': {
      const { question, choices, numbers, doesNotKnow, also } = message;
      const given = { question, choices, numbers, doesNotKnow };
      return { kind: 'answered', ...stamp, ...given, ...(also ? { also } : {}) };
    }
    case 'request':
      return {
        kind: 'requested',
        ...stamp,
        request: message.request,
        ...(message.fact === undefined ? {} : { fact: message.fact }),
        ...spoken(message.language),
      };
    case 'undo':
      return { kind: 'undone', ...stamp, of: message.of };
  }
}

/** A language as an event keeps it: not at all where none was told. */
function spoken(language: string | undefined): { readonly language?: string } {
  return language === undefined ? {} : { language };
}

/** A field with an invented day moves the whole conversation there, to the second, counted from when it was begun. */
export function startedEvent(
  stamp: EventStamp,
  { field, pack, more = {} }: Beginning,
  language?: string,
): StartedEvent {
  const shift = field?.inventedNow == null ? 0 : Math.ceil(field.inventedNow - stamp.at);
  const shiftSeconds = more.shiftSeconds ?? shift;
  return {
    kind: 'started',
    ...stamp,
    packId: pack.id,
    packHash: pack.hash,
    field: field && seenBy(field.profile, stamp.at + shiftSeconds),
    shiftSeconds,
    ...spoken(language),
    ...(more.carried ? { carried: more.carried } : {}),
    ...(more.fields && more.fields.length > 0 ? { fields: more.fields } : {}),
  };
}

/** A profile without what was only seen after a moment: the next field may be looked at on an earlier invented day than its own. */
function seenBy(profile: FieldProfile, at: number): FieldProfile {
  return { ...profile, observations: profile.observations.filter((one) => one.at <= at) };
}
