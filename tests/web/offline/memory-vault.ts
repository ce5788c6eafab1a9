import type { ConversationNote, KeptEvent, Supplies, Vault } from '../../../web/offline/vault.ts';

/** A vault in maps, and a switch that makes every use of it fail by a name of `DOMException`. */
export function memoryVault(): Vault & { fail: string | null } {
  const events = new Map<string, KeptEvent>();
  const notes = new Map<string, ConversationNote>();
  const packs = new Map<string, never>();
  const forecasts = new Map<string, never>();
  let supplies: Supplies | null = null;
  const vault = {
    fail: null as string | null,
    readEvents: async (token: string) => use(() => [...events.values()].filter((row) => row.token === token)),
    keepEvents: async (rows: readonly KeptEvent[], note: ConversationNote) =>
      use(() => {
        for (const row of rows) events.set(`${row.token} ${row.id}`, row);
        notes.set(note.token, note);
      }),
    notes: async () => use(() => [...notes.values()]),
    readPacks: async () => use(() => [...packs.values()]),
    keepPacks: async (kept: readonly { readonly hash: string }[]) =>
      use(() => {
        for (const pack of kept) packs.set(pack.hash, pack as never);
      }),
    readSupplies: async () => use(() => supplies),
    keepSupplies: async (kept: Supplies) =>
      use(() => {
        supplies = kept;
      }),
    readForecast: async (place: string) => use(() => forecasts.get(place) ?? null),
    keepForecast: async (place: string, forecast: object) => use(() => void forecasts.set(place, forecast as never)),
  };
  function use<T>(work: () => T): T {
    if (vault.fail !== null) throw new DOMException('refused', vault.fail);
    return work();
  }
  return vault;
}
