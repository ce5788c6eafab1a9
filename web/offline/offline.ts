import type { ServerMessageOf } from '../../src/core/protocol/server-messages.ts';
import { hasSaidMore } from '../chat/device.ts';
import { tokenKey } from '../chat/token-key.ts';
import { comeBack, goOnWithServer } from './come-back.ts';
import { createContext, type OfflineContext } from './context.ts';
import { sweep } from './sweep.ts';
import { takeOver } from './take-over.ts';
import type { ChatInside, Offline, OfflineParts } from './types.ts';

/** How long the server may take to answer before the page answers by itself, ms. */
export const answerWithinMs = 2000;
/** After so long without a word a start begins a conversation of its own, seconds; also after so many events. */
export const staleAfterSeconds = 12 * 3600;
const manyEvents = 600;

/**
 * Lets the page answer by itself where the server does not: it mirrors the conversation while the connection is there, runs the same
 * core when it is lost or slow, and hands over what was said before it goes on with the server.
 */
export function createOffline(inside: ChatInside, parts: OfflineParts): Offline {
  const { means, state, link } = inside;
  const context = createContext(inside, parts);
  const { clock, said, ready, now, token, openFor, vault } = context;
  /** Whether the server's loss of the conversation is made good from here. */
  let isKnown: Promise<boolean> = Promise.resolve(false);

  const back = (): void => void comeBack(context, alone);
  const alone = (): void =>
    void takeOver(context).then((answers) => {
      if (answers && now.isResumed) back();
    });
  const begin = (fresh: string): void => {
    inside.beginAnew(fresh);
    void openFor(fresh);
    now.needed = 0;
    if (now.isAlone) context.leaveAlone();
  };
  const restore = async (welcome: ServerMessageOf<'welcome'>): Promise<boolean> => {
    const shelf = await now.opening;
    const waits = said.of(token());
    if (shelf && shelf.events().length > 0) {
      await shelf.forgetServer();
      inside.putBack(waits.filter(({ id }) => !shelf.has(id)));
      now.needed = 0;
      back();
      return true;
    }
    inside.putBack(waits);
    begin(welcome.token);
    return waits.length > 0;
  };
  const goTo = async (next: string | null): Promise<void> => {
    await leave(context, next);
    await openFor(next);
    if (link().isReady()) {
      context.leaveAlone();
      link().restart();
    } else alone();
  };

  void openFor(token()).then(() => ready.listConversations());
  if (now.isAlone) alone();
  means.after(answerWithinMs, () => {
    if (!link().isReady()) alone();
  });

  return {
    now: clock.now,
    take: (message) => {
      ready.onAct();
      const { here } = now;
      if (here) here.take(message);
      else if (!now.isAlone) {
        means.after(answerWithinMs, () => {
          if (state.get().outbox.some(({ id }) => id === message.id)) alone();
        });
      }
      return now.isAlone;
    },
    onConfirmed: (messages) => {
      const missing = messages.filter(({ id }) => now.shelf?.has(id) !== true);
      said.add(token(), missing);
      if (now.isAlone) back();
    },
    onRules: ready.onRules,
    onWelcome: (welcome) => {
      clock.learn(welcome.serverTime);
      state.set({ clockFault: clock.fault() });
      now.isResumed = welcome.resumed;
      now.serverView = null;
      ready.onWelcome();
      void sweep({ server: parts.server, vault, isCurrent: (one) => one === token() });
      if (welcome.resumed) {
        isKnown = Promise.resolve(true);
        void now.opening.then((shelf) => {
          if (now.isAlone || (shelf?.unsent().length ?? 0) > 0) back();
        });
        if (!now.isAlone) inside.resend();
      } else if (token() === null) begin(welcome.token);
      else isKnown = restore(welcome);
    },
    onView: (message) => {
      now.serverView = message;
      ready.onView();
      const isShown = !now.isAlone;
      if (isShown) void context.mirrorOnce();
      else goOnWithServer(context);
      return isShown;
    },
    onGone: (refusal) =>
      void isKnown.then((known) => {
        if (!known && hasSaidMore(means.memory)) state.set({ refusal });
      }),
    onLink: (next) => {
      if (next !== 'lost') return;
      now.isResumed = false;
      alone();
    },
    beforeStart: async (treatment) => {
      const { treatment: shown } = state.get();
      const events = (await now.opening)?.events() ?? [];
      const last = events.reduce((latest, { at }) => Math.max(latest, at), 0);
      const isStale = events.length > 0 && (clock.now() - last > staleAfterSeconds || events.length > manyEvents);
      const isOther = treatment !== undefined && shown !== null && treatment !== shown;
      if (isStale || isOther || now.isBarred) await goTo(null);
    },
    goTo,
    saidEvents: () =>
      vault.attempt(async (kept) => {
        const rows = await Promise.all((await kept.notes()).map((note) => kept.readEvents(note.token)));
        return rows.flat().map(({ event }) => event);
      }, null),
    onChoose: () => void ready.listConversations(),
    stop: () => {
      now.turn += 1;
      now.here?.stop();
      now.here = null;
    },
  };
}

/** Leaves the conversation that is open for another, or for a new one; nothing of it is lost. */
async function leave({ inside, now }: OfflineContext, next: string | null): Promise<void> {
  await now.here?.settled();
  now.here?.stop();
  Object.assign(now, { here: null, serverView: null, isResumed: false, isBarred: false, needed: 0 });
  inside.means.memory.write(tokenKey, next);
  inside.state.set({ view: null, treatment: null, isChoosing: false, newRules: false, staysHere: false });
}
