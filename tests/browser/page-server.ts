import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import { createMemoryStore } from '../../src/adapters/store/memory-store.ts';
import { reportOf } from '../../src/core/errors/coded-error.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { type StartedServer, startServer } from '../../src/server/main.ts';
import { standardServerSettings } from '../../src/server/settings.ts';
import { root as rootOfTests } from '../repo/files.ts';

/** The real server with the real page, pack and demo farm, and no forecast service. */
export interface PageServer {
  readonly url: () => string;
  /** Moves the server's clock on by seconds. */
  readonly pass: (seconds: number) => void;
  /** Closes the server and opens another over the same store at the same port. */
  readonly closeFor: (meanwhile: () => Promise<void>) => Promise<void>;
  /** Closes the server and removes the built page. */
  readonly end: () => Promise<void>;
}

/** Builds the page of the project at `root` into a folder of its own and serves it on a free loopback port. */
export async function startPageServer(root: string = rootOfTests): Promise<PageServer> {
  const webRoot = await mkdtemp(join(tmpdir(), 'loamward-page-'));
  await build({
    configFile: join(root, 'vite.config.ts'),
    logLevel: 'silent',
    build: { outDir: webRoot },
  });
  const { pack } = loadPack(await readPackFolder(join(root, 'rules', 'propyzamide-winter-oilseed-rape')));
  const store = createMemoryStore();
  const error = reportOf('FORECAST_OFF', { expected: 'a forecast', came: 'none in tests' });
  let passed = 0;
  const clock = { now: () => epochSeconds(Date.now() / 1000 + passed) };
  const open = (port: number): Promise<StartedServer> =>
    startServer({
      settings: { ...standardServerSettings, port, messagesPerSecond: 1e6, messageBurst: 1e6 },
      packs: [pack],
      store,
      clock,
      webRoot,
      forecastService: { forecastFor: async () => ({ error }) },
    });
  let server = await open(0);
  return {
    url: () => server.url,
    pass: (seconds) => {
      passed += seconds;
    },
    closeFor: async (meanwhile) => {
      const { port } = new URL(server.url);
      await server.close();
      await meanwhile();
      server = await open(Number(port));
    },
    end: async () => {
      await server.close();
      await rm(webRoot, { recursive: true, force: true });
    },
  };
}
