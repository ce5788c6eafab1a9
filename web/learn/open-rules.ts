import { definitionsOf } from '../../src/core/facts/registry/index.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { type OpenedTour, openTour } from '../../src/core/tour/open-tour.ts';
import { type EpochSeconds, epochSeconds } from '../../src/core/units/brands.ts';
import { catalogueOf } from '../../src/core/words/catalogue.ts';
import { titlesOf } from '../../src/core/words/say-rule.ts';
import { indexedVault } from '../offline/indexed-vault.ts';
import { safeVault } from '../offline/safe-vault.ts';
import { fetchSupplies } from '../offline/supplies.ts';
import { syncServer } from '../offline/sync-server.ts';

/** What the pages for learning tell of: the rules with their tour, and how things are called in the language of the page. */
export interface Lesson extends OpenedTour {
  readonly now: EpochSeconds;
  readonly words: ReturnType<typeof catalogueOf>;
  readonly definitionOf: ReturnType<typeof definitionsOf>;
  readonly titleOf: (rule: string) => string;
}

/** The rules of each treatment, from the server, else those kept on the device; null where neither has them. */
export async function fetchTreatments(): Promise<readonly [Pack, ...Pack[]] | null> {
  const after = (ms: number, call: () => void) => {
    const timer = setTimeout(call, ms);
    return () => clearTimeout(timer);
  };
  const supplies = await fetchSupplies(
    syncServer(),
    safeVault(indexedVault(), () => {}, after),
  );
  return supplies?.inForce ?? null;
}

/** The lesson that a pack gives. */
export function lessonOf(pack: Pack): Lesson {
  const now = epochSeconds(Date.now() / 1000);
  const words = catalogueOf(document.documentElement.lang);
  return {
    ...openTour(pack, now),
    now,
    words,
    definitionOf: definitionsOf(pack.facts),
    titleOf: titlesOf(pack.rules, words),
  };
}
