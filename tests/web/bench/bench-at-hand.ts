import { readPackFolder } from '../../../src/adapters/pack-files/read-pack-folder.ts';
import type { Overlay } from '../../../src/core/rules/overlay/parse-overlay.ts';
import { loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import type { Bench } from '../../../web/bench/server.ts';

const folder = new URL('../../../rules/propyzamide-winter-oilseed-rape', import.meta.url).pathname;
const { pack, cases } = loadPack(await readPackFolder(folder));

/** The bench over the pack as shipped, on 25 November 2026, with overlays in the server's folder. */
export function benchWith(...overlays: readonly Overlay[]): Bench {
  return {
    shipped: pack,
    cases,
    overlays,
    inForce: [],
    today: '2026-11-25',
    whyNoWrites: 'BENCH_WRITES_OFF',
    refused: null,
  };
}
