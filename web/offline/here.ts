import type { RunningConversation } from '../../src/adapters/conversation/types.ts';
import type { ConversationView } from '../../src/core/dialogue/view-types.ts';
import type { ErrorReport } from '../../src/core/errors/coded-error.ts';
import type { EventMessage, Notice } from '../../src/core/protocol/messages.ts';

/** The conversation as the page itself runs it. */
export interface Here {
  /** Takes what a person did, one after another. */
  readonly take: (message: EventMessage) => void;
  /** True where nothing is being taken or worked out. */
  readonly isIdle: () => boolean;
  readonly settled: () => Promise<void>;
  readonly stop: () => void;
}

/** What is told of it. */
export interface HereListener {
  readonly onView: (view: ConversationView) => void;
  readonly onNotice: (notice: Notice) => void;
  /** A message is kept for good, or refused for good. */
  readonly onTaken: (message: EventMessage, refused: ErrorReport | null) => void;
  readonly onError: (error: ErrorReport) => void;
}

/** Lets the page talk to a conversation that runs in it. */
export function createHere(running: RunningConversation, listener: HereListener): Here {
  let waiting = 0;
  let stopped = false;
  let turn: Promise<void> = Promise.resolve();
  const stopListening = running.listen(listener);
  return {
    take: (message) => {
      waiting += 1;
      turn = turn.then(async () => {
        const refused = stopped ? null : await running.receive(message);
        if (!stopped) listener.onTaken(message, refused);
        waiting -= 1;
      });
    },
    isIdle: () => waiting === 0,
    settled: async () => {
      await turn;
      await running.settled();
    },
    stop: () => {
      stopped = true;
      stopListening();
    },
  };
}
