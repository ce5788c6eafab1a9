import type { Window } from '../outlook/types.ts';
import type { Catalogue } from './catalogue.ts';
import { marked } from './numbers.ts';
import { showSpanFrom } from './outlook-times.ts';
import { unitSuffix } from './units.ts';

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

/** How sure the weather of a window is hour by hour: all of it, or the surest stretch and its first hours; that it is not told. */
export function describeSureness(
  { from, until, surest, firstSureness, daylight }: Window,
  zone: string,
  words: Catalogue,
): string {
  const { chance } = words.outlook;
  if (surest === null) return chance.untold;
  const sure = holds(surest.sureness, words);
  if (surest.from === from && surest.until === until) return chance.whole(sure);
  const span = showSpanFrom(from, surest.from, surest.until, zone, words);
  const isLikely = surest.sureness >= leastChance.likely;
  const isLit = daylight?.some((one) => one.from <= surest.from && surest.until <= one.until) === true;
  const part = isLikely ? chance.surest(span, sure, isLit) : chance.best(span, sure, isLit);
  if (surest.from === from || firstSureness === null || firstSureness >= leastChance.likely) return part;
  return `${part} ${chance.first(showShare(firstSureness, words))}`;
}

/** The chance that the soil is cold enough in a window that rests on it; empty where it does not, or nothing is told. */
export function describeSoilBelow({ soilBelow }: Window, words: Catalogue): string {
  if (soilBelow === null) return '';
  const { limitC, first, last } = soilBelow;
  return words.outlook.chance.soil(
    `${marked(words, String(limitC))}${unitSuffix('C', words)}`,
    showShare(first, words),
    showShare(last, words),
  );
}

function holds(chance: number, words: Catalogue): string {
  const { hold } = words.outlook.chance;
  const share = showShare(chance, words);
  if (chance >= leastChance.veryLikely) return hold.veryLikely(share);
  if (chance >= leastChance.likely) return hold.likely(share);
  return chance >= leastChance.even ? hold.even(share) : hold.unlikely(share);
}
