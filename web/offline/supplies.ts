import { offerOf, packsInForce, treatmentOffers } from '../../src/adapters/conversation/offers.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import type { PageState } from '../chat/page-state.ts';
import type { SafeVault } from './safe-vault.ts';
import type { SyncServer } from './sync-server.ts';
import type { KeptField, Supplies } from './vault.ts';

/** What the page has at hand to answer by itself. */
export interface AtHand {
  /** All rules that a kept conversation may need, those in force first. */
  readonly packs: readonly [Pack, ...Pack[]];
  /** Those that new conversations are begun under, one for each treatment that the server has. */
  readonly inForce: readonly [Pack, ...Pack[]];
  readonly fields: readonly KeptField[];
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

/** What can be started with what is at hand, as a welcome of the server would tell it. */
export function offersAtHand(
  { fields, inForce }: AtHand,
  language: string | undefined,
): Pick<PageState, 'fields' | 'packTitle' | 'treatments'> {
  const treatments = treatmentOffers(inForce, fields, language);
  return { fields: fields.map(({ profile }) => offerOf(profile)), packTitle: treatments[0].title, treatments };
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
  if (first === undefined) return null;
  const inForce = packsInForce([first, ...rest.filter(({ hash }) => current.includes(hash))]);
  return { packs: [first, ...rest], inForce, fields };
}
