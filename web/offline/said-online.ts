import type { Memory } from '../chat/memory.ts';
import { type Outbox, parseOutbox, without } from '../chat/outbox.ts';

const key = 'loamward.unmirrored';

/**
 * What the server has confirmed but this device has not fetched back yet: without a connection it is said again to the page's own
 * conversation, so that nothing is asked twice. Kept with the token that it belongs to.
 */
export interface SaidOnline {
  readonly of: (token: string | null) => Outbox;
  readonly add: (token: string | null, messages: Outbox) => void;
  /** These have been fetched. */
  readonly drop: (token: string | null, ids: ReadonlySet<string>) => void;
}

/** Reads and writes it in the browser's small store. */
export function saidOnline(memory: Memory): SaidOnline {
  const read = (token: string | null): Outbox => {
    const kept = memory.read(key) ?? '';
    const at = kept.indexOf(' ');
    return token !== null && kept.slice(0, at) === token ? parseOutbox(kept.slice(at + 1)) : [];
  };
  const write = (token: string | null, messages: Outbox): void =>
    memory.write(key, token === null || messages.length === 0 ? null : `${token} ${JSON.stringify(messages)}`);
  return {
    of: read,
    add: (token, messages) =>
      write(token, [...without(read(token), new Set(messages.map(({ id }) => id))), ...messages]),
    drop: (token, ids) => {
      const before = read(token);
      if (before.some(({ id }) => ids.has(id))) write(token, without(before, ids));
    },
  };
}
