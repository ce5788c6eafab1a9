import { randomUUID } from 'node:crypto';
import { jsonLog } from '../../../src/server/log.ts';
import { startServer } from '../../../src/server/main.ts';
import { serverSettingsFrom } from '../../../src/server/settings.ts';
import { emptyPack } from './pack.ts';
import { plainDialogue } from './plain-dialogue.ts';

/** A server in a process of its own: prints its address, serves until SIGTERM or SIGINT, closes and ends by itself. */
export async function main(): Promise<number> {
  const server = await startServer({
    settings: serverSettingsFrom({ LOAMWARD_PORT: '0' }),
    packs: [emptyPack],
    dialogue: plainDialogue(),
    newId: randomUUID,
    webRoot: '/no-such-folder',
    forecastService: { forecastFor: () => new Promise(() => {}) },
    log: jsonLog(
      (text) => void process.stderr.write(text),
      () => Date.now() / 1000,
    ),
  });
  const stopped = new Promise<void>((resolve) => {
    for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => resolve());
  });
  process.stdout.write(`${server.url}\n`);
  await stopped;
  await server.close();
  return 0;
}
