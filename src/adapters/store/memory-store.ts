import type { ConversationEvent } from '../../core/dialogue/events.ts';
import { latestStart } from '../../core/dialogue/latest-start.ts';
import { isSameEvent } from '../../core/dialogue/same-event.ts';
import { codedError } from '../../core/errors/coded-error.ts';
import type { EpochSeconds } from '../../core/units/brands.ts';
import type { ConversationStore, ConversationSummary, StoredConversation } from './conversation-store.ts';

/** How much the store in memory keeps. */
export interface MemoryLimits {
  /** Most conversations; the one longest unused goes first. */
  readonly conversations: number;
  /** Hours without use after which a conversation is dropped. */
  readonly idleHours: number;
  /** Most events in one conversation; more are refused (CONVERSATION_FULL). */
  readonly events: number;
  /** Most events in all: a verdict holds some tens of kB. Conversations longest unused go first. */
  readonly allEvents: number;
}

/** Limits where none are set. */
export const defaultMemoryLimits: MemoryLimits = {
  conversations: 1000,
  idleHours: 72,
  events: 1000,
  allEvents: 50_000,
};

interface Kept {
  readonly createdAt: EpochSeconds;
  usedAt: EpochSeconds;
  readonly events: ConversationEvent[];
  readonly byId: Map<string, ConversationEvent>;
}

/**
 * Keeps conversations in memory until the process ends. Bounded by its limits: the one longest unused is dropped first, and
 * any that has been idle too long.
 */
export function createMemoryStore(limits: MemoryLimits = defaultMemoryLimits): ConversationStore {
  /** In order of use: the first is the one longest unused. */
  const kept = new Map<string, Kept>();

  let allEvents = 0;

  const drop = (token: string, each: Kept): void => {
    kept.delete(token);
    allEvents -= each.events.length;
  };
  const dropIdle = (at: EpochSeconds): void => {
    for (const [token, each] of kept) {
      if (at - each.usedAt <= limits.idleHours * 3600) break;
      drop(token, each);
    }
  };
  /** The one last used stays, however long it is. */
  const dropOldest = (): void => {
    for (const [token, each] of kept) {
      if (kept.size === 1 || (kept.size <= limits.conversations && allEvents <= limits.allEvents)) break;
      drop(token, each);
    }
  };
  const use = (token: string, at: EpochSeconds): Kept | null => {
    dropIdle(at);
    const found = kept.get(token);
    if (!found) return null;
    found.usedAt = at > found.usedAt ? at : found.usedAt;
    kept.delete(token);
    kept.set(token, found);
    return found;
  };

  return {
    create: async (token, at) => {
      dropIdle(at);
      if (kept.has(token)) {
        throw codedError('SERVER_FAULT', { expected: 'a token that is not in use', came: 'one that is' });
      }
      kept.set(token, { createdAt: at, usedAt: at, events: [], byId: new Map() });
      dropOldest();
    },
    append: async (token, events, at) => {
      const found = use(token, at);
      if (!found) throw codedError('CONVERSATION_GONE', { expected: 'a conversation that is kept', came: 'none' });
      const fresh = newOnes(found, events);
      if (found.events.length + fresh.length > limits.events) {
        throw codedError('CONVERSATION_FULL', {
          expected: `at most ${limits.events} events`,
          came: String(found.events.length + fresh.length),
        });
      }
      for (const event of fresh) {
        found.events.push(event);
        found.byId.set(event.id, event);
      }
      allEvents += fresh.length;
      dropOldest();
    },
    read: async (token, at) => {
      const found = use(token, at);
      return found ? stored(token, found) : null;
    },
    list: async (tokens, at) => {
      dropIdle(at);
      return tokens
        .flatMap((token) => {
          const found = kept.get(token);
          return found ? [summary(token, found)] : [];
        })
        .sort((a, b) => b.usedAt - a.usedAt);
    },
  };
}

function newOnes(found: Kept, events: readonly ConversationEvent[]): ConversationEvent[] {
  const seen = new Map<string, ConversationEvent>();
  for (const event of events) {
    const earlier = found.byId.get(event.id) ?? seen.get(event.id);
    if (!earlier) seen.set(event.id, event);
    else if (!isSameEvent(earlier, event)) {
      throw codedError('EVENT_CHANGED', { expected: `event ${event.id} as it was`, came: 'other content' });
    }
  }
  return [...seen.values()];
}

function stored(token: string, found: Kept): StoredConversation {
  return { token, createdAt: found.createdAt, usedAt: found.usedAt, events: [...found.events] };
}

function summary(token: string, found: Kept): ConversationSummary {
  const started = latestStart(found.events);
  return {
    token,
    createdAt: found.createdAt,
    usedAt: found.usedAt,
    eventCount: found.events.length,
    fieldName: started?.field?.name ?? null,
  };
}
