import { codedError } from '../../errors/coded-error.ts';
import { asChoice } from '../../facts/derive/derived.ts';
import { isFactOf } from '../../facts/registry/index.ts';
import { resolvedFact } from '../../facts/resolved.ts';
import type { TextureClass } from '../../science/soil/texture-class.ts';
import { numberParameter } from '../../units/parameter.ts';
import { factsOfDay } from './day-facts.ts';
import { seasonOf } from './season.ts';
import { noonAt, soilFollower } from './soil-temperature.ts';
import type { FactsDay, FactsReplayInput } from './types.ts';
import { flowOf, type WaterFollower, waterFollower } from './water.ts';

/**
 * The facts of every day of every season in a record, as they stood that morning: water as the day before left it, rain of the day
 * and the next as the 48 h to come, soil read every `readingEveryDays` days and carried between. One day at a time, nothing kept.
 * Throws SCIENCE_OUT_OF_RANGE for days that do not follow each other, PARAMETER_MISSING.
 */
export function* replayFacts(input: FactsReplayInput): Generator<FactsDay> {
  const { record, place, season: dates, readingEveryDays } = input;
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
      const facts = factsOfDay(input, index, noonAt(day.iso, place), { soil, water });
      yield { season, iso: day.iso, facts };
    }
    water?.takeIn(flowOf(day, place));
  }
}

function followWater({ parameters, registry, given }: FactsReplayInput): WaterFollower | null {
  if (!isFactOf(registry, 'soil.drainsExpected7d')) return null;
  const texture = asChoice(resolvedFact(given, 'field.texture'));
  if (texture === null) return null;
  return waterFollower({
    textures: texture.possible as readonly TextureClass[],
    depthM: numberParameter(parameters, 'deficitDepthM'),
    cover: { kind: 'crop', coefficient: numberParameter(parameters, 'youngCropCoefficient') },
  });
}

function checkFollows({ record }: FactsReplayInput, index: number): void {
  const [before, day] = [record[index - 1], record[index]!];
  const step = before === undefined ? 1 : (noonAt(day.iso, origin) - noonAt(before.iso, origin)) / 86_400;
  if (step === 1) return;
  const expected = 'days that follow each other without a hole';
  throw codedError('SCIENCE_OUT_OF_RANGE', { expected, came: `${day.iso} after ${before?.iso ?? 'nothing'}` });
}

const origin = { longitude: 0 };
