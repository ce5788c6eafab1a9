import type { ServerMessageOf } from '../../src/core/protocol/server-messages.ts';
import { tokenKey } from '../chat/token-key.ts';
import type { Here } from './here.ts';
import { mirror } from './mirror.ts';
import { createReadiness, type Readiness } from './readiness.ts';
import { type SafeVault, safeVault } from './safe-vault.ts';
import { type SaidOnline, saidOnline } from './said-online.ts';
import { createServerClock, type ServerClock } from './server-clock.ts';
import { openShelf, type Shelf } from './shelf.ts';
import type { ChatInside, OfflineParts } from './types.ts';

/** How things stand just now between page and server. */
export interface Standing {
  shelf: Shelf | null;
  /** The shelf of the token that is held, once it is open. */
  opening: Promise<Shelf | null>;
  /** Rises whenever another conversation is opened: what began before is then of no use. */
  turn: number;
  /** True while the page answers, or what it answered is not handed over. */
  isAlone: boolean;
  here: Here | null;
  /** True where the connection that is open goes on with the conversation of the token. */
  isResumed: boolean;
  serverView: ServerMessageOf<'view'> | null;
  /** How many events the server must keep before its view counts. */
  needed: number;
  /** How much was handed over since the page began to answer. */
  handed: number;
  isReturning: boolean;
  /** True where the server judges by other rules than the conversation. */
  isBarred: boolean;
}

/** All that the parts of the page's own answering share. */
export interface OfflineContext {
  readonly inside: ChatInside;
  readonly parts: OfflineParts;
  readonly clock: ServerClock;
  readonly said: SaidOnline;
  readonly vault: SafeVault;
  readonly ready: Readiness;
  readonly now: Standing;
  readonly token: () => string | null;
  readonly openFor: (token: string | null) => Promise<Shelf | null>;
  readonly enterAlone: () => void;
  readonly leaveAlone: () => void;
  /** Fetches what the server has and this device has not. */
  readonly mirrorOnce: () => Promise<void>;
}

const aloneKey = 'loamward.alone';

/** Begins with nothing open; a page that was alone when it was closed still is. */
export function createContext(inside: ChatInside, parts: OfflineParts): OfflineContext {
  const { means, state } = inside;
  const { memory } = means;
  const { server } = parts;
  const clock = createServerClock(means);
  const said = saidOnline(memory);
  const onState = (storage: 'kept' | 'full' | 'none'): void => {
    if (state.get().storage !== storage) state.set({ storage });
  };
  const vault = safeVault(parts.vault, onState, means.after);
  const now: Standing = {
    shelf: null,
    opening: Promise.resolve(null),
    turn: 0,
    isAlone: memory.read(aloneKey) !== null,
    here: null,
    isResumed: false,
    serverView: null,
    needed: 0,
    handed: 0,
    isReturning: false,
    isBarred: false,
  };
  let isMirroring = false;

  const onReady = (): void => {
    void mirrorOnce();
    if (now.shelf) ready.compareRules(now.shelf.events());
  };
  const ready = createReadiness({ means, state, vault, parts, onReady });
  const mirrorOnce = async (): Promise<void> => {
    const core = ready.coreNow();
    const { shelf, serverView } = now;
    if (isMirroring || now.isAlone || !shelf || !core || !serverView || serverView.kept <= shelf.serverCount()) return;
    isMirroring = true;
    const came = await mirror({ server, vault, shelf, said, parse: core.parseEvents });
    isMirroring = false;
    ready.compareRules(shelf.events());
    if (came) void mirrorOnce();
  };
  return {
    inside,
    parts,
    clock,
    said,
    vault,
    ready,
    now,
    mirrorOnce,
    token: () => memory.read(tokenKey),
    openFor: async (token) => {
      now.turn += 1;
      now.shelf = null;
      state.set({ token });
      const mine = now.turn;
      now.opening = token === null ? Promise.resolve(null) : openShelf(vault, token);
      const opened = await now.opening;
      if (mine !== now.turn) return opened;
      now.shelf = opened;
      void mirrorOnce();
      return opened;
    },
    enterAlone: () => {
      now.isAlone = true;
      memory.write(aloneKey, '1');
      state.set({ answers: 'page', clockFault: clock.fault() });
    },
    leaveAlone: () => {
      now.here?.stop();
      now.here = null;
      now.isAlone = false;
      memory.write(aloneKey, null);
      state.set({ answers: 'server', handingOver: 0 });
    },
  };
}
