import type { ConversationEvent } from '../../core/dialogue/events.ts';
import type { EpochSeconds } from '../../core/units/brands.ts';

/** A conversation as kept: its append-only events and when it was last used. */
export interface StoredConversation {
  /** Secret that lets a client go on with it; at least 128 random bits. */
  readonly token: string;
  readonly createdAt: EpochSeconds;
  readonly usedAt: EpochSeconds;
  readonly events: readonly ConversationEvent[];
}

/** What a list shows of a conversation. */
export interface ConversationSummary {
  readonly token: string;
  readonly createdAt: EpochSeconds;
  readonly usedAt: EpochSeconds;
  readonly eventCount: number;
  /** Name of the field it is about; null for an own field or where nothing has begun. */
  readonly fieldName: string | null;
}

/**
 * Where conversations are kept. Events are only ever added: the same id handed over again with the same content changes
 * nothing, with other content it is refused (EVENT_CHANGED). A token that is not there is refused (CONVERSATION_GONE).
 */
export interface ConversationStore {
  readonly create: (token: string, at: EpochSeconds) => Promise<void>;
  readonly append: (token: string, events: readonly ConversationEvent[], at: EpochSeconds) => Promise<void>;
  /** The conversation, or null where it is not (or no longer) there. Reading counts as use. */
  readonly read: (token: string, at: EpochSeconds) => Promise<StoredConversation | null>;
  /** Summaries of those of the tokens that are there, last used first. */
  readonly list: (tokens: readonly string[], at: EpochSeconds) => Promise<readonly ConversationSummary[]>;
}
