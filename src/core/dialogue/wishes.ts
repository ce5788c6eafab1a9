import type { Pack } from '../rules/pack-types.ts';
import { verdictOf } from '../verdict/verdict-of.ts';
import { askingOrder } from './asking-order.ts';
import type { EventStamp, SaidEvent } from './events.ts';
import { note } from './note-down.ts';
import type { AskBack } from './notes.ts';
import { standingOf } from './standing.ts';
import type { State } from './state.ts';
import { askedField, askedTerm, isNextField } from './understand/wishes.ts';

/** Explains the trade term that a text asks about; says so where the glossary has none. */
export function explain(state: State, event: SaidEvent, { glossary }: Pack): State {
  const asked = askedTerm(event.text, glossary);
  if (asked === null) return note(state, event, { kind: 'nothing-found' });
  if ('term' in asked) return note(state, event, { kind: 'explained', term: asked.term.id });
  return note(state, event, { kind: 'not-explained', words: asked.words });
}

/**
 * Asks whoever holds the conversation to begin about the next field, with what holds for the farm. A text names it; without one, or
 * where it names none on offer, it is the next on offer that was not looked at today.
 */
export function goToNext(state: State, event: EventStamp, text: string | null): State {
  const fields = state.started?.fields ?? [];
  const named = text === null ? null : (askedField(text, fields) ?? null);
  const seen = new Set([state.started?.field?.id, ...state.fields.map(({ id }) => id)]);
  const unseen = text === null || isNextField(text) ? fields.find(({ id }) => !seen.has(id))?.id : undefined;
  return note(state, event, { kind: 'next-field', field: named ?? unseen ?? null });
}

/** What the person wants to know of the answer: why not, when, or what is needed; with the rules on what is known now. */
export function askBack(state: State, event: EventStamp, ask: AskBack, pack: Pack): State {
  const standing = standingOf(state, pack);
  if (standing === null) return note(state, event, { kind: 'no-question' });
  const { trace, facts, at } = standing;
  const given = state.verdicts.findLast(({ tag }) => tag === standing.tag)?.decision ?? null;
  return note(state, event, { kind: 'asked-back', ask, judged: verdictOf(trace, facts, askingOrder(pack)), at, given });
}
