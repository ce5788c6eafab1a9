import { readPackFolder } from '../../../src/adapters/pack-files/read-pack-folder.ts';
import type { Overlay } from '../../../src/core/rules/overlay/parse-overlay.ts';
import { loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import type { Bench } from '../../../web/bench/server.ts';

const packOf = async (id: string) =>
  loadPack(await readPackFolder(new URL(`../../../rules/${id}`, import.meta.url).pathname));
const first = await packOf('propyzamide-winter-oilseed-rape');
const second = await packOf('fluroxypyr-winter-wheat');
const treatments = [first, second].map(({ pack: { id, title } }) => ({ id, title }));

/** The bench over the first pack as shipped, on 25 November 2026, with overlays in the server's folder. */
export function benchWith(...overlays: readonly Overlay[]): Bench {
  return benchOf(first, overlays);
}

/** The same over the second. */
export function secondBenchWith(...overlays: readonly Overlay[]): Bench {
  return benchOf(second, overlays);
}

function benchOf({ pack, cases }: typeof first, overlays: readonly Overlay[]): Bench {
  return {
    treatments,
    shipped: pack,
    cases,
    overlays,
    inForce: [],
    today: '2026-11-25',
    whyNoWrites: 'BENCH_WRITES_OFF',
    refused: null,
  };
}
