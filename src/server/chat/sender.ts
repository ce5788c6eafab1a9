import type { Timers } from '../../adapters/clock.ts';
import type { ErrorCode } from '../../core/errors/table.ts';
import { closeCodeOf } from '../../core/protocol/close-codes.ts';
import type { ServerMessage } from '../../core/protocol/messages.ts';

/** Most bytes that may wait for one reader. */
export const mostWaitingBytes = 256 * 1024;

/** A closing handshake that is not answered is cut off after this long, ms. */
export const closeGraceMs = 2000;

/** What of a web socket the sender uses. */
export interface SendingSocket {
  readonly bufferedAmount: number;
  readonly send: (text: string, done: (error?: Error | null) => void) => void;
  readonly close: (code: number, reason: string) => void;
  readonly terminate: () => void;
}

/** Sends messages to one peer. */
export interface Sender {
  /** Sends, or closes with READER_TOO_SLOW (1013) where something waits and more than 256 kB would. Nothing after a close. */
  readonly send: (message: ServerMessage) => void;
  /** Closes with the close code that goes with an error code; cut off where the peer does not answer within 2 s. */
  readonly close: (code: ErrorCode) => void;
  /** Stops the timer of a close; call it when the socket has closed. */
  readonly closed: () => void;
}

/** A sender that never lets answers pile up. */
export function createSender(socket: SendingSocket, timers: Timers, onClose: (code: ErrorCode) => void): Sender {
  let closing = false;
  let stopTimer = (): void => {};
  const close = (code: ErrorCode): void => {
    if (closing) return;
    closing = true;
    stopTimer = timers.after(closeGraceMs, () => socket.terminate());
    socket.close(closeCodeOf(code) ?? 1011, code);
    onClose(code);
  };
  return {
    close,
    closed: () => {
      closing = true;
      stopTimer();
    },
    send: (message) => {
      if (closing) return;
      const text = JSON.stringify(message);
      const waiting = socket.bufferedAmount;
      if (waiting > 0 && waiting + Buffer.byteLength(text) > mostWaitingBytes) close('READER_TOO_SLOW');
      else socket.send(text, () => {});
    },
  };
}
