import type { FactId } from '../facts/registry/index.ts';
import type { ResolvedFacts } from '../facts/resolved.ts';
import {
  type FactsDay,
  factsRead,
  type RecordPlace,
  replayFacts,
  type SeasonDates,
  type WeatherDay,
} from '../outlook/replay/index.ts';
import { compileRules } from '../rules/compile.ts';
import type { CompiledRules } from '../rules/types.ts';
import type { VerdictWord } from '../verdict/types.ts';
import { bothSeasons, datesOf } from './both-seasons.ts';
import { factsComeOutAlike } from './fact-parameters.ts';
import { decidersOf, judgePair, pairRules, type RulePair, wayOf } from './judge-pair.ts';
import { newTally } from './tally.ts';
import type { Sides, Transition, VerdictPair, Way } from './types.ts';
import { type WindowDifference, windowDifferences } from './windows.ts';

/** A station's weather, day by day. */
export interface StationRecord {
  readonly name: string;
  readonly place: RecordPlace;
  readonly days: readonly WeatherDay[];
}

/** A day whose verdict changes, and by which rules. */
export interface ChangedDay extends VerdictPair {
  readonly iso: string;
  readonly way: Exclude<Way, 'same'>;
  readonly by: readonly string[];
}

/** One season at one station under both rule sets. Windows name their days by their place in `verdicts`. */
export interface SeasonCompared {
  readonly station: string;
  /** Year in which it opened. */
  readonly season: number;
  /** Its first day in the record, YYYY-MM-DD; the others follow without a hole. */
  readonly first: string;
  readonly verdicts: readonly VerdictPair[];
  readonly transitions: readonly Transition[];
  readonly changed: readonly ChangedDay[];
  readonly windows: readonly WindowDifference[];
  /** Facts that were held, not recorded or modelled, on some day of it. */
  readonly held: readonly FactId[];
}

/** What seasons are compared on. */
export interface SeasonsInput {
  readonly rules: RulePair;
  readonly season: SeasonDates;
  readonly station: StationRecord;
  /** Held through all seasons where neither record nor model tells it. */
  readonly given: ResolvedFacts;
  readonly readingEveryDays: number;
}

/** Both rule sets with the limits of one day, and the days of the year on which either has its season. */
export function seasonRules({ a, b }: Pick<Sides, 'a' | 'b'>, isoDate: string): Pick<SeasonsInput, 'rules' | 'season'> {
  const rules = pairRules(compileRules(a.pack, isoDate), compileRules(b.pack, isoDate));
  return { rules, season: bothSeasons(datesOf(rules.a.parameters), datesOf(rules.b.parameters)) };
}

/**
 * Seasons of a record one after another, each day judged by both rule sets on the same facts, which are worked out once: twice only
 * where parameters of ageing or derivation differ. Throws as `replayFacts` does.
 */
export function* compareSeasons(input: SeasonsInput): Generator<SeasonCompared> {
  let days: Judged[] = [];
  for (const day of judgedDays(input)) {
    if (days.length > 0 && days[0]?.season !== day.season) {
      yield seasonOf(input, days);
      days = [];
    }
    days.push(day);
  }
  if (days.length > 0) yield seasonOf(input, days);
}

interface Judged {
  readonly season: number;
  readonly iso: string;
  readonly verdicts: VerdictPair;
  readonly by: readonly string[];
  readonly held: readonly FactId[];
}

function* judgedDays(input: SeasonsInput): Generator<Judged> {
  const { rules, given } = input;
  const shared = factsComeOutAlike(rules.a, rules.b);
  const both = { ...rules.a, registry: { ...rules.b.registry, ...rules.a.registry } };
  const read = [...new Set([...factsRead(rules.a), ...factsRead(rules.b)])];
  const ofB = shared ? null : factsFor(input, rules.b, factsRead(rules.b));
  const wanted = shared ? read : factsRead(rules.a);
  for (const { season, iso, facts } of factsFor(input, shared ? both : rules.a, wanted)) {
    const judged = judgePair(rules, facts, (ofB?.next().value as FactsDay | undefined)?.facts);
    const verdicts = { a: judged.a.verdict, b: judged.b.verdict };
    const held = wanted.filter((id) => facts[id] !== undefined && facts[id] === given[id]);
    yield { season, iso, verdicts, by: decidersOf(rules, judged), held };
  }
}

function factsFor(
  { season, station, given, readingEveryDays }: SeasonsInput,
  { parameters, registry }: CompiledRules,
  wanted: readonly FactId[],
): Generator<FactsDay> {
  const { place, days: record } = station;
  return replayFacts({ parameters, registry, wanted, season, place, record, given, readingEveryDays });
}

function seasonOf({ station }: SeasonsInput, days: readonly Judged[]): SeasonCompared {
  const tally = newTally();
  for (const { verdicts } of days) tally.add(verdicts);
  const changed = days.flatMap(({ iso, verdicts, by }): ChangedDay[] => {
    const way = wayOf(verdicts);
    return way === 'same' ? [] : [{ iso, ...verdicts, way, by }];
  });
  const sprays = (word: VerdictWord) => word === 'spray-today';
  const windows = windowDifferences(
    days.map(({ verdicts: { a } }) => sprays(a)),
    days.map(({ verdicts: { b } }) => sprays(b)),
  );
  return {
    station: station.name,
    season: days[0]!.season,
    first: days[0]!.iso,
    verdicts: days.map(({ verdicts }) => verdicts),
    transitions: tally.transitions(),
    changed,
    windows,
    held: [...new Set(days.flatMap(({ held }) => held))],
  };
}
