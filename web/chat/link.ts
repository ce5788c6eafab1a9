import type { ErrorReport } from '../../src/core/errors/coded-error.ts';
import { closeCodes } from '../../src/core/protocol/close-codes.ts';
import type { ClientMessage } from '../../src/core/protocol/messages.ts';
import type { Parsed } from '../../src/core/protocol/parse-message.ts';
import type { ServerMessage } from '../../src/core/protocol/server-messages.ts';
import { protocolVersion } from '../../src/core/protocol/version.ts';
import { backoffMs } from './backoff.ts';
import { helloText } from './hello.ts';
import type { ChatMeans, Socket } from './means.ts';

/** How often an idle connection is tried, ms. */
export const aliveEveryMs = 20_000;
/** How long the server may take to answer that, or to welcome, ms. */
export const aliveWithinMs = 10_000;

/** State of the connection: never ready yet, ready, lost and tried again, or of no use until the page is loaded anew. */
export type LinkState = 'connecting' | 'ready' | 'lost' | 'other-version';

/** What a link tells. */
export interface LinkListener {
  readonly resumeToken: () => string | null;
  readonly onState: (state: LinkState) => void;
  readonly onMessage: (message: ServerMessage) => void;
  /** A frame that is none of the protocol. */
  readonly onGarbled: (error: ErrorReport) => void;
}

/** A connection that comes back by itself. */
export interface Link {
  /** Sends where the connection is ready; false otherwise. */
  readonly send: (message: ClientMessage) => boolean;
  readonly isReady: () => boolean;
  /** Calls back once the server has dealt with all that was sent before; never, where the connection is lost first. */
  readonly afterDealtWith: (call: () => void) => void;
  /** Tries at once instead of after the wait; tests a connection that seems ready. */
  readonly hurry: () => void;
  /** Drops the connection and comes back after a wait. */
  readonly drop: () => void;
  /** Says hello anew at once, on a connection of its own: for another conversation, or one that the server has by now. */
  readonly restart: () => void;
  readonly stop: () => void;
}

/** Opens a link and keeps it open: hello first, then alive messages, then again after a wait that grows. */
export function createLink(means: ChatMeans, listener: LinkListener): Link {
  let socket: Socket | null = null;
  let state: LinkState = 'connecting';
  let attempt = 0;
  let stopped = false;
  let marks: (() => void)[] = [];
  let cancel = (): void => {};

  const enter = (next: LinkState): void => {
    state = next;
    listener.onState(next);
  };
  const next = (ms: number, call: () => void): void => {
    cancel();
    cancel = means.after(ms, call);
  };
  const raw = (message: ClientMessage): void => socket?.send(JSON.stringify(message));
  const mark = (call: () => void): void => {
    marks.push(call);
    raw({ type: 'alive' });
    next(aliveWithinMs, lose);
  };
  const rest = (): void => next(aliveEveryMs, () => mark(() => {}));
  const lose = (): void => {
    const old = socket;
    socket = null;
    marks = [];
    old?.close();
    if (stopped || state === 'other-version') {
      cancel();
      return;
    }
    enter('lost');
    next(backoffMs(attempt, means.random()), open);
    attempt += 1;
  };
  const welcome = (protocol: number): void => {
    attempt = 0;
    enter(protocol === protocolVersion ? 'ready' : 'other-version');
    if (state === 'other-version') lose();
  };
  const hear = (parsed: Parsed<ServerMessage>): void => {
    if (!parsed.ok) {
      listener.onGarbled(parsed.error);
      return;
    }
    const { message } = parsed;
    if (message.type === 'welcome') welcome(message.protocol);
    if (message.type === 'alive') marks.shift()?.();
    if (state === 'ready' && marks.length === 0) rest();
    if (state !== 'other-version') listener.onMessage(message);
  };
  const open = (): void => {
    const mine: Socket = means.openSocket({
      onOpen: () => {
        if (socket === mine) mine.send(helloText(listener.resumeToken(), means.language));
      },
      onText: (text) => {
        means.check(text, (parsed) => {
          if (socket === mine) hear(parsed);
        });
      },
      onClose: (code) => {
        if (socket !== mine) return;
        if (code === closeCodes.otherVersion) enter('other-version');
        lose();
      },
    });
    socket = mine;
    next(aliveWithinMs, lose);
  };

  open();
  return {
    isReady: () => state === 'ready',
    restart: () => {
      const old = socket;
      if (stopped || old === null || state === 'other-version') return;
      socket = null;
      marks = [];
      state = 'connecting';
      old.close();
      open();
    },
    send: (message) => {
      if (state === 'ready') raw(message);
      return state === 'ready';
    },
    afterDealtWith: (call) => {
      if (state === 'ready') mark(call);
    },
    hurry: () => {
      if (stopped || state === 'other-version') return;
      if (state === 'ready') mark(() => {});
      else if (socket === null) open();
    },
    drop: () => {
      if (state === 'ready') lose();
    },
    stop: () => {
      stopped = true;
      lose();
    },
  };
}
