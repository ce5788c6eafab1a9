import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { expect, onTestFinished, test } from 'vitest';
import { root } from '../repo/files.ts';
import { greet, stampAt } from './support/chat-client.ts';

/** Starts the server in a process of its own and resolves once it says where it listens. */
async function startChild(): Promise<{ child: ChildProcess; url: string; log: Promise<string> }> {
  const args = [join(root, 'src/tools/run.mjs'), 'tests/server/support/serve-child.ts'];
  const child = spawn(process.execPath, args, { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
  onTestFinished(() => void child.kill('SIGKILL'));
  const log = text(child.stderr!);
  const [line] = (await once(child.stdout!, 'data')) as [Buffer];
  return { child, url: line.toString().trim(), log };
}

test.each(['SIGTERM', 'SIGINT'] as const)(
  '%s in the middle of an answer tells clients by 1001 and ends the process by itself, also where one client sleeps',
  async (signal) => {
    const { child, url, log } = await startChild();
    const { client, welcome } = await greet(url);
    const sleeper = await greet(url);
    sleeper.client.socket.pause();
    client.send({ type: 'start', ...stampAt(welcome.serverTime), field: null });
    await client.next('view');
    const exited = once(child, 'exit');
    child.kill(signal);
    expect((await client.next('error')).error.code).toBe('SERVER_CLOSING');
    expect(await client.closed).toEqual({ code: 1001, reason: 'SERVER_CLOSING' });
    expect(await exited).toEqual([0, null]);
    const events = (await log)
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line).event);
    expect([events[0], events.at(-1)]).toEqual(['listening', 'closed']);
    sleeper.client.socket.terminate();
  },
);
