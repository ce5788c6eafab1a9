import { type ClientOptions, WebSocket } from 'ws';
import { protocolVersion, type ServerMessage, type ServerMessageType } from '../../../src/core/protocol/messages.ts';
import { parseServerMessage } from '../../../src/core/protocol/parse-message.ts';
import type { ServerMessageOf } from '../../../src/core/protocol/server-messages.ts';

/** How a connection ended. */
export interface Closed {
  readonly code: number;
  readonly reason: string;
}

/** A client that believes only what the protocol's schemas accept. */
export interface ChatClient {
  readonly socket: WebSocket;
  readonly sendText: (text: string) => void;
  readonly send: (message: object) => void;
  /** The next message of a kind, others being passed over. */
  readonly next: <K extends ServerMessageType>(type: K) => Promise<ServerMessageOf<K>>;
  readonly closed: Promise<Closed>;
}

/** Opens a chat at a server's address, as one of its own pages. */
export async function openChat(url: string, options: ClientOptions = {}): Promise<ChatClient> {
  const socket = new WebSocket(`${url.replace('http', 'ws')}/chat`, { origin: url, ...options });
  const waiting: ((message: ServerMessage) => void)[] = [];
  const arrived: ServerMessage[] = [];
  let fail = (_error: unknown): void => {};
  const failed = new Promise<never>((_, reject) => {
    fail = reject;
  });
  failed.catch(() => {});
  socket.on('message', (data) => {
    const parsed = parseServerMessage(data.toString());
    if (!parsed.ok) return fail(new Error(JSON.stringify(parsed.error)));
    const taker = waiting.shift();
    if (taker) taker(parsed.message);
    else arrived.push(parsed.message);
  });
  const closed = new Promise<Closed>((resolve) => {
    socket.on('close', (code, reason) => {
      resolve({ code, reason: reason.toString() });
      fail(new Error(`closed with ${code} ${reason}`));
    });
  });
  socket.on('error', () => {});
  await new Promise<void>((resolve, reject) => {
    socket.once('open', resolve);
    socket.once('error', reject);
  });
  const one = () => {
    const early = arrived.shift();
    return early ? Promise.resolve(early) : new Promise<ServerMessage>((resolve) => waiting.push(resolve));
  };
  return {
    socket,
    closed,
    sendText: (text) => socket.send(text),
    send: (message) => socket.send(JSON.stringify(message)),
    next: async <K extends ServerMessageType>(type: K) => {
      for (;;) {
        const message = await Promise.race([one(), failed]);
        if (message.type === type) return message as ServerMessageOf<K>;
      }
    },
  };
}

/** Opens a chat and says hello. */
export async function greet(url: string, resume: string | null = null, options: ClientOptions = {}) {
  const client = await openChat(url, options);
  client.send({ type: 'hello', protocol: protocolVersion, resume });
  return { client, welcome: await client.next('welcome') };
}

let counted = 0;
/** Stamp of an event of a test client at a moment, with an id of its own unless one is given. */
export function stampAt(at: number, device = 'test', id?: string) {
  counted += 1;
  return { id: id ?? `event-${counted}`, at, device, count: counted };
}
