import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';

/** A server in a process of its own, so that what it costs and what asks it do not stand in one queue. */
export interface ChildServer {
  readonly url: string;
  readonly stop: () => Promise<void>;
}

/** Starts `node ...args` and waits for the address that it prints. Ends by a closed input and SIGTERM. */
export async function startChild(
  args: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<ChildServer> {
  const child = spawn(process.execPath, args, {
    env: { ...process.env, ...env },
    stdio: ['pipe', 'pipe', 'ignore'],
  });
  const lines = createInterface({ input: child.stdout });
  const [url] = (await once(lines, 'line')) as [string];
  return {
    url,
    stop: async () => {
      const ended = once(child, 'exit');
      child.stdin.end();
      child.kill('SIGTERM');
      await ended;
    },
  };
}
