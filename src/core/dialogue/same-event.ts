import canonicalize from 'canonicalize';
import { type ErrorReport, reportOf } from '../errors/coded-error.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import type { ConversationEvent } from './events.ts';

/** Seconds by which the clocks of device and server may differ before a time counts as lying in the future. */
export const clockSlackSeconds = 120;

/** True where two events have the same content; a clamped time counts as the time that the device gave. */
export function isSameEvent(a: ConversationEvent, b: ConversationEvent): boolean {
  return canonicalize(asGiven(a)) === canonicalize(asGiven(b));
}

function asGiven({ clampedFrom, ...event }: ConversationEvent): object {
  return { ...event, at: clampedFrom ?? event.at };
}

/** The refusal of an event whose id came before with other content. */
export function eventChanged({ id }: ConversationEvent): ErrorReport {
  return reportOf('EVENT_CHANGED', {
    expected: 'the content that this id came with first',
    came: `other content of ${id}`,
  });
}

/** The event with its time clamped to `now` where it lies more than two minutes beyond it. */
export function clampToNow(event: ConversationEvent, now: EpochSeconds | undefined): ConversationEvent {
  if (now === undefined || event.at <= now + clockSlackSeconds) return event;
  return { ...event, at: now, clampedFrom: event.clampedFrom ?? epochSeconds(event.at) };
}
