import { definitionIn, type FactId } from '../../facts/registry/index.ts';
import { outcomeOf } from '../../rules/outcome.ts';
import type { CompiledRules } from '../../rules/types.ts';
import { verdictWord } from '../../verdict/verdict-of.ts';
import { replayFacts } from './facts-by-day.ts';
import type { ReplayDay, ReplayInput } from './types.ts';

export { replayFacts } from './facts-by-day.ts';
export { seasonDatesOf } from './season.ts';
export type {
  FactsDay,
  FactsReplayInput,
  RecordPlace,
  ReplayDay,
  ReplayInput,
  SeasonDates,
  WeatherDay,
} from './types.ts';

/**
 * Every day of every season in a record, judged as its facts stood that morning (`replayFacts`). The rain to come is what fell: a
 * replay knows no forecast error. Throws SCIENCE_OUT_OF_RANGE for days that do not follow each other, PARAMETER_MISSING.
 */
export function* replay({ compiled, ...input }: ReplayInput): Generator<ReplayDay> {
  const wanted = factsRead(compiled);
  for (const day of replayFacts({ ...input, parameters: compiled.parameters, registry: compiled.registry, wanted })) {
    const outcomes = compiled.rules.map(({ condition }) => outcomeOf(condition, day.facts));
    const judged = compiled.rules.map(({ rule: { effect } }, at) => ({ effect, outcome: outcomes[at]! }));
    const assumed = wanted.filter(
      (id) => day.facts[id] === input.given[id] && definitionIn(compiled.registry, id).profile !== true,
    );
    yield { ...day, verdict: verdictWord(judged), outcomes, assumed };
  }
}

/** Every fact that the rules read, once each. */
export function factsRead({ rules }: CompiledRules): FactId[] {
  return [...new Set(rules.flatMap(({ facts }) => facts))];
}
