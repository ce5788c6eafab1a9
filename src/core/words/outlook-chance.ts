import type { Catalogue } from './catalogue.ts';

/**
 * Least chance for each word, 0 to 1. The words and their ranges are those of the IPCC guidance note on the treatment of
 * uncertainties (Mastrandrea et al. 2010, table 1; from memory): very likely 90 to 100 %, likely 66 to 100 %, about as likely
 * as not 33 to 66 %, unlikely below 33 %.
 */
const leastChance = { veryLikely: 0.9, likely: 0.66, even: 0.33 } as const;

/** A chance, 0 to 1, as "about 7 in 10", rounded down so that it never sounds surer than it is. */
export function showShare(chance: number, words: Catalogue): string {
  const tenths = Math.floor(chance * 10 + 1e-9);
  if (chance > 0.95) return words.outlook.share.most;
  return tenths < 1 ? words.outlook.share.least : words.outlook.share.about(Math.min(9, tenths));
}

/** How sure the weather of a window is, as a sentence; null is that the forecast does not tell. */
export function describeSureness(sureness: number | null, words: Catalogue): string {
  const { chance } = words.outlook;
  if (sureness === null) return chance.untold;
  const share = showShare(sureness, words);
  if (sureness >= leastChance.veryLikely) return chance.veryLikely(share);
  if (sureness >= leastChance.likely) return chance.likely(share);
  return sureness >= leastChance.even ? chance.even(share) : chance.unlikely(share);
}
