import type { FallThrough } from '../outlook/types.ts';
import type { Catalogue } from './catalogue.ts';
import { marked } from './numbers.ts';
import { showShare } from './outlook-chance.ts';
import { showDayOfYear } from './times.ts';
import { unitSuffix } from './units.ts';

/** Chance of warming back from which on it is said, 0 to 1. */
const worthSaying = 0.1;

/** When the soil falls below the limit for good, as a range of days with its chance, and that it may warm back. `today` is an ISO day. */
export function describeFallThrough(fall: FallThrough, today: string, words: Catalogue): string {
  const { warmsBack } = words.outlook.soil;
  const back = fall.chanceOfWarmingBack;
  const isFar = fall.day10 === null;
  return [
    fallSentence(fall, today, words),
    ...(back >= worthSaying && !isFar ? [warmsBack(showShare(back, words))] : []),
  ].join(' ');
}

function fallSentence({ limitC, day10, day50, day90 }: FallThrough, today: string, words: Catalogue): string {
  const { soil } = words.outlook;
  const limit = `${marked(words, String(limitC))}${unitSuffix('C', words)}`;
  const day = (iso: string) => showDayOfYear(iso, words);
  if (day10 === null) return soil.unlikely(limit);
  if (day50 === null) return soil.mayNot(limit, day(day10));
  if (day90 !== null && day90 <= today) return soil.staysBelow(limit);
  if (day50 <= today) return day90 === null ? soil.belowNow(limit) : soil.by(limit, day(day90));
  if (day90 === null) {
    return day10 === day50 ? soil.onceFrom(limit, day(day50)) : soil.open(limit, day(day10), day(day50));
  }
  if (day10 <= today || day10 === day90) return soil.by(limit, day(day90));
  const isOneMonth = day10.slice(0, 7) === day90.slice(0, 7);
  return soil.between(limit, isOneMonth ? String(Number(day10.slice(8))) : day(day10), day(day90));
}
