import { randomUUID } from 'node:crypto';
import { onTestFinished } from 'vitest';
import { fieldsFor } from '../../../src/adapters/conversation/offers.ts';
import { createMemoryStore } from '../../../src/adapters/store/memory-store.ts';
import { hollinBankFarm } from '../../../src/demo/hollin-bank-farm.ts';
import type { AppMeans } from '../../../src/server/app.ts';
import type { LogLine } from '../../../src/server/log.ts';
import { type StartedServer, startServer } from '../../../src/server/main.ts';
import { type ServerSettings, standardServerSettings } from '../../../src/server/settings.ts';
import { type FakeTime, fakeTime } from './fake-time.ts';
import { emptyPack } from './pack.ts';
import { plainDialogue } from './plain-dialogue.ts';

/** A server on a free loopback port with fake time, closed when the test ends. */
export interface TestServer extends StartedServer {
  readonly time: FakeTime;
  readonly log: readonly LogLine[];
}

/** Settings that stand in no test's way. */
export const roomy: Partial<ServerSettings> = {
  messagesPerSecond: 1e9,
  messageBurst: 1e9,
  connectionsPerAddress: 1000,
};

/** The invented fields of oilseed rape, for whatever pack a test uses. */
export const rapeFields = fieldsFor(hollinBankFarm, 'propyzamide-winter-oilseed-rape').map(
  ({ packs: _its, ...field }) => field,
);

/** Starts a test server; the forecast service of tests has nothing. */
export async function startTestServer(
  means: Partial<Omit<AppMeans, 'settings'>> & { readonly settings?: Partial<ServerSettings> } = {},
): Promise<TestServer> {
  const time = fakeTime();
  const log: LogLine[] = [];
  const server = await startServer({
    clock: time.clock,
    timers: time.timers,
    newId: randomUUID,
    store: createMemoryStore(),
    packs: [emptyPack],
    fields: rapeFields,
    dialogue: plainDialogue(),
    webRoot: `${import.meta.dirname}/no-such-folder`,
    forecastService: {
      forecastFor: async () => ({
        error: { code: 'FORECAST_OFF', says: 'Off.', expected: 'on', came: 'off', next: 'Tell it by hand.' },
      }),
    },
    log: (line) => log.push(line),
    ...means,
    settings: { ...standardServerSettings, ...roomy, ...means.settings, port: 0 },
  });
  onTestFinished(() => server.close());
  return { ...server, time, log };
}
