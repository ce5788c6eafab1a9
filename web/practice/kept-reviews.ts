import type { Review } from '../../src/core/practice/schedule.ts';
import { databaseOf } from '../offline/database.ts';

/** Answers to practice days on this device: rows are only added. Each rejects where the device refuses. */
export interface KeptReviews {
  readonly read: () => Promise<readonly Review[]>;
  readonly add: (review: Review) => Promise<void>;
}

/** The answers in the browser's IndexedDB. */
export function indexedReviews(name = 'loamward'): KeptReviews {
  const database = databaseOf(name);
  return {
    read: async () => (await database()).getAll('reviews'),
    add: async (review) => void (await (await database()).add('reviews', review)),
  };
}
