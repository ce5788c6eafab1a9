import { type ErrorReport, reportOf } from '../errors/coded-error.ts';
import type { DialogueContext, FoldContext } from './context.ts';
import { type Conversation, foldConversation } from './conversation.ts';
import { decisionFrom } from './decision.ts';
import { disagreement } from './events/evaluated.ts';
import type { ConversationEvent, Effect, EvaluatedEvent, VerdictGivenEvent } from './events.ts';
import { foldEvent, foldEvents } from './fold.ts';
import { insertEvent } from './order.ts';
import { clampToNow, eventChanged, isSameEvent } from './same-event.ts';
import { standingOf } from './standing.ts';
import type { State } from './state.ts';
import { verdictIdOf } from './tag.ts';
import { understand as understandText } from './understand/index.ts';
import { effectKey, wantedEffects } from './wanted-effects.ts';

/** What one event comes to. */
export interface Step {
  readonly conversation: Conversation;
  /** To be carried out by the caller; results come back as events. */
  readonly effects: readonly Effect[];
  /** Why the event was refused (EVENT_CHANGED, CONVERSATION_OTHER_RULES); null where it was taken or is there already. */
  readonly refused: ErrorReport | null;
}

/**
 * One more event: pure and synchronous. An event that is there already changes nothing; the same id with other content is
 * refused; an evaluation for facts that are no longer the present ones is dropped. Where both evaluators agree, the verdict
 * follows as an event of its own.
 */
export function step(conversation: Conversation, given: ConversationEvent, context: DialogueContext): Step {
  const there = conversation.events.find(({ id }) => id === given.id);
  if (there) return unchanged(conversation, isSameEvent(there, given) ? null : eventChanged(given));
  const foreign = otherRules(given, context);
  if (foreign) return unchanged(conversation, foreign);
  const event = afterLast(clampToNow(given, context.now), conversation);
  if (isStale(conversation.state, event, context)) return unchanged(conversation, null);
  const fold = foldContextOf(context);
  const taken = append(conversation, event, fold);
  const verdict = event.kind === 'evaluated' ? verdictAfter(taken, event, fold) : null;
  const next = verdict === null ? taken : append(taken, verdict, fold);
  return withEffects(next, event, context);
}

/** A conversation from stored events in any order, with the effects that are still to be carried out. */
export function openConversation(events: readonly ConversationEvent[], context: DialogueContext): Step {
  const conversation = foldConversation(events, foldContextOf(context));
  const effects = wantedEffects(conversation.state, context.pack);
  const waiting = effects.map((effect) => effectKey(effect, conversation.state));
  return { conversation: { ...conversation, waiting }, effects, refused: null };
}

function foldContextOf({ pack, understand = understandText }: DialogueContext): FoldContext {
  return { pack, understand };
}

function unchanged(conversation: Conversation, refused: ErrorReport | null): Step {
  return { conversation, effects: [], refused };
}

function otherRules(event: ConversationEvent, { pack }: DialogueContext): ErrorReport | null {
  if (event.kind !== 'started' || event.packHash === pack.hash) return null;
  return reportOf('CONVERSATION_OTHER_RULES', { expected: pack.hash, came: event.packHash });
}

function isStale(state: State, event: ConversationEvent, { pack }: DialogueContext): boolean {
  if (event.kind !== 'evaluated' && event.kind !== 'evaluation-failed') return false;
  const isDone = state.failures.has(event.tag) || state.verdicts.some(({ tag }) => tag === event.tag);
  return isDone || standingOf(state, pack)?.tag !== event.tag;
}

/** An evaluation never sorts before what it was asked for, however the clocks differ. */
function afterLast(event: ConversationEvent, { events }: Conversation): ConversationEvent {
  const last = events.at(-1);
  const isEvaluation = event.kind === 'evaluated' || event.kind === 'evaluation-failed';
  if (!isEvaluation || last === undefined || event.at >= last.at) return event;
  return { ...event, at: last.at, clampedFrom: event.clampedFrom ?? event.at };
}

function append(conversation: Conversation, event: ConversationEvent, context: FoldContext): Conversation {
  const events = insertEvent(conversation.events, event);
  const isLast = events.at(-1) === event;
  const state = isLast ? foldEvent(conversation.state, event, context) : foldEvents(events, context);
  return { ...conversation, events, state };
}

function verdictAfter(
  conversation: Conversation,
  event: EvaluatedEvent,
  { pack }: FoldContext,
): VerdictGivenEvent | null {
  const { state, events } = conversation;
  const standing = standingOf(state, pack);
  if (standing?.tag !== event.tag || disagreement(standing.trace, event) !== null) return null;
  const { compiled, facts, trace, at } = standing;
  const last = events.at(-1) ?? event;
  return {
    kind: 'verdict-given',
    id: verdictIdOf(event.tag),
    at: last.at,
    device: last.device,
    count: last.count,
    tag: event.tag,
    saw: events.map(({ id }) => id),
    decision: decisionFrom({
      pack,
      compiled,
      facts,
      trace,
      at,
      forecast: usedForecast(state, facts),
      language: state.language,
    }),
  };
}

function usedForecast({ forecast }: State, facts: Parameters<typeof decisionFrom>[0]['facts']) {
  const isUsed = Object.values(facts).some((fact) => fact.known && fact.source === 'forecast');
  return isUsed ? forecast : null;
}

function withEffects(conversation: Conversation, event: ConversationEvent, { pack }: DialogueContext): Step {
  const { state } = conversation;
  const wanted = wantedEffects(state, pack);
  const fresh = wanted.filter((effect) => !conversation.waiting.includes(effectKey(effect, state)));
  const waiting = wanted.map((effect) => effectKey(effect, state));
  return { conversation: { ...conversation, waiting }, effects: [...fresh, ...leaving(state, event)], refused: null };
}

const leavings = {
  'start-again': { kind: 'restart' },
  'another-field': { kind: 'choose-field' },
  stopped: { kind: 'leave' },
} as const satisfies Record<string, Effect>;

/** Start again, another field or stop, where the event that just came asks for it. */
function leaving({ notes }: State, event: ConversationEvent): Effect[] {
  return notes
    .filter((note) => note.event === event.id)
    .flatMap((note): Effect[] => {
      if (note.kind === 'next-field') return [{ kind: 'same-for', field: note.field }];
      return note.kind in leavings ? [leavings[note.kind as keyof typeof leavings]] : [];
    });
}
