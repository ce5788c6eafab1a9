import type { ConversationEvent } from '../../src/core/dialogue/events.ts';
import type { ErrorReport } from '../../src/core/errors/coded-error.ts';
import type { Shelf } from './shelf.ts';
import type { SyncServer } from './sync-server.ts';

/** Most letters of one hand-over; the server takes 1 MB, and a letter may take three bytes. */
const mostLetters = 300_000;

/** How handing over ended. */
export type HandOverEnd =
  /** The server has everything; `kept` events are there in all, null where nothing had to be handed over. */
  | { readonly kind: 'done'; readonly kept: number | null; readonly said: number; readonly refused: ErrorReport | null }
  /** The server judges by other rules than those of the conversation. */
  | { readonly kind: 'other-rules' }
  | { readonly kind: 'refused'; readonly error: ErrorReport }
  | { readonly kind: 'unreached' };

/**
 * Hands over what the server does not have, in parts, until nothing is left. What it has in other words than this device counts as
 * handed over: the server's come back with the next fetch. `settled` waits for what is still being worked out.
 */
export async function handOverAll(means: {
  readonly server: Pick<SyncServer, 'handOver'>;
  readonly shelf: Shelf;
  readonly settled: () => Promise<void>;
  readonly onProgress: (left: number) => void;
}): Promise<HandOverEnd> {
  const { server, shelf, settled, onProgress } = means;
  let kept: number | null = null;
  let said = 0;
  let refused: ErrorReport | null = null;
  for (;;) {
    await settled();
    const unsent = shelf.unsent();
    onProgress(saidIn(unsent));
    if (unsent.length === 0) return { kind: 'done', kept, said, refused };
    const part = firstPart(unsent);
    const answered = await server.handOver(shelf.token, part);
    if (!('ok' in answered)) {
      if (answered.error === null || answered.error.code === 'REQUESTS_TOO_FAST') return { kind: 'unreached' };
      return { kind: 'refused', error: answered.error };
    }
    const { ok } = answered;
    if (ok.refused.some(({ error }) => error.code === 'CONVERSATION_OTHER_RULES')) return { kind: 'other-rules' };
    refused = ok.refused.find(({ error }) => error.code !== 'EVENT_CHANGED')?.error ?? refused;
    kept = ok.count;
    said += saidIn(part);
    await shelf.markHanded(part.map(({ id }) => id));
  }
}

/** How many of these a person said or pressed. */
function saidIn(events: readonly ConversationEvent[]): number {
  return events.filter(({ kind }) => kind in byPerson).length;
}

const byPerson: Partial<Record<ConversationEvent['kind'], true>> = {
  started: true,
  said: true,
  answered: true,
  requested: true,
  undone: true,
};

function firstPart(events: readonly ConversationEvent[]): readonly ConversationEvent[] {
  const ordered = [...events].sort((a, b) => a.at - b.at);
  let letters = 0;
  const end = ordered.findIndex((event, index) => {
    letters += JSON.stringify(event).length;
    return index > 0 && letters > mostLetters;
  });
  return end < 0 ? ordered : ordered.slice(0, end);
}
