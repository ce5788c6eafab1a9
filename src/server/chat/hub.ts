import type { RunningConversation } from '../../adapters/conversation/types.ts';
import type { ConversationStore } from '../../adapters/store/conversation-store.ts';
import type { ConversationEvent } from '../../core/dialogue/events.ts';
import type { EpochSeconds } from '../../core/units/brands.ts';

/** A conversation as one connection holds it. */
export interface HeldConversation {
  readonly token: string;
  /** True where it goes on from kept events. */
  readonly resumed: boolean;
  readonly conversation: RunningConversation;
  /** The connection no longer needs it. */
  readonly release: () => void;
}

/** Finds or makes the running conversation of a token; several connections of one token share it. */
export interface Hub {
  readonly open: (resume: string | null) => Promise<HeldConversation>;
  /** The conversation of a token that a device made itself: gone on with where it is kept, begun where it is not. */
  readonly openOrBegin: (token: string) => Promise<HeldConversation>;
  readonly count: () => number;
}

/** What the hub needs. */
export interface HubMeans {
  readonly store: ConversationStore;
  readonly now: () => EpochSeconds;
  readonly newId: () => string;
  /** Makes a running conversation that keeps its events by `keep` and goes on from `restored`. */
  readonly run: (
    keep: (events: readonly ConversationEvent[]) => Promise<void>,
    restored: readonly ConversationEvent[],
  ) => RunningConversation;
}

interface Live {
  readonly conversation: Promise<RunningConversation | null>;
  holders: number;
}

/**
 * Runs conversations while somebody holds them and until what they asked for has come; the store has the rest. A conversation
 * enters the store with its first event, so that a bare connection costs nothing.
 */
export function createHub({ store, now, newId, run }: HubMeans): Hub {
  const live = new Map<string, Live>();

  const begin = async (token: string): Promise<RunningConversation> => {
    let created = false;
    return run(async (events) => {
      if (!created) await store.create(token, now());
      created = true;
      await store.append(token, events, now());
    }, []);
  };
  const goOn = async (token: string): Promise<RunningConversation | null> => {
    const kept = await store.read(token, now());
    return kept && run((events) => store.append(token, events, now()), kept.events);
  };
  const letGo = async (token: string, held: Live): Promise<void> => {
    held.holders -= 1;
    await (await held.conversation)?.settled();
    if (held.holders === 0 && live.get(token) === held) live.delete(token);
  };
  const hold = async (token: string, make: (token: string) => Promise<RunningConversation | null>) => {
    const held = live.get(token) ?? { conversation: make(token), holders: 0 };
    live.set(token, held);
    held.holders += 1;
    let holding = true;
    const release = (): void => {
      if (holding) void letGo(token, held).catch(() => live.delete(token));
      holding = false;
    };
    try {
      const conversation = await held.conversation;
      if (conversation) return { conversation, release };
    } catch (error) {
      release();
      throw error;
    }
    release();
    return null;
  };

  return {
    count: () => live.size,
    open: async (resume) => {
      const resumed = resume === null ? null : await hold(resume, goOn);
      if (resume !== null && resumed) return { token: resume, resumed: true, ...resumed };
      const token = newToken(newId);
      const fresh = (await hold(token, begin))!;
      return { token, resumed: false, ...fresh };
    },
    openOrBegin: async (token) => {
      let resumed = true;
      const make = async (of: string): Promise<RunningConversation> => {
        const kept = await goOn(of);
        resumed = kept !== null;
        return kept ?? begin(of);
      };
      for (;;) {
        const held = await hold(token, make);
        if (held) return { token, resumed, ...held };
      }
    },
  };
}

/** A secret of two random UUIDs: 244 random bits, 64 letters. */
function newToken(newId: () => string): string {
  return `${newId()}${newId()}`.replaceAll('-', '');
}
