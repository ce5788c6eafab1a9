import { randomUUID } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import type { Io } from './io.ts';
import { runCommandLine } from './main.ts';
import { watchFolders } from './watch-folders.ts';

/** The command line in Node: real files, streams, clock and signals. `root` is the project's folder. */
export async function main(root: string): Promise<void> {
  process.stdout.on('error', endOnBrokenPipe);
  process.exitCode = await runCommandLine(process.argv.slice(2), nodeIo(root));
}

/** `loamward … | head` closes our output early: that is no failure. */
function endOnBrokenPipe(error: NodeJS.ErrnoException): void {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
}

function nodeIo(root: string): Io {
  return {
    write: (text) => void process.stdout.write(text),
    writeError: (text) => void process.stderr.write(text),
    readText: (path) => (path === '-' ? readStandardInput() : readFile(path, 'utf8')),
    lines: () => createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY }),
    interactive: process.stdin.isTTY === true && process.stdout.isTTY === true,
    env: process.env,
    root,
    now: () => Date.now() / 1000,
    newId: randomUUID,
    watch: watchFolders,
    untilStopped: () =>
      new Promise((resolve) => {
        for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => resolve());
      }),
  };
}

async function readStandardInput(): Promise<string> {
  let text = '';
  for await (const chunk of process.stdin.setEncoding('utf8')) text += chunk;
  return text;
}
