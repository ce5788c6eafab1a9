import { randomUUID } from 'node:crypto';
import { appendFile } from 'node:fs/promises';
import { systemClock, systemTimers } from '../adapters/clock.ts';
import type { ConversationStore } from '../adapters/store/conversation-store.ts';
import { createMemoryStore, defaultMemoryLimits } from '../adapters/store/memory-store.ts';
import { savingVerdicts } from '../adapters/store/save-verdicts.ts';
import { reasonOf } from '../adapters/system-reason.ts';
import { codedError } from '../core/errors/coded-error.ts';
import { type AppMeans, buildApp } from './app.ts';
import { faultName, type Log, silentLog } from './log.ts';
import type { ServerSettings } from './settings.ts';

/** Closing is cut short after this long, ms: twice what the chat needs. */
const hardStopMs = 5000;

/** What a start needs; the clock, ids and store are the machine's own where none are given. */
export type StartOptions = Omit<AppMeans, 'clock' | 'newId' | 'store'> &
  Partial<Pick<AppMeans, 'clock' | 'newId' | 'store'>>;

/** A server that listens. */
export interface StartedServer {
  /** `http://host:port`, as a browser on this machine opens it. */
  readonly url: string;
  /** Tells clients (1001), closes, and resolves within 5 s at the latest. */
  readonly close: () => Promise<void>;
}

/** Listens on `settings.host` and `settings.port`. Prints nothing. Throws PORT_TAKEN where it cannot listen there. */
export async function startServer(options: StartOptions): Promise<StartedServer> {
  const { settings, log = silentLog, timers = systemTimers } = options;
  const means: AppMeans = {
    ...options,
    log,
    timers,
    clock: options.clock ?? systemClock,
    newId: options.newId ?? randomUUID,
    store: options.store ?? (await storeFor(settings, log)),
  };
  const app = await buildApp(means);
  const { host, port } = settings;
  try {
    await app.listen({ host, port });
  } catch (error) {
    await app.close();
    const came = reasonOf(error);
    throw codedError('PORT_TAKEN', { expected: `an address and port that are free: ${host}:${port}`, came });
  }
  const address = app.server.address();
  const at = typeof address === 'object' && address ? address.port : port;
  log({ event: 'listening' });
  return {
    url: `http://${shownHost(host)}:${at}`,
    close: async () => {
      log({ event: 'closing', code: 'SERVER_CLOSING' });
      await new Promise<void>((resolve) => {
        const stop = timers.after(hardStopMs, () => {
          app.server.closeAllConnections();
          resolve();
        });
        const done = (): void => {
          stop();
          resolve();
        };
        app.close().then(done, (error: unknown) => {
          log({ event: 'fault', code: 'SERVER_FAULT', fault: faultName(error) });
          done();
        });
      });
      log({ event: 'closed' });
    },
  };
}

/** Conversations in memory; each verdict also goes into the file that is set for it. Throws SETTING_WRONG where it cannot be written. */
async function storeFor(settings: ServerSettings, log: Log): Promise<ConversationStore> {
  const store = createMemoryStore(memoryLimits(settings));
  const { saveVerdicts: file } = settings;
  if (file === null) return store;
  const add = (lines: string) => appendFile(file, lines, { mode: 0o600 });
  await add('').catch((error: unknown) => {
    const expected = 'a file that can be written';
    throw codedError('SETTING_WRONG', { expected, came: reasonOf(error), parameter: 'LOAMWARD_SAVE_VERDICTS' });
  });
  return savingVerdicts(store, add, (error) => log({ event: 'fault', code: 'SERVER_FAULT', fault: faultName(error) }));
}

function memoryLimits({ keptConversations, keptEvents, keptHours }: ServerSettings) {
  return { ...defaultMemoryLimits, conversations: keptConversations, allEvents: keptEvents, idleHours: keptHours };
}

/** An address that stands for every one of the machine is opened by its loopback; IPv6 goes into brackets. */
function shownHost(host: string): string {
  if (host === '0.0.0.0' || host === '::') return '127.0.0.1';
  return host.includes(':') ? `[${host}]` : host;
}
