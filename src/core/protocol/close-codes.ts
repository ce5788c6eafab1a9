import type { ErrorEntry } from '../errors/entry.ts';
import { type ErrorCode, errorTable } from '../errors/table.ts';

/** Web socket close codes of RFC 6455, section 7.4.1, and of the registry that it opens, as this protocol uses them. */
export const closeCodes = {
  normal: 1000,
  goingAway: 1001,
  unsupportedData: 1003,
  invalidText: 1007,
  policy: 1008,
  tooBig: 1009,
  internal: 1011,
  tryAgainLater: 1013,
  /** Private range: another version of the protocol; reload. */
  otherVersion: 4001,
} as const;

/** Close code that goes with an error code, or null where that error leaves the connection open. */
export function closeCodeOf(code: ErrorCode): number | null {
  return (errorTable[code] as ErrorEntry).closeCode ?? null;
}
