import type { ErrorEntry } from '../entry.ts';

/** Failures of the command line. */
export const commandErrors = {
  COMMAND_UNKNOWN: { says: 'There is no such command.', next: 'See loamward --help.' },
  OPTION_UNKNOWN: { says: 'There is no such option.', next: 'See --help of the command.' },
  OPTION_VALUE: { says: 'An option has no value, or one that it cannot take.', next: 'See --help of the command.' },
  FILE_UNREADABLE: { says: 'A file could not be read.', next: 'Check that it is there and may be read.' },
  WEATHER_FILE_WRONG: {
    says: 'A file of daily weather records has not the form that is read.',
    next: 'Mend the place named; docs/adviser.md shows the form.',
  },
  FILE_NOT_JSON: { says: 'A file is not JSON.', next: 'Mend the place named.' },
  FILE_KEY_REPEATED: {
    says: 'A file gives one key twice.',
    next: 'Leave out the one that is not right.',
  },
  PRACTICE_FILE_MISFIT: {
    says: 'A file of practice days or answers does not have the form that it must have.',
    next: 'Have it made anew by loamward practice days, or name another file.',
  },
  PACK_FOLDER_TAKEN: {
    says: 'The folder for a new pack holds something already, and nothing is written over it.',
    next: 'Give another id, or name an empty folder with --in.',
  },
  PACK_NOT_WRITTEN: {
    says: 'The files of a new pack could not be written.',
    next: 'Name a folder that you may write to with --in.',
  },
  PACK_UNKNOWN: { says: 'There is no treatment pack of this name.', next: 'Name a folder under rules/, or a path.' },
  MOMENT_UNREADABLE: {
    says: 'The moment could not be read.',
    next: 'Write it as ISO 8601 with its offset, for example 2026-11-06T09:00Z.',
  },
  BUILD_FAILED: { says: 'The page could not be built.', next: 'Run npm ci, then try again.' },
  PORT_TAKEN: {
    says: 'The server could not listen there.',
    next: 'Set LOAMWARD_PORT to a free port, or to 0 for any.',
  },
  UNEXPECTED: {
    says: 'Something failed that should not have.',
    next: 'Do not spray on this answer; report it with what you did.',
    httpStatus: 500,
  },
} as const satisfies Record<string, ErrorEntry>;
