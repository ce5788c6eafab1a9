import { randomUUID } from 'node:crypto';
import { systemClock, systemTimers } from '../adapters/clock.ts';
import { createMemoryStore, defaultMemoryLimits } from '../adapters/store/memory-store.ts';
import { codedError } from '../core/errors/coded-error.ts';
import { type AppMeans, buildApp } from './app.ts';
import { faultName, silentLog } from './log.ts';
import type { ServerSettings } from './settings.ts';

/** Closing is cut short after this long, ms: twice what the chat needs. */
export const hardStopMs = 5000;

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
    store: options.store ?? createMemoryStore(memoryLimits(settings)),
  };
  const app = await buildApp(means);
  const { host, port } = settings;
  try {
    await app.listen({ host, port });
  } catch (error) {
    await app.close();
    const came = `${host}:${port}, ${(error as NodeJS.ErrnoException).code ?? 'refused'}`;
    throw codedError('PORT_TAKEN', { expected: 'an address and port that are free', came });
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

function memoryLimits({ keptConversations, keptEvents, keptHours }: ServerSettings) {
  return { ...defaultMemoryLimits, conversations: keptConversations, allEvents: keptEvents, idleHours: keptHours };
}

/** An address that stands for every one of the machine is opened by its loopback; IPv6 goes into brackets. */
function shownHost(host: string): string {
  if (host === '0.0.0.0' || host === '::') return '127.0.0.1';
  return host.includes(':') ? `[${host}]` : host;
}
