import { once } from 'node:events';
import { createServer } from 'node:net';
import { expect, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import { fakeIo } from './fake-io.ts';

/** Runs serve until its address is out, asks for its health, then stops it; tells how many folders were followed then, and after. */
async function served(env: Readonly<Record<string, string>>) {
  const io = fakeIo();
  let url = '';
  let health = 0;
  let open = 0;
  let watched = 0;
  const status = await runCommandLine(['serve', '--json'], {
    ...io,
    env: { LOAMWARD_FORECAST: 'off', ...env },
    write: (text) => {
      url = JSON.parse(text).url;
    },
    watch: () => {
      open += 1;
      return () => {
        open -= 1;
      };
    },
    untilStopped: async () => {
      health = (await fetch(`${url}/health`)).status;
      watched = open;
    },
  });
  return { status, url, health, watched, left: open };
}

test('serve prints its address on loopback and answers there', async () => {
  const { status, url, health } = await served({ LOAMWARD_PORT: '0' });
  expect(url).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
  expect([status, health]).toEqual([0, 200]);
});

test('serve on a port that was set and is taken ends with PORT_TAKEN', async () => {
  const other = createServer().listen(0, '127.0.0.1');
  await once(other, 'listening');
  const address = other.address();
  const port = typeof address === 'object' && address ? address.port : 0;
  const io = fakeIo();
  const status = await runCommandLine(['serve'], { ...io, env: { LOAMWARD_PORT: String(port) } });
  other.close();
  expect(status).toBe(2);
  expect(io.err()).toContain('PORT_TAKEN');
});

test('serve takes any free port where none was set and the usual one is taken, and goes on following its rule files', async () => {
  const other = createServer();
  const tookIt = await new Promise<boolean>((resolve) => {
    other.once('error', () => resolve(false));
    other.listen(8080, '127.0.0.1', () => resolve(true));
  });
  const { status, url, health, watched, left } = await served({});
  if (tookIt) other.close();
  expect([status, health]).toEqual([0, 200]);
  expect(watched).toBeGreaterThan(0);
  expect(left).toBe(0);
  expect(url).not.toMatch(/:8080$/);
});
