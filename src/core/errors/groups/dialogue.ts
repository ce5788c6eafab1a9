import type { ErrorEntry } from '../entry.ts';

/** Failures inside a conversation. */
export const dialogueErrors = {
  EVENT_CHANGED: {
    says: 'An event of this id is already there with other content.',
    next: 'Start the page again; what was said first is kept.',
  },
} as const satisfies Record<string, ErrorEntry>;
