import type { ConversationEvent } from '../../core/dialogue/events.ts';
import { compareEvents } from '../../core/dialogue/order.ts';
import { clampToNow, eventChanged, isSameEvent } from '../../core/dialogue/same-event.ts';
import type { ErrorReport } from '../../core/errors/coded-error.ts';
import type { EpochSeconds } from '../../core/units/brands.ts';
import type { HandedOver } from './types.ts';

/** Events that are new, with what came of every one handed over. */
export interface SortedHandOver extends HandedOver {
  readonly fresh: readonly ConversationEvent[];
}

/**
 * Sorts events that another device hands over into new ones, known ones and refused ones, in the order in which they were said. A
 * verdict on the same facts is known, whoever gave it first: it is never rewritten. After a start that is refused everything is,
 * since it would be taken for talk about another field.
 */
export function sortHandOver(
  handed: readonly ConversationEvent[],
  there: readonly ConversationEvent[],
  { now, refuse }: { readonly now: EpochSeconds; readonly refuse: (event: ConversationEvent) => ErrorReport | null },
): SortedHandOver {
  const known = new Map(there.map((event) => [event.id, event]));
  const fresh: ConversationEvent[] = [];
  const already: string[] = [];
  const refused: { id: string; error: ErrorReport }[] = [];
  let barred: ErrorReport | null = null;
  for (const given of [...handed].sort(compareEvents)) {
    const event = clampToNow(given, now);
    const before = known.get(event.id);
    const isKnownVerdict =
      before?.kind === 'verdict-given' && event.kind === 'verdict-given' && before.tag === event.tag;
    if (before !== undefined && (isKnownVerdict || isSameEvent(before, event))) {
      already.push(event.id);
      continue;
    }
    const error: ErrorReport | null = before === undefined ? (barred ?? refuse(event)) : eventChanged(event);
    if (error === null) {
      fresh.push(event);
      known.set(event.id, event);
    } else {
      refused.push({ id: event.id, error });
      if (event.kind === 'started') barred = error;
    }
  }
  return { fresh, taken: fresh.map(({ id }) => id), already, refused };
}
