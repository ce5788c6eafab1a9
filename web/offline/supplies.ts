import type { Pack } from '../../src/core/rules/pack-types.ts';
import type { SafeVault } from './safe-vault.ts';
import type { SyncServer } from './sync-server.ts';
import type { KeptField, Supplies } from './vault.ts';

/** What the page has at hand to answer by itself. */
export interface AtHand {
  /** All rules that a kept conversation may need, that for new ones first. */
  readonly packs: readonly [Pack, ...Pack[]];
  readonly fields: readonly KeptField[];
  /** Hashes of the rules that the server has. */
  readonly current: readonly string[];
}

/** Rules and fields, from the server where it is reached and kept for later, else from the vault; null where neither has them. */
export async function fetchSupplies(server: SyncServer, vault: SafeVault): Promise<AtHand | null> {
  const [rules, offered] = await Promise.all([server.packs(), server.fields()]);
  if (!('ok' in rules) || !('ok' in offered)) return readSupplies(vault);
  const { coreVersion, packs } = rules.ok;
  const current = packs.map(({ hash }) => hash);
  await vault.write((one) => one.keepPacks(packs));
  await vault.write((one) => one.keepSupplies({ coreVersion, current, fields: offered.ok.fields }));
  return atHand({ coreVersion, current, fields: offered.ok.fields }, [
    ...packs,
    ...(await vault.attempt((one) => one.readPacks(), [])),
  ]);
}

/** What the vault has; null where something is missing. */
export async function readSupplies(vault: SafeVault): Promise<AtHand | null> {
  const supplies = await vault.attempt((one) => one.readSupplies(), null);
  return supplies && atHand(supplies, await vault.attempt((one) => one.readPacks(), []));
}

function atHand({ current, fields }: Supplies, packs: readonly Pack[]): AtHand | null {
  const byHash = new Map(packs.map((pack) => [pack.hash, pack]));
  const ordered = [...current, ...byHash.keys()].flatMap((hash) => {
    const pack = byHash.get(hash);
    byHash.delete(hash);
    return pack ?? [];
  });
  const [first, ...rest] = ordered;
  return first === undefined ? null : { packs: [first, ...rest], fields, current };
}
