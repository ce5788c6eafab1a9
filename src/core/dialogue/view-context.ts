import type { Pack } from '../rules/pack-types.ts';
import { type EpochSeconds, epochSeconds } from '../units/brands.ts';
import type { Catalogue } from '../words/catalogue.ts';
import type { SourceTimes } from '../words/sources.ts';
import type { State } from './state.ts';

/** What a view is made with. */
export interface ViewContext {
  readonly pack: Pack;
  /** Moment of the conversation: the reader's time plus the conversation's shift. */
  readonly now: EpochSeconds;
  readonly words: Catalogue;
}

/** The moment of a reader's time in the conversation. */
export function nowIn({ started }: State, now: EpochSeconds): EpochSeconds {
  return epochSeconds(now + (started?.shiftSeconds ?? 0));
}

/** What source sentences count from. */
export function sourceTimes({ forecast }: Pick<State, 'forecast'>, now: EpochSeconds): SourceTimes {
  return { now, forecastFetchedAt: forecast?.fetchedAt ?? null };
}
