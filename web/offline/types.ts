import type { ConversationEvent } from '../../src/core/dialogue/events.ts';
import type { ErrorReport } from '../../src/core/errors/coded-error.ts';
import type { EventMessage, Notice } from '../../src/core/protocol/messages.ts';
import type { ServerMessageOf } from '../../src/core/protocol/server-messages.ts';
import type { Link, LinkState } from '../chat/link.ts';
import type { ChatMeans } from '../chat/means.ts';
import type { PageState } from '../chat/page-state.ts';
import type { Store } from '../store.ts';
import type { SyncServer } from './sync-server.ts';
import type { Vault } from './vault.ts';
import type { UseNewVersion } from './worker.ts';

/** What the chat lets its part for work without a connection do. */
export interface ChatInside {
  readonly means: ChatMeans;
  readonly state: Store<PageState>;
  readonly link: () => Link;
  /** A message is dealt with: it leaves the outbox. */
  readonly drop: (ids: readonly string[]) => void;
  /** Puts messages back before those that wait. */
  readonly putBack: (messages: readonly EventMessage[]) => void;
  /** Sends all that waits over the link. */
  readonly resend: () => void;
  /** A new conversation under this token, with what waits from the last start on. */
  readonly beginAnew: (token: string) => void;
  readonly onNotice: (notice: Notice) => void;
}

/** The outside of that part, so that tests can stand in for it. */
export interface OfflineParts {
  readonly vault: Vault;
  readonly server: SyncServer;
  readonly loadCore: () => Promise<typeof import('./core.ts')>;
  readonly newToken: () => string;
  /** Asks the browser not to throw away what is kept. */
  readonly persist: () => void;
  /** Keeps the page's own files; gives how to look for newer ones, or null where that cannot be. */
  readonly keepPage: (onNew: (use: UseNewVersion) => void, onKept: () => void) => (() => void) | null;
}

/** The page's part for work without a connection, as the chat uses it. */
export interface Offline {
  /** Epoch seconds UTC by the server's clock. */
  readonly now: () => number;
  /** A message stands in the outbox: taken by the page itself (true), or to be sent and waited for. */
  readonly take: (message: EventMessage) => boolean;
  readonly onConfirmed: (messages: readonly EventMessage[]) => void;
  readonly onWelcome: (welcome: ServerMessageOf<'welcome'>) => void;
  /** Other rules are in force on the server. */
  readonly onRules: () => void;
  /** False where the view is not to be shown, since the page answers by itself. */
  readonly onView: (message: ServerMessageOf<'view'>) => boolean;
  /** The server does not keep the conversation any more: said only where this device does not either. */
  readonly onGone: (error: ErrorReport) => void;
  readonly onLink: (state: LinkState) => void;
  /** Before a start: a conversation of another day, or about another treatment, is left as it is and a new one begun. */
  readonly beforeStart: (treatment: string | undefined) => Promise<void>;
  /** Goes to a kept conversation. */
  readonly goTo: (token: string) => Promise<void>;
  /** Every event of every conversation that this device keeps; null where it does not let them be read. */
  readonly saidEvents: () => Promise<readonly ConversationEvent[] | null>;
  /** The choice of a field is shown: the list of kept conversations is read anew. */
  readonly onChoose: () => void;
  /** Another page of this browser goes on. */
  readonly stop: () => void;
}
