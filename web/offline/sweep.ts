import { handOverAll } from './hand-over.ts';
import type { SafeVault } from './safe-vault.ts';
import { openShelf } from './shelf.ts';
import type { SyncServer } from './sync-server.ts';

/** Hands over what is left of other conversations than the one that is open. What the server does not take stays on the device. */
export async function sweep(means: {
  readonly server: SyncServer;
  readonly vault: SafeVault;
  readonly isCurrent: (token: string) => boolean;
}): Promise<void> {
  const { server, vault, isCurrent } = means;
  for (const { token, unsent } of await vault.attempt((one) => one.notes(), [])) {
    if (unsent === 0 || isCurrent(token)) continue;
    const shelf = await openShelf(vault, token);
    const end = await handOverAll({ server, shelf, settled: async () => {}, onProgress: () => {} });
    if (end.kind === 'unreached') return;
  }
}
