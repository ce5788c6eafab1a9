import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { systemTimers } from '../../src/adapters/clock.ts';
import type { ForecastSource } from '../../src/adapters/conversation/types.ts';
import { onceQuiet, systemWatcher } from '../../src/adapters/folder-watcher.ts';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import { rulesReader } from '../../src/adapters/pack-files/read-rules.ts';
import { createMemoryStore } from '../../src/adapters/store/memory-store.ts';
import type { ConversationEvent } from '../../src/core/dialogue/events.ts';
import { reportOf } from '../../src/core/errors/coded-error.ts';
import { localDate } from '../../src/core/facts/local-day.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { silentLog } from '../../src/server/log.ts';
import { type StartedServer, startServer } from '../../src/server/main.ts';
import type { PackSource } from '../../src/server/rules/follow-pack.ts';
import { openRuleBook } from '../../src/server/rules/rule-book.ts';
import { standardServerSettings } from '../../src/server/settings.ts';
import { root as rootOfTests } from '../repo/files.ts';

const rape = 'propyzamide-winter-oilseed-rape';
const wheat = 'fluroxypyr-winter-wheat';

/** The real server with the real page, pack and demo farm, and no forecast service. */
export interface PageServer {
  readonly url: () => string;
  /** Moves the server's clock on by seconds. */
  readonly pass: (seconds: number) => void;
  /** Closes the server and opens another over the same store at the same port. */
  readonly closeFor: (meanwhile: () => Promise<void>) => Promise<void>;
  /** The events that the server keeps of a conversation. */
  readonly kept: (token: string) => Promise<readonly ConversationEvent[]>;
  /** From the next opening on the server knows no conversation any more. */
  readonly forget: () => void;
  /** What the forecast service gives from now on. */
  readonly forecastBy: (forecastFor: ForecastSource['forecastFor']) => void;
  /** The rules at hand; new conversations are judged by the first. */
  readonly rules: () => readonly [Pack, ...Pack[]];
  /** From the next opening on these are the rules at hand. */
  readonly useRules: (packs: readonly [Pack, ...Pack[]]) => void;
  /** Changes the built page: from the next opening on browsers find a newer one. */
  readonly renewPage: () => Promise<void>;
  /** Folder that the adviser's bench may write overlays into, where the server was started for it. */
  readonly overlays: string;
  /** Closes the server and removes the built page. */
  readonly end: () => Promise<void>;
}

/** Builds the page of the project at `root` into a folder of its own and serves it on a free loopback port. */
export async function startPageServer(
  root: string = rootOfTests,
  { benchWrites = false }: { readonly benchWrites?: boolean } = {},
): Promise<PageServer> {
  const webRoot = await mkdtemp(join(tmpdir(), 'loamward-page-'));
  await build({
    configFile: join(root, 'vite.config.ts'),
    logLevel: 'silent',
    build: { outDir: webRoot },
  });
  const packFolder = join(root, 'rules', rape);
  const { pack } = loadPack(await readPackFolder(packFolder));
  const overlays = await mkdtemp(join(tmpdir(), 'loamward-overlays-'));
  let store = createMemoryStore();
  let packs: readonly [Pack, ...Pack[]] = [pack];
  const error = reportOf('FORECAST_OFF', { expected: 'a forecast', came: 'none in tests' });
  let forecastFor: ForecastSource['forecastFor'] = async () => ({ error });
  let passed = 0;
  const clock = { now: () => epochSeconds(Date.now() / 1000 + passed) };
  const source = (pack: string, other: string): PackSource => ({
    read: rulesReader({ pack: join(root, 'rules', pack), overlays: [overlays], otherPacks: () => [other] }, (zone) =>
      localDate(clock.now(), zone),
    ),
    watch: (onChange) => onceQuiet(systemWatcher, systemTimers)([overlays], onChange),
  });
  const openRules = () =>
    openRuleBook({
      ...source(rape, wheat),
      others: { find: async () => [{ id: wheat, ...source(wheat, rape) }], watch: () => () => {} },
      now: clock.now,
      timers: systemTimers,
      log: silentLog,
    });
  const open = async (port: number): Promise<StartedServer> => {
    const rules = benchWrites ? await openRules() : null;
    const started = await startServer({
      ...(rules === null ? {} : { rules }),
      settings: { ...standardServerSettings, overlays, benchWrites, port, messagesPerSecond: 1e6, messageBurst: 1e6 },
      packs,
      store,
      clock,
      webRoot,
      forecastService: { forecastFor: (point) => forecastFor(point) },
    });
    const close = async (): Promise<void> => {
      await started.close();
      rules?.close();
    };
    return { ...started, close };
  };
  let server = await open(0);
  return {
    url: () => server.url,
    pass: (seconds) => {
      passed += seconds;
    },
    closeFor: async (meanwhile) => {
      const { port } = new URL(server.url);
      await server.close();
      try {
        await meanwhile();
      } finally {
        server = await open(Number(port));
      }
    },
    kept: async (token) => (await store.read(token, clock.now()))?.events ?? [],
    forget: () => {
      store = createMemoryStore();
    },
    forecastBy: (by) => {
      forecastFor = by;
    },
    rules: () => packs,
    useRules: (others) => {
      packs = others;
    },
    renewPage: async () => {
      const worker = join(webRoot, 'sw.js');
      const index = join(webRoot, 'index.html');
      const page = await readFile(index, 'utf8');
      await writeFile(index, page.replace('<title>', '<meta name="newer" content="yes" /><title>'));
      const text = await readFile(worker, 'utf8');
      await writeFile(worker, text.replace(/(url:"index\.html",revision:")\w+/, '$1newer'));
    },
    overlays,
    end: async () => {
      await server.close();
      await rm(overlays, { recursive: true, force: true });
      await rm(webRoot, { recursive: true, force: true });
    },
  };
}
