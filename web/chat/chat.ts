import type { ErrorCode } from '../../src/core/errors/table.ts';
import { closeCodeOf } from '../../src/core/protocol/close-codes.ts';
import type { ClientMessageOf, EventMessage } from '../../src/core/protocol/messages.ts';
import type { ServerMessage, ServerMessageOf, ServerMessageType } from '../../src/core/protocol/server-messages.ts';
import { createStore, type Store } from '../store.ts';
import { nextDeviceStamp } from './device.ts';
import { createLink, type LinkState } from './link.ts';
import type { ChatMeans } from './means.ts';
import { fromLastStart, keepOutbox, type Outbox, readOutbox, without } from './outbox.ts';
import { emptyPageState, type PageState } from './page-state.ts';

/** An answer as a form gives it. */
export type FormAnswer = Pick<ClientMessageOf<'answer'>, 'choices' | 'numbers' | 'doesNotKnow'>;

/** What a person can do. */
export interface Chat {
  readonly state: Store<PageState>;
  /** Begins about an offered field, or about an own one (null). */
  readonly start: (field: string | null) => void;
  readonly say: (text: string) => void;
  readonly answer: (question: string, answer: FormAnswer) => void;
  readonly request: (request: ClientMessageOf<'request'>['request']) => void;
  readonly undo: (event: string) => void;
  readonly choose: (isChoosing: boolean) => void;
  readonly putRefusalAway: () => void;
  /** The connection may be back, or the page was asleep. */
  readonly hurry: () => void;
  readonly stop: () => void;
}

/** Where the device keeps the token of its conversation. */
export const tokenKey = 'loamward.token';

/** How long the page says that the connection is back, ms. */
const cameBackForMs = 6000;

/** What a person did, without its stamp. */
type Deed = {
  [K in EventMessage['type']]: Omit<ClientMessageOf<K>, 'id' | 'at' | 'device' | 'count'>;
}[EventMessage['type']];

/**
 * Connects, and holds what the page draws. Each thing done gets its id once and stays in the outbox until the server has
 * confirmed it, over lost connections and reloads, so that nothing is lost and nothing counts twice.
 */
export function createChat(means: ChatMeans): Chat {
  const { memory } = means;
  const state = createStore<PageState>({ ...emptyPageState, outbox: readOutbox(memory) });
  let serverAhead = 0;

  const setOutbox = (outbox: Outbox): void => {
    keepOutbox(memory, outbox);
    state.set({ outbox });
  };
  const confirm = (messages: Outbox): void =>
    setOutbox(without(state.get().outbox, new Set(messages.map(({ id }) => id))));
  const handOver = (messages: Outbox): void => {
    if (messages.length === 0 || !messages.map(link.send).every(Boolean)) return;
    link.afterDealtWith(() => confirm(messages));
  };
  const act = (deed: Deed): void => {
    const at = Math.max(0, means.now() + serverAhead);
    const message = { ...deed, id: means.newId(), at, ...nextDeviceStamp(memory, means.newId) } as EventMessage;
    setOutbox([...state.get().outbox, message]);
    state.set({ hasActed: true, refusal: null });
    handOver([message]);
  };

  const onWelcome = (welcome: ServerMessageOf<'welcome'>): void => {
    serverAhead = welcome.serverTime - means.now();
    memory.write(tokenKey, welcome.token);
    state.set({ fields: welcome.fields, packTitle: welcome.packTitle });
    if (!welcome.resumed) {
      state.set({ view: null });
      setOutbox(fromLastStart(state.get().outbox));
    }
    handOver(state.get().outbox);
  };
  const heard: { readonly [K in ServerMessageType]: (message: ServerMessageOf<K>) => void } = {
    welcome: onWelcome,
    view: ({ view }) => state.set({ view, viewCameAt: means.now() }),
    error: ({ error, of }) => {
      if (closeCodeOf(error.code) === null && !willBeSentAgain(error.code)) state.set({ refusal: error });
      if (of !== null) setOutbox(without(state.get().outbox, new Set([of])));
      if (willBeSentAgain(error.code)) link.drop();
    },
    notice: ({ notice }) => {
      if (notice === 'choose-field') state.set({ isChoosing: true });
    },
    alive: () => {},
  };
  const onState = (next: LinkState): void => {
    const { link: before } = state.get();
    const isBack = before === 'lost' && next === 'ready';
    state.set({ link: next, cameBack: isBack });
    if (isBack) means.after(cameBackForMs, () => state.set({ cameBack: false }));
  };

  const link = createLink(means, {
    resumeToken: () => memory.read(tokenKey),
    onState,
    onMessage: (message) => (heard[message.type] as (message: ServerMessage) => void)(message),
    onGarbled: (error) => state.set({ refusal: error }),
  });

  return {
    state,
    start: (field) => {
      state.set({ isChoosing: false });
      act({ type: 'start', field });
    },
    say: (text) => act({ type: 'say', text }),
    answer: (question, answer) => act({ type: 'answer', question, ...answer }),
    request: (request) => act({ type: 'request', request }),
    undo: (of) => act({ type: 'undo', of }),
    choose: (isChoosing) => state.set({ isChoosing, hasActed: true }),
    putRefusalAway: () => state.set({ refusal: null }),
    hurry: () => {
      state.set({});
      link.hurry();
    },
    stop: link.stop,
  };
}

/** A message dropped for haste stays in the outbox and goes out again on the next connection. */
function willBeSentAgain(code: ErrorCode): boolean {
  return code === 'MESSAGES_TOO_FAST';
}
