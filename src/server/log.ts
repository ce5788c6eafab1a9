import type { ErrorCode } from '../core/errors/table.ts';

/** One line of the log: what happened, codes and counts. Never anything that a person typed, a token or an address. */
export interface LogLine {
  readonly event:
    | 'listening'
    | 'closing'
    | 'closed'
    | 'connected'
    | 'disconnected'
    | 'refused'
    | 'silent'
    | 'message'
    | 'message-refused'
    | 'handed-over'
    | 'shown'
    | 'taken-back'
    | 'rules-taken'
    | 'rules-refused'
    | 'overlay-written'
    | 'fault';
  readonly code?: ErrorCode;
  /** Id of the treatment pack whose rules were taken or refused. */
  readonly pack?: string;
  /** Kind of message, from the closed list of the protocol. */
  readonly kind?: string;
  readonly closeCode?: number;
  readonly connections?: number;
  /** Events taken in, and refused, of a hand-over. */
  readonly taken?: number;
  readonly refused?: number;
  /** Name of the class of an unexpected error; never its message, which may repeat what came. */
  readonly fault?: string;
}

/** Takes one line of the log. */
export type Log = (line: LogLine) => void;

/** A log that writes nothing. */
export const silentLog: Log = () => {};

/** A log of one JSON object a line, with the moment in ISO 8601. */
export function jsonLog(write: (text: string) => void, now: () => number): Log {
  return (line) => write(`${JSON.stringify({ at: new Date(now() * 1000).toISOString(), ...line })}\n`);
}

/** Class name of something thrown. */
export function faultName(error: unknown): string {
  return error instanceof Error ? error.name : typeof error;
}
