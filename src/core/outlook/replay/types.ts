import type { FactId, FactRegistry } from '../../facts/registry/index.ts';
import type { ResolvedFacts } from '../../facts/resolved.ts';
import type { Outcome } from '../../rules/trace-types.ts';
import type { CompiledRules } from '../../rules/types.ts';
import type { Parameters } from '../../units/parameter.ts';
import type { VerdictWord } from '../../verdict/types.ts';

/** Weather of one whole day at a station; null where the record is silent. */
export interface WeatherDay {
  /** The day at the station, YYYY-MM-DD. */
  readonly iso: string;
  readonly airMeanC: number | null;
  readonly airMinC: number | null;
  readonly airMaxC: number | null;
  readonly rainMm: number | null;
  /** Heaviest hour of the day, mm/h; absent in records of whole days, whose rain may then all have fallen in one hour. */
  readonly heaviestMmPerH?: number | null;
  /** Mean wind of the day at 10 m, km/h. */
  readonly windKmh: number | null;
  /** Highest gust of the day at 10 m, km/h. */
  readonly gustKmh: number | null;
  /** Reference evapotranspiration, mm; worked out from the air's range and the wind where it is null. */
  readonly referenceMm: number | null;
  /** Measured at 30 cm, C. */
  readonly soil30cmC: number | null;
}

/** Where a record was kept. */
export interface RecordPlace {
  readonly latitude: number;
  readonly longitude: number;
  /** Height above the sea, m. */
  readonly elevationM: number;
}

/** First and last day of a season, MM-DD, both in it; it may run over the turn of the year. */
export interface SeasonDates {
  readonly opens: string;
  readonly lastDay: string;
}

/** What the facts of seasons are worked out from. */
export interface FactsReplayInput {
  /** Parameters that the facts read; they hold for every season replayed. */
  readonly parameters: Parameters;
  /** The facts that the pack reaches. */
  readonly registry: FactRegistry;
  /** The facts that are wanted of each day. */
  readonly wanted: readonly FactId[];
  readonly season: SeasonDates;
  readonly place: RecordPlace;
  /** Days that follow each other, oldest first; days before a season opens let soil and water settle. */
  readonly record: readonly WeatherDay[];
  /** Field profile, and what would have been seen: held through all seasons where neither record nor model tells it. */
  readonly given: ResolvedFacts;
  /** A reading at 30 cm is taken every so many days of a season, 1 or more; between them the model carries it. */
  readonly readingEveryDays: number;
}

/** What seasons are replayed from. */
export interface ReplayInput extends Omit<FactsReplayInput, 'parameters' | 'registry' | 'wanted'> {
  /** Rules with the limits of one day, which hold for every season replayed. */
  readonly compiled: CompiledRules;
}

/** The facts of one day of a replay. */
export interface FactsDay {
  /** Year in which its season opened. */
  readonly season: number;
  readonly iso: string;
  readonly facts: ResolvedFacts;
}

/** One day of a replay. */
export interface ReplayDay extends FactsDay {
  readonly verdict: VerdictWord;
  /** Outcome of every rule, in the order of `compiled.rules`; its facts are those that the rules read. */
  readonly outcomes: readonly Outcome[];
  /** Those of the facts that were only held: assumed, not recorded or modelled. Field profile not counted. */
  readonly assumed: readonly FactId[];
}
