import { databaseOf } from './database.ts';
import type { Vault } from './vault.ts';

/** Written through to the disk before it counts, so that a battery that dies takes nothing along. */
const strict = { durability: 'strict' } as const;

/**
 * The vault over the browser's IndexedDB. The database is opened with the first use, and again where the browser closed it; each
 * call rejects where the browser refuses.
 */
export function indexedVault(name = 'loamward'): Vault {
  const database = databaseOf(name);
  return {
    readEvents: async (token) => (await database()).getAllFromIndex('events', 'token', token),
    keepEvents: async (rows, note) => {
      const change = (await database()).transaction(['events', 'conversations'], 'readwrite', strict);
      const events = change.objectStore('events');
      const writes = rows.map((row) => events.put(row));
      await Promise.all([...writes, change.objectStore('conversations').put(note), change.done]);
    },
    notes: async () => (await database()).getAll('conversations'),
    readPacks: async () => (await database()).getAll('packs'),
    keepPacks: async (packs) => {
      const change = (await database()).transaction('packs', 'readwrite');
      await Promise.all([...packs.map((pack) => change.store.put(pack)), change.done]);
    },
    readSupplies: async () => (await (await database()).get('supplies', 'now')) ?? null,
    keepSupplies: async (supplies) => void (await (await database()).put('supplies', supplies, 'now')),
    readForecast: async (place) => (await (await database()).get('forecasts', place)) ?? null,
    keepForecast: async (place, forecast) => void (await (await database()).put('forecasts', forecast, place)),
  };
}
