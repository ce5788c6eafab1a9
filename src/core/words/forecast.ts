import type { ForecastSummary, PackStamp } from '../dialogue/decision-types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { Catalogue } from './catalogue.ts';
import { noteIn } from './notes.ts';
import { marked, showHigh } from './numbers.ts';
import { showShare } from './outlook-chance.ts';
import { secondsOf, showAgo, showTime } from './times.ts';

/** The moment of reading and the field's IANA zone. */
export interface ReadingMoment {
  readonly now: EpochSeconds;
  readonly zone: string;
}

/**
 * The forecast line: when it was fetched and its age, how far it reaches or why it was not used, its
 * point, and the attribution.
 */
export function describeForecast(
  forecast: ForecastSummary | null,
  { now, zone }: ReadingMoment,
  words: Catalogue,
): string {
  if (forecast === null) return words.forecast.none;
  const fetched = secondsOf(forecast.fetchedAt);
  const came = words.forecast.fetched(showTime(fetched, zone, now, words), showAgo(fetched, now, words));
  const note = forecast.note === null ? [] : [noteIn(forecast.note, words)];
  const { rainChance } = forecast;
  const chance =
    rainChance === null
      ? []
      : [
          words.forecast.rainChance(
            showShare(rainChance.share, words),
            String(rainChance.courses),
            showHigh(words, rainChance.atMostMm, 1),
          ),
        ];
  const cell = forecast.distanceKm >= 0.1 ? [words.forecast.cell(marked(words, forecast.distanceKm.toFixed(1)))] : [];
  const use = words.forecast.use(came, useOf(forecast, { now, zone }, words));
  return [use, ...note, ...chance, ...cell, noteIn(forecast.attribution, words)].join(' ');
}

function useOf({ unused, reachesTo }: ForecastSummary, { now, zone }: ReadingMoment, words: Catalogue): string {
  if (unused !== null) return words.forecast.unused[unused];
  if (reachesTo === null) return words.forecast.gapNow;
  return words.forecast.reaches(showTime(secondsOf(reachesTo), zone, now, words));
}

/** Until when an answer stands, in the field's zone. `validUntil` is an ISO instant UTC, null where nothing ages. */
export function describeValidUntil(validUntil: string | null, { now, zone }: ReadingMoment, words: Catalogue): string {
  if (validUntil === null) return words.forecast.doesNotAge;
  return words.forecast.validUntil(showTime(secondsOf(validUntil), zone, now, words));
}

/** When an answer was given and, where that is another minute, read: with the day, in the field's zone. `at` is an ISO instant UTC. */
export function describeGiven(at: string, { now, zone }: ReadingMoment, words: Catalogue): string {
  const [given, read] = [secondsOf(at), now].map((moment) => showTime(moment, zone, null, words)) as [string, string];
  return [words.handOver.given(given), ...(read === given ? [] : [words.handOver.handedOver(read)])].join(' ');
}

/** Until when an answer stands, with the day, and that it is withdrawn after; null where nothing ages. */
export function describeGoodUntil(validUntil: string | null, zone: string, words: Catalogue): string | null {
  return validUntil === null ? null : words.handOver.goodUntil(showTime(secondsOf(validUntil), zone, null, words));
}

/** Which rules judged: title, version and the first letters of the content hash; then whose local rules, and what they changed. */
export function describePack({ title, version, hash, overlays = [] }: PackStamp, words: Catalogue): string {
  const { forecast } = words;
  const local = overlays.map((one) => forecast.local(one.title, one.author, one.place, one.changedRules.join(', ')));
  return [forecast.pack(title, version, hash.slice(0, 12)), ...local].join(' ');
}
