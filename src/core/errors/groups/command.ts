import type { ErrorEntry } from '../entry.ts';

/** Failures of the command line. */
export const commandErrors = {
  COMMAND_UNKNOWN: { says: 'There is no such command.', next: 'See loamward --help.' },
  OPTION_UNKNOWN: { says: 'There is no such option.', next: 'See --help of the command.' },
} as const satisfies Record<string, ErrorEntry>;
