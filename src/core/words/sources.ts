import type { Resolved } from '../facts/types.ts';
import type { EpochSeconds } from '../units/brands.ts';
import type { Catalogue } from './catalogue.ts';
import { noteIn } from './notes.ts';
import { showAgo } from './times.ts';

/** The moment of asking and when the forecast was fetched (null without one), in the time frame of the facts. */
export interface SourceTimes {
  readonly now: EpochSeconds;
  readonly forecastFetchedAt: EpochSeconds | null;
}

/** Where a value came from: "you said, 2 h ago", "forecast, fetched 3 h ago", "field profile", "worked out: ...". */
export function describeSource(resolved: Resolved, { now, forecastFetchedAt }: SourceTimes, words: Catalogue): string {
  const { sources } = words.values;
  const note = resolved.note === undefined ? null : noteIn(resolved.note, words);
  if (!resolved.known) return note ?? sources.none;
  if (resolved.source === 'profile') return sources.profile;
  if (resolved.source === 'derived') return sources.derived(note);
  if (resolved.source === 'forecast') {
    const from = sources.forecast(forecastFetchedAt === null ? null : showAgo(forecastFetchedAt, now, words));
    return note === null ? from : `${from}; ${note}`;
  }
  const from = sources[resolved.source](showAgo(resolved.at, now, words));
  return note === null ? from : `${from}; ${note}`;
}
