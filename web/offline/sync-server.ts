import type { ConversationEvent } from '../../src/core/dialogue/events.ts';
import type { ErrorReport } from '../../src/core/errors/coded-error.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import type { Forecast } from '../../src/core/weather/forecast.ts';
import type { KeptField } from './vault.ts';

/** What the server gave, or why not; null where it was not reached. */
export type Answered<T> = { readonly ok: T } | { readonly error: ErrorReport | null };

/** What came of events that were handed over. */
export interface TakenEvents {
  readonly taken: readonly string[];
  readonly already: readonly string[];
  readonly refused: readonly { readonly id: string; readonly error: ErrorReport }[];
  /** How many events the server keeps of the conversation. */
  readonly count: number;
}

/** The server's requests for pages that go on without a connection (docs/protocol.md). None rejects. */
export interface SyncServer {
  readonly packs: () => Promise<Answered<{ readonly coreVersion: string; readonly packs: readonly Pack[] }>>;
  readonly fields: () => Promise<Answered<{ readonly fields: readonly KeptField[] }>>;
  readonly forecast: (point: {
    readonly latitude: number;
    readonly longitude: number;
  }) => Promise<Answered<{ readonly forecast: Forecast; readonly warning?: ErrorReport }>>;
  readonly events: (
    token: string,
    have: number,
  ) => Promise<Answered<{ readonly events: readonly ConversationEvent[]; readonly count: number }>>;
  readonly handOver: (token: string, events: readonly ConversationEvent[]) => Promise<Answered<TakenEvents>>;
}

/** How long the server may take, ms; for a forecast, for which a person waits, less. */
const withinMs = 20_000;
const forecastWithinMs = 4000;

/** Asks over the browser's fetch. */
export function syncServer(get: typeof fetch = (...all) => fetch(...all)): SyncServer {
  const ask = async <T>(path: string, ms: number, token?: string, body?: object): Promise<Answered<T>> => {
    try {
      const response = await get(path, {
        ...(body === undefined ? {} : { method: 'POST', body: JSON.stringify(body) }),
        headers: {
          ...(token === undefined ? {} : { authorization: `Bearer ${token}` }),
          ...(body === undefined ? {} : { 'content-type': 'application/json' }),
        },
        signal: AbortSignal.timeout(ms),
      });
      const came = (await response.json()) as T & { readonly error?: ErrorReport };
      return response.ok ? { ok: came } : { error: came.error ?? null };
    } catch {
      return { error: null };
    }
  };
  return {
    packs: () => ask('/packs', withinMs),
    fields: () => ask('/fields', withinMs),
    forecast: ({ latitude, longitude }) =>
      ask(`/forecast?latitude=${latitude}&longitude=${longitude}`, forecastWithinMs),
    events: (token, have) => ask(`/events?have=${have}`, withinMs, token),
    handOver: (token, events) => ask('/events', withinMs, token, { events }),
  };
}
