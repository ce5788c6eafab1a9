import type { Review } from '../../src/core/practice/schedule.ts';
import type { PracticeSpeech } from '../../src/core/practice/tell-day.ts';
import type { Pack } from '../../src/core/rules/pack-types.ts';
import { catalogueOf } from '../../src/core/words/catalogue.ts';
import { practiceWordsOf } from '../../src/core/words/practice-words.ts';
import { fetchTreatments } from '../learn/open-rules.ts';
import { loadLaterWords } from '../words.ts';
import { indexedReviews, type KeptReviews } from './kept-reviews.ts';

/** What practice on this device begins with. */
export interface OpenedPractice {
  /** The rules of each treatment; none where neither server nor device has them. */
  readonly packs: readonly Pack[];
  readonly reviews: readonly Review[];
  /** Null where the browser keeps nothing. */
  readonly kept: KeptReviews | null;
}

/** Rules from the server, else those kept on the device, and the answers kept so far. */
export async function openPractice(): Promise<OpenedPractice> {
  const kept = indexedReviews();
  const [packs, reviews] = await Promise.all([
    fetchTreatments(),
    kept.read().catch((): null => null),
    loadLaterWords(),
  ]);
  return { packs: packs ?? [], reviews: reviews ?? [], kept: reviews === null ? null : kept };
}

/** Sentences of practice in the language of the page. */
export function speechOfPage(): PracticeSpeech {
  const { lang } = document.documentElement;
  return { words: catalogueOf(lang), practice: practiceWordsOf(lang) };
}
