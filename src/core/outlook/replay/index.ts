import { codedError } from '../../errors/coded-error.ts';
import { asChoice } from '../../facts/derive/derived.ts';
import { definitionIn, type FactId, isFactOf } from '../../facts/registry/index.ts';
import { resolvedFact } from '../../facts/resolved.ts';
import { outcomeOf } from '../../rules/outcome.ts';
import type { CompiledRules } from '../../rules/types.ts';
import type { TextureClass } from '../../science/soil/texture-class.ts';
import { numberParameter } from '../../units/parameter.ts';
import { verdictWord } from '../../verdict/verdict-of.ts';
import { factsOfDay } from './day-facts.ts';
import { seasonOf } from './season.ts';
import { noonAt, soilFollower } from './soil-temperature.ts';
import type { ReplayDay, ReplayInput } from './types.ts';
import { flowOf, type WaterFollower, waterFollower } from './water.ts';

export { seasonDatesOf } from './season.ts';
export type { RecordPlace, ReplayDay, ReplayInput, SeasonDates, WeatherDay } from './types.ts';

/**
 * Every day of every season in a record, judged as its facts stood that morning: water as the day before left it, rain of the day
 * and the next as the 48 h to come, soil read every `readingEveryDays` days and carried between. One day at a time, nothing kept.
 * The rain to come is what fell: a replay knows no forecast error. Throws SCIENCE_OUT_OF_RANGE for days that do not follow each
 * other, PARAMETER_MISSING.
 */
export function* replay(input: ReplayInput): Generator<ReplayDay> {
  const { compiled, record, place, season: dates, readingEveryDays } = input;
  const wanted = factsRead(compiled);
  const soil = soilFollower(record, place);
  const water = followWater(input);
  let dayOfSeason = 0;
  let before: number | null = null;
  for (const [index, day] of record.entries()) {
    checkFollows(input, index);
    const season = seasonOf(day.iso, dates);
    dayOfSeason = season !== null && season === before ? dayOfSeason + 1 : 0;
    before = season;
    if (season !== null) {
      if (dayOfSeason % readingEveryDays === 0) soil.read(index);
      const facts = factsOfDay(input, index, noonAt(day.iso, place), { soil, water }, wanted);
      const outcomes = compiled.rules.map(({ condition }) => outcomeOf(condition, facts));
      const judged = compiled.rules.map(({ rule: { effect } }, at) => ({ effect, outcome: outcomes[at]! }));
      const assumed = wanted.filter(
        (id) => facts[id] === input.given[id] && definitionIn(compiled.registry, id).profile !== true,
      );
      yield { season, iso: day.iso, verdict: verdictWord(judged), outcomes, facts, assumed };
    }
    water?.takeIn(flowOf(day, place));
  }
}

/** Every fact that the rules read, once each. */
export function factsRead({ rules }: CompiledRules): FactId[] {
  return [...new Set(rules.flatMap(({ facts }) => facts))];
}

function followWater({ compiled: { parameters, registry }, given }: ReplayInput): WaterFollower | null {
  if (!isFactOf(registry, 'soil.drainsExpected7d')) return null;
  const texture = asChoice(resolvedFact(given, 'field.texture'));
  if (texture === null) return null;
  return waterFollower({
    textures: texture.possible as readonly TextureClass[],
    depthM: numberParameter(parameters, 'deficitDepthM'),
    cover: { kind: 'crop', coefficient: numberParameter(parameters, 'youngCropCoefficient') },
  });
}

function checkFollows({ record }: ReplayInput, index: number): void {
  const [before, day] = [record[index - 1], record[index]!];
  const step = before === undefined ? 1 : (noonAt(day.iso, origin) - noonAt(before.iso, origin)) / 86_400;
  if (step === 1) return;
  const expected = 'days that follow each other without a hole';
  throw codedError('SCIENCE_OUT_OF_RANGE', { expected, came: `${day.iso} after ${before?.iso ?? 'nothing'}` });
}

const origin = { longitude: 0 };
