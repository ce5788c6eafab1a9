import { definitionsOf } from '../../src/core/facts/registry/index.ts';
import type { Review } from '../../src/core/practice/schedule.ts';
import type { PracticeSpeech } from '../../src/core/practice/tell-day.ts';
import type { PracticeWorld } from '../../src/core/practice/types.ts';
import { catalogueOf } from '../../src/core/words/catalogue.ts';
import { practiceWordsOf } from '../../src/core/words/practice-words.ts';
import { indexedVault } from '../offline/indexed-vault.ts';
import { type SafeVault, safeVault } from '../offline/safe-vault.ts';
import { fetchSupplies } from '../offline/supplies.ts';
import { syncServer } from '../offline/sync-server.ts';
import { indexedReviews, type KeptReviews } from './kept-reviews.ts';

/** What practice on this device begins with. */
export interface OpenedPractice {
  /** Null where neither server nor device has the rules. */
  readonly world: PracticeWorld | null;
  readonly reviews: readonly Review[];
  /** Null where the browser keeps nothing. */
  readonly kept: KeptReviews | null;
}

/** Rules from the server, else those kept on the device, and the answers kept so far. */
export async function openPractice(): Promise<OpenedPractice> {
  const after = (ms: number, call: () => void) => {
    const timer = setTimeout(call, ms);
    return () => clearTimeout(timer);
  };
  const vault: SafeVault = safeVault(indexedVault(), () => {}, after);
  const kept = indexedReviews();
  const [supplies, reviews] = await Promise.all([
    fetchSupplies(syncServer(), vault),
    kept.read().catch((): null => null),
  ]);
  const pack = supplies?.packs[0];
  const world = pack ? { pack, plain: pack.plainDay ?? null, definitionOf: definitionsOf(pack.facts) } : null;
  return { world, reviews: reviews ?? [], kept: reviews === null ? null : kept };
}

/** Sentences of practice in the language of the page. */
export function speechOfPage(): PracticeSpeech {
  const { lang } = document.documentElement;
  return { words: catalogueOf(lang), practice: practiceWordsOf(lang) };
}
