import type { Timers } from '../../adapters/clock.ts';
import { latestStart } from '../../core/dialogue/latest-start.ts';
import type { ConversationView } from '../../core/dialogue/view-types.ts';
import { type ErrorReport, reportOf } from '../../core/errors/coded-error.ts';
import type { ErrorCode } from '../../core/errors/table.ts';
import { closeCodeOf } from '../../core/protocol/close-codes.ts';
import type { ClientMessage, FieldOffer, ServerMessage, TreatmentOffer } from '../../core/protocol/messages.ts';
import { protocolVersion } from '../../core/protocol/messages.ts';
import { parseClientMessage } from '../../core/protocol/parse-message.ts';
import { faultName, type Log } from '../log.ts';
import { guard } from './guard.ts';
import type { HeldConversation, Hub } from './hub.ts';
import type { TokenBucket } from './token-bucket.ts';

/** Messages dropped in a row after which the connection is closed. */
const mostDropped = 200;

/** What can be started: fields, and treatments each with its fields. */
export interface Offers {
  readonly fields: readonly FieldOffer[];
  readonly treatments: readonly [TreatmentOffer, ...TreatmentOffer[]];
}

/** What one connection's session needs. */
export interface SessionMeans {
  readonly hub: Hub;
  /** What can be started, in a language. */
  readonly offers: (language: string | undefined) => Offers;
  readonly now: () => number;
  readonly timers: Timers;
  readonly bucket: TokenBucket;
  readonly log: Log;
  readonly send: (message: ServerMessage) => void;
  readonly close: (code: ErrorCode) => void;
}

/** The protocol's side of one connection. */
export interface ChatSession {
  /** Takes one frame; every frame that is refused is answered with a code. Never rejects. */
  readonly receive: (text: string, isBinary: boolean) => Promise<void>;
  /** The connection is gone. */
  readonly end: () => void;
}

/** A session that has not said hello yet. Frames are dealt with one after another. */
export function createChatSession(means: SessionMeans): ChatSession {
  const { send, log } = means;
  let held: HeldConversation | null = null;
  let asksTreatment = false;
  let stopListening = (): void => {};
  let stopWaiting = (): void => {};
  let ended = false;
  let dropped = 0;
  let turn: Promise<void> = Promise.resolve();

  const onFault = (error: unknown): void => {
    log({ event: 'fault', code: 'SERVER_FAULT', fault: faultName(error) });
    refuse(reportOf('SERVER_FAULT', { expected: 'an answer', came: 'a fault of the server' }));
  };
  const refuse = (error: ErrorReport, of: string | null = null): void => {
    log({ event: 'message-refused', code: error.code });
    send({ type: 'error', error, of });
    if (closeCodeOf(error.code) !== null) means.close(error.code);
  };
  const sendView = (view: ConversationView): void => {
    const events = held?.conversation.events() ?? [];
    const pack = asksTreatment ? latestStart(events)?.packId : undefined;
    send({ type: 'view', view, kept: events.length, ...(pack === undefined ? {} : { pack }) });
  };
  /** Sends a view, and again when the verdict that stands in it grows too old, so that it is withdrawn. */
  const show = (view: ConversationView): void => {
    sendView(view);
    stopWaiting();
    const left = msUntil(view.verdict?.validUntil ?? null, view.now);
    if (left === null) return;
    stopWaiting = means.timers.after(
      left,
      guard(onFault, () => {
        const later = held?.conversation.view();
        if (later) sendView(later);
      }),
    );
  };
  const hello = async (message: Extract<ClientMessage, { type: 'hello' }>): Promise<void> => {
    if (held) return refuse(reportOf('HELLO_TWICE', { expected: 'one hello', came: 'a second one' }));
    if (message.protocol !== protocolVersion) {
      const came = String(message.protocol);
      return refuse(reportOf('PROTOCOL_VERSION', { expected: `protocol ${protocolVersion}`, came }));
    }
    const opened = await means.hub.open(message.resume);
    if (ended) return opened.release();
    held = opened;
    const { token, resumed, conversation } = opened;
    asksTreatment = message.treatments === true;
    send({
      type: 'welcome',
      protocol: protocolVersion,
      token,
      resumed,
      serverTime: means.now(),
      ...offered(means.offers(message.language), asksTreatment),
    });
    if (message.resume !== null && !resumed) {
      refuse(reportOf('CONVERSATION_GONE', { expected: 'a conversation that is kept', came: 'none' }));
    }
    stopListening = conversation.listen({
      onView: show,
      onNotice: (notice) => send({ type: 'notice', notice }),
      onError: (error) => refuse(error),
    });
    const view = conversation.view();
    if (view) show(view);
  };
  const dispatch = async (message: ClientMessage): Promise<void> => {
    log({ event: 'message', kind: message.type });
    if (message.type === 'hello') return hello(message);
    if (!held) return refuse(reportOf('HELLO_MISSING', { expected: 'hello', came: message.type }), idOf(message));
    if (message.type === 'alive') return send({ type: 'alive' });
    const error = await held.conversation.receive(message);
    if (error) refuse(error, message.id);
  };
  const deal = async (text: string, isBinary: boolean): Promise<void> => {
    if (ended) return;
    try {
      if (isBinary) return refuse(reportOf('MESSAGE_NOT_TEXT', { expected: 'text', came: 'bytes' }));
      const parsed = parseClientMessage(text);
      if (parsed.ok) await dispatch(parsed.message);
      else refuse(parsed.error);
    } catch (error) {
      onFault(error);
    }
  };

  return {
    receive: (text, isBinary) => {
      if (!means.bucket.take()) {
        dropped += 1;
        const code = dropped > mostDropped ? 'MESSAGES_FLOOD' : 'MESSAGES_TOO_FAST';
        refuse(reportOf(code, { expected: 'fewer messages a second', came: 'more' }));
        return Promise.resolve();
      }
      dropped = 0;
      turn = turn.then(() => deal(text, isBinary));
      return turn;
    },
    end: () => {
      ended = true;
      stopListening();
      stopWaiting();
      held?.release();
    },
  };
}

/** The offers of a welcome; a client that does not ask for treatments gets the fields of the first alone. */
function offered({ fields, treatments }: Offers, asksTreatment: boolean) {
  const [first] = treatments;
  const packTitle = first.title;
  if (asksTreatment) return { fields, packTitle, treatments };
  return { fields: fields.filter(({ id }) => first.fields.includes(id)), packTitle };
}

/** A timer holds at most about 24 days. */
const longestTimerMs = 2 ** 31 - 1;

/** Time from one ISO instant to just past a later one, ms; null where there is none, it has passed, or it is too far. */
function msUntil(instant: string | null, now: string): number | null {
  const ms = instant === null ? Number.NaN : Date.parse(instant) - Date.parse(now) + 1000;
  return ms > 0 && ms < longestTimerMs ? ms : null;
}

function idOf(message: ClientMessage): string | null {
  return 'id' in message ? message.id : null;
}
