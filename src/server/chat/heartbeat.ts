import type { Timers } from '../../adapters/clock.ts';
import { guard } from './guard.ts';

/** Time between two pings, ms. */
export const heartbeatMs = 25_000;

/** What of a web socket the heartbeat uses. */
export interface BeatingSocket {
  readonly ping: () => void;
  readonly terminate: () => void;
}

/** Finds out which peers are gone. */
export interface Heartbeat {
  readonly add: (socket: BeatingSocket) => void;
  readonly remove: (socket: BeatingSocket) => void;
  /** The peer answered a ping. */
  readonly answered: (socket: BeatingSocket) => void;
  readonly stop: () => void;
}

/** Pings every peer each 25 s and cuts off one that has not answered the ping before. */
export function startHeartbeat(timers: Timers, onSilent: () => void, onFault: (error: unknown) => void): Heartbeat {
  const awaited = new Map<BeatingSocket, boolean>();
  const beat = (socket: BeatingSocket, waiting: boolean): void => {
    if (!waiting) {
      awaited.set(socket, true);
      socket.ping();
      return;
    }
    awaited.delete(socket);
    onSilent();
    socket.terminate();
  };
  const safely = guard(onFault, beat);
  const stop = timers.every(heartbeatMs, () => {
    for (const [socket, waiting] of [...awaited]) safely(socket, waiting);
  });
  return {
    add: (socket) => void awaited.set(socket, false),
    remove: (socket) => void awaited.delete(socket),
    answered: (socket) => {
      if (awaited.has(socket)) awaited.set(socket, false);
    },
    stop,
  };
}
