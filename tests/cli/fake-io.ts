import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import type { Io } from '../../src/cli/io.ts';

/** The project's folder. */
export const root = resolve(import.meta.dirname, '..', '..');

/** An Io that keeps what is written, gives files by name and lines from a list, at an invented moment: 09:00 UTC on 6 November 2026, a second later at each look. */
export function fakeIo(
  files: Readonly<Record<string, string>> = {},
  lines: readonly string[] = [],
): Io & { readonly out: () => string; readonly err: () => string } {
  let out = '';
  let err = '';
  let ids = 0;
  let seconds = -1;
  return {
    out: () => out,
    err: () => err,
    write: (text) => {
      out += text;
    },
    writeError: (text) => {
      err += text;
    },
    readText: async (path) => files[path] ?? readFile(path, 'utf8'),
    lines: async function* () {
      yield* lines;
    },
    interactive: false,
    env: { LOAMWARD_FORECAST: 'off' },
    root,
    now: () => {
      seconds += 1;
      return Date.UTC(2026, 10, 6, 9) / 1000 + seconds;
    },
    newId: () => {
      ids += 1;
      return `00000000-0000-4000-8000-${String(ids).padStart(12, '0')}`;
    },
    watch: () => () => {},
    untilStopped: async () => {},
  };
}
