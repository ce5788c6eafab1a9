import type { ErrorEntry } from '../entry.ts';

/** Failures of the socket protocol and the server. */
export const protocolErrors = {
  MESSAGE_MALFORMED: { says: 'The message is not of the protocol.', next: 'Reload the page.', closeCode: 1007 },
} as const satisfies Record<string, ErrorEntry>;
