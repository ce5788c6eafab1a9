import type { EpochSeconds } from '../units/brands.ts';
import type { Parameters } from '../units/parameter.ts';
import type { Forecast } from '../weather/forecast.ts';
import type { FactId, FactRegistry } from './registry/index.ts';
import type { FactObservation } from './resolved.ts';
import type { Resolved } from './types.ts';

/** What facts are resolved from: all that was ever observed, the forecast if any, and the moment asked about. */
export interface ResolveInput {
  /** In the order in which they were said; of equal times the later one counts as newer. */
  readonly observations: readonly FactObservation[];
  readonly forecast: Forecast | null;
  readonly at: EpochSeconds;
  /** IANA time zone of the field. */
  readonly zone: string;
  /** Parameters in force on the day of `at`. */
  readonly parameters: Parameters;
  /** The facts to resolve: those that the pack reaches. */
  readonly registry: FactRegistry;
}

/** A forecast that may be used, with the factor by which its age widens its bands and the moment it is too old. */
export interface TrustedForecast {
  readonly forecast: Forecast;
  readonly growth: number;
  readonly oldestAt: EpochSeconds;
}

/** What a derivation or a forecast fact may read. */
export interface FactContext {
  readonly at: EpochSeconds;
  readonly zone: string;
  readonly parameters: Parameters;
  readonly registry: FactRegistry;
  /** Null where there is none or it may not be used. */
  readonly trusted: TrustedForecast | null;
  /** Why the forecast may not be used; null where it may, or where there is none. */
  readonly untrusted: Resolved | null;
  /** Another fact as resolved at the same moment. */
  readonly fact: (id: FactId) => Resolved;
  /** Every observation of a fact up to `at`, oldest first, however old. */
  readonly observations: (id: FactId) => readonly FactObservation[];
}

/** Works out a fact; null where there is nothing to work it out from. */
export type FactSource = (context: FactContext) => Resolved | null;
