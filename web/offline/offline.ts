import { offerOf, titleOf } from '../../src/adapters/conversation/offers.ts';
import type { ServerMessageOf } from '../../src/core/protocol/server-messages.ts';
import { readDevice } from '../chat/device.ts';
import { without } from '../chat/outbox.ts';
import { tokenKey } from '../chat/token-key.ts';
import { pageForecasts } from './forecast-source.ts';
import { handOverAll } from './hand-over.ts';
import { createHere, type Here } from './here.ts';
import { mirror } from './mirror.ts';
import { createReadiness } from './readiness.ts';
import { safeVault } from './safe-vault.ts';
import { saidOnline } from './said-online.ts';
import { createServerClock } from './server-clock.ts';
import { openShelf, type Shelf } from './shelf.ts';
import { sweep } from './sweep.ts';
import type { ChatInside, Offline, OfflineParts } from './types.ts';

/** How long the server may take to answer before the page answers by itself, ms. */
export const answerWithinMs = 2000;
/** After so long without a word a start begins a conversation of its own, seconds; also after so many events. */
export const staleAfterSeconds = 12 * 3600;
const manyEvents = 600;
/** How long it says that something was handed over, ms; how long until handing over is tried again, ms. */
const handedOverForMs = 8000;
const againAfterMs = 5000;

const aloneKey = 'loamward.alone';

/**
 * Lets the page answer by itself where the server does not: it mirrors the conversation while the connection is there, runs the same
 * core when it is lost or slow, and hands over what was said before it goes on with the server.
 */
export function createOffline(inside: ChatInside, parts: OfflineParts): Offline {
  const { means, state, link } = inside;
  const { memory } = means;
  const { server } = parts;
  const clock = createServerClock(means);
  const said = saidOnline(memory);
  const vault = safeVault(
    parts.vault,
    (storage) => state.get().storage !== storage && state.set({ storage }),
    means.after,
  );
  const token = (): string | null => memory.read(tokenKey);
  let shelf: Shelf | null = null;
  let opening: Promise<Shelf | null> = Promise.resolve(null);
  let isAlone = memory.read(aloneKey) !== null;
  let here: Here | null = null;
  let isResumed = false;
  let serverView: ServerMessageOf<'view'> | null = null;
  let needed = 0;
  let handed = 0;
  let isReturning = false;
  let isMirroring = false;
  let isBarred = false;
  let isKnown: Promise<boolean> = Promise.resolve(false);
  let turn = 0;

  const ready = createReadiness({ means, state, vault, parts, onReady: () => void mirrorOnce() });

  const openFor = (one: string | null): Promise<Shelf | null> => {
    turn += 1;
    shelf = null;
    state.set({ token: one });
    const mine = turn;
    opening = one === null ? Promise.resolve(null) : openShelf(vault, one);
    return opening.then((opened) => {
      if (mine !== turn) return opened;
      shelf = opened;
      void mirrorOnce();
      return opened;
    });
  };
  const enterAlone = (): void => {
    isAlone = true;
    memory.write(aloneKey, '1');
    state.set({ answers: 'page', clockFault: clock.fault() });
  };
  const leaveAlone = (): void => {
    here?.stop();
    here = null;
    isAlone = false;
    memory.write(aloneKey, null);
    state.set({ answers: 'server', handingOver: 0 });
  };
  const takeOver = async (): Promise<void> => {
    if (here || !ready.isReady()) return;
    enterAlone();
    const mine = turn;
    const [core, atHand, opened] = await Promise.all([ready.core(), ready.atHand(), opening]);
    if (mine !== turn || !isAlone || here) return;
    const waits = said.of(token());
    const isUnknown = opened === null || (opened.events().length === 0 && waits.length === 0);
    if (!core || !atHand || (isUnknown && state.get().view !== null)) {
      leaveAlone();
      if (isResumed) inside.resend();
      return;
    }
    const own = opened ?? (await beginHere());
    if (mine !== turn && own !== shelf) return;
    const running = core.runHere({
      packs: atHand.packs,
      fields: atHand.fields,
      restored: own.events(),
      now: clock.now,
      newId: means.newId,
      device: `${readDevice(memory, means.newId)}-page`,
      forecastService: pageForecasts({ server, vault, now: clock.now }),
      keep: (events) => own.add(events, false),
    });
    here = createHere(running, {
      onView: (view) => state.set({ view, viewCameAt: means.now() }),
      onNotice: inside.onNotice,
      onTaken: ({ id }, refusal) => {
        inside.drop([id]);
        if (refusal) state.set({ refusal });
      },
      onError: (refusal) => state.set({ refusal }),
    });
    const view = running.view();
    state.set({
      fields: atHand.fields.map(({ profile }) => offerOf(profile)),
      packTitle: titleOf(atHand.packs[0]),
      viewCameAt: means.now(),
    });
    if (view || waits.length === 0) state.set({ view });
    const left = [...waits, ...without(state.get().outbox, new Set(waits.map(({ id }) => id)))];
    for (const message of left) {
      if (own.has(message.id)) inside.drop([message.id]);
      else here.take(message);
    }
    if (isResumed) void comeBack();
  };
  const beginHere = async (): Promise<Shelf> => {
    const fresh = parts.newToken();
    memory.write(tokenKey, fresh);
    return (await openFor(fresh))!;
  };
  const comeBack = async (): Promise<void> => {
    const own = await opening;
    if (isReturning || isBarred || !own) return;
    isReturning = true;
    const end = await handOverAll({
      server,
      shelf: own,
      settled: async () => here?.settled(),
      onProgress: (handingOver) => state.set({ handingOver }),
    });
    isReturning = false;
    state.set({ handingOver: 0 });
    if (own !== shelf) {
      if (isResumed) void comeBack();
      return;
    }
    if (end.kind === 'done') {
      needed = Math.max(needed, end.kept ?? 0);
      handed += end.said;
      if (end.refused) state.set({ refusal: end.refused });
      if (isResumed) goOnWithServer();
      else link().restart();
    } else if (end.kind === 'other-rules') {
      isBarred = true;
      state.set({ newRules: true });
      if (!here) void takeOver();
    } else if (end.kind === 'refused') state.set({ refusal: end.error });
    else means.after(againAfterMs, () => link().isReady() && void comeBack());
  };
  const goOnWithServer = (): void => {
    if (!isAlone || !isResumed || !serverView || serverView.kept < needed) return;
    if (shelf === null || shelf.unsent().length > 0 || here?.isIdle() === false) return;
    leaveAlone();
    state.set({ view: serverView.view, viewCameAt: means.now(), handedOver: handed, refusal: null });
    if (handed > 0) means.after(handedOverForMs, () => state.set({ handedOver: 0 }));
    handed = 0;
    inside.resend();
    void mirrorOnce();
  };
  const mirrorOnce = async (): Promise<void> => {
    const core = ready.coreNow();
    const own = shelf;
    if (isMirroring || isAlone || !own || !core || !serverView || serverView.kept <= own.serverCount()) return;
    isMirroring = true;
    const came = await mirror({ server, vault, shelf: own, said, parse: core.parseEvents });
    isMirroring = false;
    ready.compareRules(own.events());
    if (came) void mirrorOnce();
  };
  const begin = (fresh: string): void => {
    inside.beginAnew(fresh);
    void openFor(fresh);
    needed = 0;
    if (isAlone) leaveAlone();
  };
  const restore = async (welcome: ServerMessageOf<'welcome'>): Promise<boolean> => {
    const own = await opening;
    const waits = said.of(token());
    if (own && own.events().length > 0) {
      await own.forgetServer();
      inside.putBack(waits.filter(({ id }) => !own.has(id)));
      needed = 0;
      void comeBack();
      return true;
    }
    inside.putBack(waits);
    begin(welcome.token);
    return waits.length > 0;
  };
  const goToToken = async (next: string | null): Promise<void> => {
    await here?.settled();
    here?.stop();
    here = null;
    memory.write(tokenKey, next);
    serverView = null;
    isResumed = false;
    isBarred = false;
    needed = 0;
    state.set({ view: null, isChoosing: false, newRules: false });
    await openFor(next);
    if (link().isReady()) {
      leaveAlone();
      link().restart();
    } else await takeOver();
  };

  void openFor(token()).then(() => ready.listConversations());
  if (isAlone) void takeOver();
  means.after(answerWithinMs, () => !link().isReady() && void takeOver());

  return {
    now: clock.now,
    take: (message) => {
      ready.onAct();
      if (here) here.take(message);
      else if (!isAlone) {
        means.after(answerWithinMs, () => state.get().outbox.some(({ id }) => id === message.id) && void takeOver());
      }
      return isAlone;
    },
    onConfirmed: (messages) => {
      said.add(
        token(),
        messages.filter(({ id }) => shelf?.has(id) !== true),
      );
      if (isAlone) void comeBack();
    },
    onWelcome: (welcome) => {
      clock.learn(welcome.serverTime);
      state.set({ clockFault: clock.fault() });
      isResumed = welcome.resumed;
      serverView = null;
      ready.onWelcome();
      void sweep({ server, vault, isCurrent: (one) => one === token() });
      if (welcome.resumed) {
        isKnown = Promise.resolve(true);
        void opening.then((own) => {
          if (isAlone || (own?.unsent().length ?? 0) > 0) void comeBack();
        });
        if (!isAlone) inside.resend();
      } else if (token() === null) begin(welcome.token);
      else isKnown = restore(welcome);
    },
    onView: (message) => {
      serverView = message;
      ready.onView();
      if (isAlone) goOnWithServer();
      else void mirrorOnce();
      return !isAlone;
    },
    onGone: (refusal) => void isKnown.then((known) => known || state.set({ refusal })),
    onLink: (next) => {
      if (next !== 'lost') return;
      isResumed = false;
      void takeOver();
    },
    beforeStart: async () => {
      const own = await opening;
      const events = own?.events() ?? [];
      const last = events.reduce((latest, { at }) => Math.max(latest, at), 0);
      const isStale = events.length > 0 && (clock.now() - last > staleAfterSeconds || events.length > manyEvents);
      if (isStale || isBarred) await goToToken(null);
    },
    goTo: (one) => goToToken(one),
    onChoose: () => void ready.listConversations(),
    stop: () => {
      turn += 1;
      here?.stop();
      here = null;
    },
  };
}
