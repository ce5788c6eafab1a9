import type { ConversationEvent } from '../../src/core/dialogue/events.ts';
import type { ErrorCode } from '../../src/core/errors/table.ts';
import { closeCodeOf } from '../../src/core/protocol/close-codes.ts';
import type { ClientMessageOf, EventMessage } from '../../src/core/protocol/messages.ts';
import type {
  Notice,
  ServerMessage,
  ServerMessageOf,
  ServerMessageType,
} from '../../src/core/protocol/server-messages.ts';
import type { ChatInside, Offline } from '../offline/types.ts';
import { createStore, type Store } from '../store.ts';
import { nextDeviceStamp } from './device.ts';
import { createLink, type LinkState } from './link.ts';
import type { ChatMeans } from './means.ts';
import { fromLastStart, keepOutbox, type Outbox, readOutbox, without } from './outbox.ts';
import { emptyPageState, type PageState } from './page-state.ts';
import { tokenKey } from './token-key.ts';

/** An answer as a form gives it. */
export type FormAnswer = Pick<ClientMessageOf<'answer'>, 'choices' | 'numbers' | 'doesNotKnow' | 'also'>;

/** What a person can do. */
export interface Chat {
  readonly state: Store<PageState>;
  /** Begins about an offered field, or about an own one (null), for a treatment; for that of the conversation where none is named. */
  readonly start: (field: string | null, treatment?: string) => void;
  readonly say: (text: string) => void;
  readonly answer: (question: string, answer: FormAnswer) => void;
  /** A button that is no answer; with `change` the fact whose question is opened again. */
  readonly request: (request: ClientMessageOf<'request'>['request'], fact?: string) => void;
  readonly undo: (event: string) => void;
  readonly choose: (isChoosing: boolean) => void;
  /** Goes back to a conversation that this device keeps. */
  readonly goTo: (token: string) => void;
  /** Every event of every conversation that this device keeps; null where it does not let them be read. */
  readonly saidEvents: () => Promise<readonly ConversationEvent[] | null>;
  /** Another page of this browser goes on; this one only says so. */
  readonly giveUp: () => void;
  readonly putRefusalAway: () => void;
  /** The connection may be back, or the page was asleep. */
  readonly hurry: () => void;
  readonly stop: () => void;
}

/** How long the page says that the connection is back, ms. */
const cameBackForMs = 6000;

/** What a person did, without its stamp. */
type Deed = {
  [K in EventMessage['type']]: Omit<ClientMessageOf<K>, 'id' | 'at' | 'device' | 'count'>;
}[EventMessage['type']];

/**
 * Connects, and holds what the page draws. Each thing done gets its id once and stays in the outbox until the server has
 * confirmed it, over lost connections and reloads, so that nothing is lost and nothing counts twice. With `makeOffline` the page
 * answers by itself where the server does not.
 */
export function createChat(means: ChatMeans, makeOffline?: (inside: ChatInside) => Offline): Chat {
  const { memory } = means;
  const state = createStore<PageState>({ ...emptyPageState, outbox: readOutbox(memory) });
  let serverAhead = 0;
  const spoken = means.language ? { language: means.language } : {};
  /** Token of the conversation that was last asked to go on in the language of the page, until it does. */
  let askedInLanguage: string | null = null;

  const setOutbox = (outbox: Outbox): void => {
    keepOutbox(memory, outbox);
    state.set({ outbox });
  };
  const drop = (ids: readonly string[]): void => setOutbox(without(state.get().outbox, new Set(ids)));
  const confirm = (messages: Outbox): void => {
    offline?.onConfirmed(messages);
    drop(messages.map(({ id }) => id));
  };
  const handOver = (messages: Outbox): void => {
    if (messages.length === 0 || !messages.map(link.send).every(Boolean)) return;
    link.afterDealtWith(() => confirm(messages));
  };
  const act = (deed: Deed, isByPerson = true): void => {
    const at = Math.max(0, offline?.now() ?? means.now() + serverAhead);
    const message = { ...deed, id: means.newId(), at, ...nextDeviceStamp(memory, means.newId) } as EventMessage;
    setOutbox([...state.get().outbox, message]);
    if (isByPerson) state.set({ hasActed: true, refusal: null });
    if (offline?.take(message) !== true) handOver([message]);
  };
  const beginAnew = (token: string): void => {
    memory.write(tokenKey, token);
    state.set({ view: null, treatment: null });
    setOutbox(fromLastStart(state.get().outbox));
    handOver(state.get().outbox);
  };

  const onWelcome = (welcome: ServerMessageOf<'welcome'>): void => {
    serverAhead = welcome.serverTime - means.now();
    const { fields, packTitle, treatments = [] } = welcome;
    state.set({ fields, packTitle, treatments });
    if (offline) offline.onWelcome(welcome);
    else if (welcome.resumed) {
      memory.write(tokenKey, welcome.token);
      handOver(state.get().outbox);
    } else beginAnew(welcome.token);
  };
  /** A conversation shown in another language goes on in that of the page, whoever answers. */
  const goOnInPageLanguage = (): void => {
    const { language } = means;
    const shown = state.get().view?.language;
    if (language === undefined || shown === undefined) return;
    const token = shown === language ? null : (memory.read(tokenKey) ?? '');
    if (token === askedInLanguage) return;
    askedInLanguage = token;
    if (token !== null) act({ type: 'request', request: 'language', language }, false);
  };
  const onNotice = (notice: Notice): void => {
    if (notice !== 'leave') state.set({ isChoosing: true, isNext: notice === 'choose-next' });
  };
  const heard: { readonly [K in ServerMessageType]: (message: ServerMessageOf<K>) => void } = {
    welcome: onWelcome,
    view: (message) => {
      const { view, pack: treatment = null } = message;
      if (offline?.onView(message) !== false) state.set({ view, treatment, viewCameAt: means.now() });
    },
    error: ({ error, of }) => {
      if (offline && error.code === 'CONVERSATION_GONE') offline.onGone(error);
      else if (closeCodeOf(error.code) === null && !willBeSentAgain(error.code)) state.set({ refusal: error });
      if (of !== null) setOutbox(without(state.get().outbox, new Set([of])));
      if (willBeSentAgain(error.code)) link.drop();
    },
    notice: ({ notice }) => onNotice(notice),
    rules: () => offline?.onRules(),
    alive: () => {},
  };
  const onState = (next: LinkState): void => {
    const { link: before } = state.get();
    const isBack = before === 'lost' && next === 'ready';
    state.set({ link: next, cameBack: isBack });
    if (isBack) means.after(cameBackForMs, () => state.set({ cameBack: false }));
    offline?.onLink(next);
  };

  const link = createLink(means, {
    resumeToken: () => memory.read(tokenKey),
    onState,
    onMessage: (message) => (heard[message.type] as (message: ServerMessage) => void)(message),
    onGarbled: (error) => state.set({ refusal: error }),
  });

  const offline = makeOffline?.({
    means,
    state,
    link: () => link,
    drop,
    putBack: (messages) => {
      const ids = new Set(messages.map(({ id }) => id));
      setOutbox([...messages, ...without(state.get().outbox, ids)]);
    },
    resend: () => handOver(state.get().outbox),
    beginAnew,
    onNotice,
  });

  state.listen(goOnInPageLanguage);

  return {
    state,
    start: (field, treatment = state.get().treatment ?? undefined) => {
      const begin = (): void => {
        const { isNext } = state.get();
        state.set({ isChoosing: false, isNext: false });
        const pack = treatment === undefined ? {} : { pack: treatment };
        act({ type: 'start', field, ...pack, ...(isNext ? { carry: true } : {}), ...spoken });
      };
      if (offline) void offline.beforeStart(treatment).then(begin);
      else begin();
    },
    goTo: (token) => void offline?.goTo(token),
    saidEvents: async () => (await offline?.saidEvents()) ?? null,
    giveUp: () => {
      link.stop();
      offline?.stop();
      state.set({ isElsewhere: true });
    },
    say: (text) => act({ type: 'say', text, ...spoken }),
    answer: (question, answer) => act({ type: 'answer', question, ...answer }),
    request: (request, fact) => act({ type: 'request', request, ...(fact === undefined ? {} : { fact }) }),
    undo: (of) => act({ type: 'undo', of }),
    choose: (isChoosing) => {
      if (isChoosing) offline?.onChoose();
      state.set({ isChoosing, isNext: false, hasActed: true });
    },
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
