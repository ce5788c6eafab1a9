import type { ConversationEvent } from '../../src/core/dialogue/events.ts';
import { latestStart } from '../../src/core/dialogue/latest-start.ts';
import type { ChatMeans } from '../chat/means.ts';
import type { PageState } from '../chat/page-state.ts';
import type { Store } from '../store.ts';
import type { SafeVault } from './safe-vault.ts';
import { type AtHand, fetchSupplies, offersAtHand, readSupplies } from './supplies.ts';
import type { OfflineParts } from './types.ts';

type Core = typeof import('./core.ts');

/** Whether the page can answer by itself, and what it has for that. */
export interface Readiness {
  readonly isReady: () => boolean;
  /** The core, loaded once; null where it does not come. */
  readonly core: () => Promise<Core | null>;
  readonly coreNow: () => Core | null;
  readonly atHand: () => Promise<AtHand | null>;
  /** Says where new conversations are judged by other rules than those that this one was begun under. */
  readonly compareRules: (events: readonly ConversationEvent[]) => void;
  readonly listConversations: () => Promise<void>;
  readonly onAct: () => void;
  readonly onWelcome: () => void;
  /** Other rules are in force: what is at hand is fetched anew. */
  readonly onRules: () => void;
  readonly onView: () => void;
}

const readyKey = 'loamward.ready';

/** The first question is not held up: loading begins so long after the first view, or after a welcome without one, ms. */
const afterViewMs = 300;
const afterWelcomeMs = 8000;

/** Loads, once the page has time, what it needs to answer by itself, and keeps it. */
export function createReadiness(of: {
  readonly means: ChatMeans;
  readonly state: Store<PageState>;
  readonly vault: SafeVault;
  readonly parts: OfflineParts;
  /** What is at hand was fetched, or fetched anew. */
  readonly onReady: () => void;
}): Readiness {
  const { means, state, vault, parts, onReady } = of;
  let core: Core | null = null;
  let loading: Promise<Core | null> | null = null;
  let hand: AtHand | null = null;
  let began = false;
  let hasAsked = false;
  let isPageKept = false;
  let lookForNewer: (() => void) | null = null;

  const load = (): Promise<Core | null> => {
    loading ??= parts.loadCore().then(
      (loaded) => {
        core = loaded;
        return loaded;
      },
      () => {
        loading = null;
        return null;
      },
    );
    return loading;
  };
  const show = (): void => {
    if (!core || !hand) return;
    const isLasting = isPageKept && memoryIsReady() && state.get().storage === 'kept';
    state.set({ canBeAlone: isLasting ? 'always' : 'while-open' });
  };
  const memoryIsReady = (): boolean => means.memory.read(readyKey) !== null;
  const prepare = async (): Promise<void> => {
    if (began) return;
    began = true;
    lookForNewer = parts.keepPage(
      (use) => state.set({ newVersion: use }),
      () => {
        isPageKept = true;
        show();
      },
    );
    await supply();
    await load();
    show();
    onReady();
    await listConversations();
  };
  const supply = async (): Promise<void> => {
    hand = (await fetchSupplies(parts.server, vault)) ?? hand;
    if (hand && state.get().storage === 'kept') means.memory.write(readyKey, '1');
  };
  const supplyAnew = (): void =>
    void supply().then(() => {
      if (hand) state.set(offersAtHand(hand, means.language));
      show();
      onReady();
    });
  const listConversations = async (): Promise<void> => {
    const notes = await vault.attempt((one) => one.notes(), []);
    const used = notes.filter(({ usedAt }) => usedAt > 0).sort((a, b) => b.usedAt - a.usedAt);
    state.set({ conversations: used });
  };
  return {
    isReady: () => memoryIsReady() || (core !== null && hand !== null),
    core: load,
    coreNow: () => core,
    atHand: async () => {
      hand ??= await readSupplies(vault);
      return hand;
    },
    compareRules: (events) => {
      const begun = latestStart(events);
      const now = hand?.inForce.find(({ id }) => id === begun?.packId);
      const newRules = now !== undefined && now.hash !== begun?.packHash;
      if (state.get().newRules !== newRules) state.set({ newRules });
    },
    listConversations,
    onAct: () => {
      if (!hasAsked) parts.persist();
      hasAsked = true;
    },
    onWelcome: () => {
      if (!began) means.after(afterWelcomeMs, () => void prepare());
      else {
        lookForNewer?.();
        supplyAnew();
      }
    },
    onRules: () => {
      if (began) supplyAnew();
    },
    onView: () => {
      if (!began) means.after(afterViewMs, () => void prepare());
    },
  };
}
