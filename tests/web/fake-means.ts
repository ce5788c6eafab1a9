import { parseServerMessage } from '../../src/core/protocol/parse-message.ts';
import { protocolVersion } from '../../src/core/protocol/version.ts';
import type { ChatMeans, SocketListener } from '../../web/chat/means.ts';
import { createMemory, type Memory } from '../../web/chat/memory.ts';

/** One socket that a chat opened, as the server's side sees it. */
export interface FakeSocket {
  readonly listener: SocketListener;
  /** What the page sent, parsed. */
  readonly sent: Record<string, unknown>[];
  readonly isClosed: () => boolean;
  readonly hear: (message: object) => void;
  /** Opens it and welcomes. */
  readonly welcome: (resumed?: boolean) => void;
}

/** Means of a chat with sockets, time and storage in a test's hand. */
export interface FakeMeans extends ChatMeans {
  readonly sockets: FakeSocket[];
  readonly lastSocket: () => FakeSocket;
  /** Moves the clock and calls what is due, in order. */
  readonly pass: (ms: number) => void;
}

/** A storage as browsers have it, in a map. */
export function mapStorage() {
  const map = new Map<string, string>();
  return {
    getItem: (key: string) => map.get(key) ?? null,
    setItem: (key: string, value: string) => void map.set(key, value),
    removeItem: (key: string) => void map.delete(key),
  };
}

function mapMemory(): Memory {
  const storage = mapStorage();
  return createMemory(() => storage);
}

/** Fresh means; give `memory` to stand for the same browser after a reload. */
export function fakeMeans(memory: Memory = mapMemory()): FakeMeans {
  const sockets: FakeSocket[] = [];
  let now = 1_800_000_000_000;
  let ids = 0;
  let timers: { readonly due: number; readonly call: () => void }[] = [];
  return {
    sockets,
    lastSocket: () => sockets.at(-1)!,
    openSocket: (listener) => {
      const sent: Record<string, unknown>[] = [];
      let closed = false;
      const hear = (message: object) => listener.onText(JSON.stringify(message));
      const close = (): void => {
        closed = true;
      };
      const welcome = (resumed = false) => {
        listener.onOpen();
        hear({
          type: 'welcome',
          protocol: protocolVersion,
          token: 'token-of-this-conversation',
          resumed,
          fields: [{ id: 'mill-piece', name: 'Mill Piece', invented: true, note: 'Invented.' }],
          serverTime: now / 1000 + 30,
          packTitle: 'A pack',
        });
      };
      sockets.push({ listener, sent, isClosed: () => closed, hear, welcome });
      return { send: (text) => void sent.push(JSON.parse(text)), close };
    },
    now: () => now / 1000,
    steady: () => now / 1000,
    after: (ms, call) => {
      const timer = { due: now + ms, call };
      timers.push(timer);
      return () => {
        timers = timers.filter((one) => one !== timer);
      };
    },
    check: (frame, then) => then(parseServerMessage(frame)),
    random: () => 1,
    newId: () => `id-${Math.round(now)}-${++ids}`,
    memory,
    pass: (ms) => {
      const end = now + ms;
      for (;;) {
        const next = timers.filter(({ due }) => due <= end).sort((a, b) => a.due - b.due)[0];
        if (!next) break;
        timers = timers.filter((one) => one !== next);
        now = next.due;
        next.call();
      }
      now = end;
    },
  };
}
