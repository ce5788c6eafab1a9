import { isLoamwardError } from '../../core/errors/coded-error.ts';
import type { Catalogue } from '../../core/words/catalogue.ts';
import { errorLine } from '../error-line.ts';
import type { Io } from '../io.ts';

/** What one run of a check came to: what to print, and the exit status. */
export interface Run {
  readonly text: string;
  readonly status: number;
}

/**
 * Runs a check, and again after every change in the folders, until the process is asked to end; resolves to the status of the
 * last run. A change while a check runs starts one more after it. A coded error, such as a file that cannot be read, is printed
 * as the result of its run.
 */
export async function checkOnChange(
  check: () => Promise<Run>,
  folders: readonly string[],
  io: Io,
  words: Catalogue,
): Promise<number> {
  let status = 0;
  let changes = 0;
  let busy = false;
  const run = async (): Promise<void> => {
    busy = true;
    for (let seen = -1; seen !== changes; ) {
      seen = changes;
      const result = await check().catch((error: unknown) => failed(error, words));
      status = result.status;
      io.write(`${clockTime(io, words)} ${result.text}`);
    }
    busy = false;
  };
  let last = Promise.resolve();
  const stop = io.watch(folders, () => {
    changes += 1;
    if (!busy) last = run();
  });
  io.writeError(`${words.check.watching}\n`);
  if (!busy) last = run();
  await io.untilStopped();
  stop();
  await last;
  return status;
}

function failed(error: unknown, words: Catalogue): Run {
  if (!isLoamwardError(error)) throw error;
  return { text: `${errorLine(error.toJSON(), words)}\n`, status: 2 };
}

function clockTime(io: Io, { language }: Catalogue): string {
  const zone = io.env['TZ'];
  const format = { timeStyle: 'medium', hourCycle: 'h23', ...(zone ? { timeZone: zone } : {}) } as const;
  return new Intl.DateTimeFormat(language, format).format(io.now() * 1000);
}
