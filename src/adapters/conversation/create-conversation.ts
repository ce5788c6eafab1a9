import type { ConversationEvent, Effect, EventStamp, StartedEvent } from '../../core/dialogue/events.ts';
import { latestStart } from '../../core/dialogue/latest-start.ts';
import type { ConversationView } from '../../core/dialogue/view-types.ts';
import { codedError, type ErrorReport, isLoamwardError, reportOf } from '../../core/errors/coded-error.ts';
import type { ClientMessageOf, EventMessage } from '../../core/protocol/messages.ts';
import { type EpochSeconds, epochSeconds } from '../../core/units/brands.ts';
import { type CarriedEffect, carryOut } from './carry-out.ts';
import { type Beginning, eventOfMessage, type NextField, startedEvent } from './event-of-message.ts';
import { sortHandOver } from './hand-over.ts';
import { offeredField, requireField } from './offered-fields.ts';
import { fieldsFor } from './offers.ts';
import { otherTreatment, packToStart } from './treatments.ts';
import type {
  ConversationListener,
  ConversationMeans,
  ConversationState,
  DialogueStep,
  HandedOver,
  OfferedField,
  PackName,
  RunningConversation,
} from './types.ts';

/** Device name in the stamps of events that the runner itself makes, where none is given. */
const runnerDevice = 'runner';

/** What the runner adds comes after all that it came of, also where a device's clock is ahead or the same to the second. */
const tick = 0.001;

/**
 * Holds one conversation: turns messages into events, applies them one after another, carries out the effects and feeds their
 * results back. With `restored` it goes on from kept events, and asks again for what was still under way.
 */
export function createConversation<C extends ConversationState>(
  means: ConversationMeans<C>,
  restored: readonly ConversationEvent[] = [],
): RunningConversation {
  const { dialogue, clock, fields, device = runnerDevice } = means;
  const opened = dialogue.open(restored, clock.now());
  let state = opened.conversation;
  let count = restored.reduce((most, each) => (each.device === device ? Math.max(most, each.count) : most), 0);
  const listeners = new Set<ConversationListener>();
  const running = new Set<Promise<void>>();
  let turn: Promise<unknown> = Promise.resolve();

  const stamp = (): EventStamp => {
    count += 1;
    const at = Math.max(clock.now(), (state.events.at(-1)?.at ?? 0) + tick);
    return { id: means.newId(), at: epochSeconds(at), device, count };
  };
  const started = (): StartedEvent | undefined => latestStart(state.events);
  let shown: { readonly state: C; readonly view: ConversationView } | null = null;
  const view = (): ConversationView | null => {
    if (!started()) return null;
    shown = { state, view: dialogue.viewOf(state, clock.now()) };
    return shown.view;
  };
  /** The question open now: it hangs on the state alone, so the last view of this state tells it. */
  const openQuestion = (): string | null => (shown?.state === state ? shown.view : view())?.question?.id ?? null;
  const tell = (say: (listener: ConversationListener) => void): void => {
    for (const listener of [...listeners]) say(listener);
  };
  const tellView = (): void => {
    const now = listeners.size > 0 ? view() : null;
    if (now) tell((listener) => listener.onView(now));
  };
  /** Events are applied strictly one after another, however long keeping one takes. */
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const mine = turn.then(work);
    turn = mine.catch(() => {});
    return mine;
  };
  const apply = async (event: ConversationEvent): Promise<ErrorReport | null> => {
    const next: DialogueStep<C> = dialogue.step(state, event, clock.now());
    if (next.refused) return next.refused;
    const fresh = newEvents(state.events, next.conversation.events);
    if (fresh.length > 0) await means.keep?.(fresh);
    state = next.conversation;
    for (const effect of next.effects) await see(effect);
    if (fresh.length > 0) tellView();
    return null;
  };
  const see = async (effect: Effect): Promise<void> => {
    if (effect.kind === 'choose-field' || effect.kind === 'leave') {
      tell((listener) => listener.onNotice(effect.kind));
    } else if (effect.kind === 'restart') {
      const field = started()?.field ?? null;
      const pack = packFor();
      const same = offeredField(fieldsOf(pack), field?.id ?? null) ?? (field && { profile: field, inventedNow: null });
      await apply(startedEvent(stamp(), { field: same, pack, more: { fields: namesOf(pack) } }));
    } else if (effect.kind === 'same-for') await goOn(effect.field);
    else launch(effect);
  };
  /** Begins about the next field on the same day with what holds there too; lets the person choose where none is named. */
  const goOn = async (id: string | null): Promise<void> => {
    const pack = packFor();
    const field = offeredField(fieldsOf(pack), id);
    if (field === null) return tell((listener) => listener.onNotice('choose-next'));
    const made = stamp();
    await apply(startedEvent(made, { field, pack, more: nextField(field, pack, made.at) }));
  };
  const packFor = (named?: string): PackName => packToStart(means.packs, named, started());
  const fieldsOf = ({ id }: PackName): readonly OfferedField[] => fieldsFor(fields, id);
  const namesOf = (pack: PackName) => fieldsOf(pack).map(({ profile: { id, name } }) => ({ id, name }));
  const nextField = (field: OfferedField | null, pack: PackName, at: EpochSeconds): NextField => {
    const before = started();
    const shiftSeconds = before?.shiftSeconds ?? 0;
    const moment = epochSeconds(at + shiftSeconds);
    const carried = dialogue.carriedOver?.(state, field?.profile ?? null, moment) ?? null;
    return { carried, fields: namesOf(pack), ...(before ? { shiftSeconds } : {}) };
  };
  /** How a start begins; one that came before is the same again whatever was told since. */
  const beginning = (message: ClientMessageOf<'start'>, known: ConversationEvent | undefined): Beginning => {
    const again = known?.kind === 'started' && (message.pack ?? known.packId) === known.packId ? known : null;
    const pack = again ? { id: again.packId, hash: again.packHash } : packFor(message.pack);
    const field = requireField(fieldsOf(pack), message.field);
    if (again) {
      const { carried = null, shiftSeconds, fields: offered = [] } = again;
      return { pack, field, more: { carried, shiftSeconds, fields: offered } };
    }
    if (message.carry !== true || !started()) return { pack, field, more: { fields: namesOf(pack) } };
    return { pack, field, more: nextField(field, pack, epochSeconds(message.at)) };
  };
  const launch = (effect: CarriedEffect): void => {
    const begun = started();
    const field = offeredField(fields, begun?.field?.id ?? null);
    const context = { means, conversation: state, field, shiftSeconds: begun?.shiftSeconds ?? 0, stamp };
    const run: Promise<void> = carryOut(effect, context)
      .then((result) => inTurn(() => apply(result)))
      .catch((error: unknown) => refusal(error))
      .then((refused) => {
        if (refused) tell((listener) => listener.onError(refused));
      })
      .catch(() => {})
      .finally(() => running.delete(run));
    running.add(run);
  };
  const take = async (message: EventMessage): Promise<ErrorReport | null> => {
    if (!started() && message.type !== 'start') {
      throw codedError('CONVERSATION_MISSING', { expected: 'a start first', came: message.type });
    }
    const known = state.events.find(({ id }) => id === message.id);
    const event = eventOfMessage(message, {
      asked: known?.kind === 'said' ? known.asked : message.type === 'say' ? openQuestion() : null,
      beginning: (start) => beginning(start, known),
    });
    return apply(event);
  };

  const launchAll = (effects: readonly Effect[]): void => {
    for (const effect of effects) if (effect.kind === 'evaluate' || effect.kind === 'fetch-forecast') launch(effect);
  };
  const takeIn = async (handed: readonly ConversationEvent[]): Promise<HandedOver> => {
    const now = clock.now();
    const refuse = (event: ConversationEvent) =>
      otherTreatment(event, started()) ?? dialogue.refuseHandedOver?.(event) ?? null;
    const { fresh, ...answer } = sortHandOver(handed, state.events, { now, refuse });
    if (fresh.length === 0) return answer;
    await means.keep?.(fresh);
    const next = dialogue.open([...state.events, ...fresh], now);
    state = next.conversation;
    launchAll(next.effects);
    tellView();
    return answer;
  };

  launchAll(opened.effects);

  return {
    view,
    events: () => state.events,
    listen: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    takeIn: (handed) => inTurn(() => takeIn(handed)),
    receive: (message) => inTurn(() => take(message)).catch(refusal),
    settled: async () => {
      await turn;
      while (running.size > 0) {
        await Promise.all(running);
        await turn;
      }
    },
  };
}

function newEvents(before: readonly ConversationEvent[], after: readonly ConversationEvent[]): ConversationEvent[] {
  const there = new Set(before.map(({ id }) => id));
  return after.filter(({ id }) => !there.has(id));
}

function refusal(error: unknown): ErrorReport {
  if (isLoamwardError(error)) return error.toJSON();
  return reportOf('SERVER_FAULT', { expected: 'no fault', came: error instanceof Error ? error.name : 'a fault' });
}
