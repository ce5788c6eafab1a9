import { keepForecast, placeKey } from './forecast-source.ts';
import type { SafeVault } from './safe-vault.ts';
import type { SaidOnline } from './said-online.ts';
import type { Shelf } from './shelf.ts';
import type { SyncServer } from './sync-server.ts';

/** Fetches what the server keeps of a conversation and this device does not have. Resolves to true where something came. */
export async function mirror(means: {
  readonly server: Pick<SyncServer, 'events'>;
  readonly vault: SafeVault;
  readonly shelf: Shelf;
  readonly said: SaidOnline;
  readonly parse: typeof import('./core.ts').parseEvents;
}): Promise<boolean> {
  const { server, vault, shelf, said, parse } = means;
  const answered = await server.events(shelf.token, shelf.serverCount());
  if (!('ok' in answered)) return false;
  const parsed = parse(answered.ok);
  if (!parsed.ok) return false;
  await shelf.add(parsed.events, true, answered.ok.count);
  said.drop(shelf.token, new Set(parsed.events.map(({ id }) => id)));
  for (const event of parsed.events) {
    if (event.kind !== 'forecast-attached' || event.forecast.invented === true) continue;
    const { askedLatitude, askedLongitude } = event.forecast.place;
    await keepForecast(vault, placeKey({ latitude: askedLatitude, longitude: askedLongitude }), event.forecast);
  }
  return parsed.events.length > 0;
}
