import type { Parsed } from '../../src/core/protocol/parse-message.ts';
import type { ServerMessage } from '../../src/core/protocol/server-messages.ts';
import type { Memory } from './memory.ts';

/** One open socket. */
export interface Socket {
  readonly send: (text: string) => void;
  readonly close: () => void;
}

/** What a socket calls. */
export interface SocketListener {
  readonly onOpen: () => void;
  readonly onText: (text: string) => void;
  /** `code` is a web socket close code. */
  readonly onClose: (code: number) => void;
}

/** All that the chat needs of the browser, so that tests can stand in for it. */
export interface ChatMeans {
  readonly openSocket: (listener: SocketListener) => Socket;
  /** This device's clock, epoch seconds UTC. */
  readonly now: () => number;
  /** Seconds that only ever rise while the page lives, whatever the clock is set to. */
  readonly steady: () => number;
  /** Calls once after `ms` milliseconds; returns how to stop it. */
  readonly after: (ms: number, call: () => void) => () => void;
  /** Checks a frame from the server, and gives what it is; in order, where the checks are still on their way later. */
  readonly check: (frame: string, then: (parsed: Parsed<ServerMessage>) => void) => void;
  /** 0..1. */
  readonly random: () => number;
  readonly newId: () => string;
  readonly memory: Memory;
  /** Language of the page, ISO 639-1; that of the conversation where absent. */
  readonly language?: string;
}
