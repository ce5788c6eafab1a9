import { lateChecks } from './chat/checks.ts';
import type { ChatMeans } from './chat/means.ts';
import { createMemory } from './chat/memory.ts';
import { type EarlySocket, openChatSocket } from './early-socket.ts';

/** The browser's own socket, clock, timers, randomness and storage; the first socket is the one that was opened early. */
export function browserMeans(opened: EarlySocket | null = null): ChatMeans {
  let early = opened;
  return {
    openSocket: (listener) => {
      const openFresh = () => openChatSocket(listener);
      const adopted = early?.adopt(listener, openFresh) ?? null;
      early = null;
      return adopted ?? openFresh();
    },
    now: () => Date.now() / 1000,
    steady: () => performance.now() / 1000,
    after: (ms, call) => {
      const timer = setTimeout(call, ms);
      return () => clearTimeout(timer);
    },
    check: lateChecks(() =>
      import('../src/core/protocol/parse-message.ts').then((loaded) => loaded.parseServerMessage),
    ),
    random: Math.random,
    newId: randomUuid,
    memory: createMemory(() => localStorage),
    language: document.documentElement.lang,
  };
}

/** A random UUID (RFC 9562, version 4). Made from random bytes since `crypto.randomUUID` is absent on plain HTTP. */
function randomUuid(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6]! & 0x0f) | 0x40;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  const hex = Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

/** A token for a conversation that is begun without a server: 256 random bits as 64 hex digits. */
export function randomToken(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(32)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
