import type { ChatMeans } from './chat/means.ts';
import { createMemory } from './chat/memory.ts';

/** The browser's own socket, clock, timers, randomness and storage. */
export function browserMeans(): ChatMeans {
  return {
    openSocket: ({ onOpen, onText, onClose }) => {
      const socket = new WebSocket(new URL('/chat', location.href.replace(/^http/, 'ws')));
      socket.addEventListener('open', onOpen);
      socket.addEventListener('message', ({ data }) => onText(String(data)));
      socket.addEventListener('close', ({ code }) => onClose(code));
      return {
        send: (text) => {
          if (socket.readyState === WebSocket.OPEN) socket.send(text);
        },
        close: () => socket.close(),
      };
    },
    now: () => Date.now() / 1000,
    steady: () => performance.now() / 1000,
    after: (ms, call) => {
      const timer = setTimeout(call, ms);
      return () => clearTimeout(timer);
    },
    random: Math.random,
    newId: randomUuid,
    memory: createMemory(() => localStorage),
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
