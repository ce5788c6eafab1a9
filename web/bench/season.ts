import * as z from 'zod';
import {
  compareSeasons,
  plainField,
  type SeasonCompared,
  type Side,
  type StationRecord,
  seasonRules,
} from '../../src/core/compare/index.ts';
import { codedError } from '../../src/core/errors/coded-error.ts';
import type { VerdictWord } from '../../src/core/verdict/types.ts';
import { inventedDays } from '../../src/demo/invented-seasons.ts';
import { inventedPlace } from '../../src/demo/invented-weather.ts';

/** Daily weather that changes are tried on. */
export interface SeasonWeather extends StationRecord {
  readonly invented: boolean;
}

/** Days between readings of the soil at 30 cm. */
const readingEveryDays = 7;
const seed = 4;

/** The invented weather of the year before the one of a day, whole, and of the winters before and after. */
export function inventedSeason(today: string): SeasonWeather {
  const year = Number(today.slice(0, 4)) - 1;
  return { name: 'Hollin Bank Farm', place: inventedPlace, days: inventedDays(seed, year - 1, 2), invented: true };
}

/**
 * The last season that the weather holds to its end, else the last, under both rule sets, on the plain field of their cases; null where
 * it holds none.
 */
export function lastSeason(before: Side, after: Side, weather: SeasonWeather, today: string): SeasonCompared | null {
  const rules = seasonRules({ a: before, b: after }, today);
  const input = {
    ...rules,
    station: weather,
    given: plainField(before).resolved,
    readingEveryDays,
  };
  const seasons = [...compareSeasons(input)];
  return seasons.findLast((one) => lastDayOf(one).endsWith(rules.season.lastDay)) ?? seasons.at(-1) ?? null;
}

/** The last day of a season that its weather holds, YYYY-MM-DD. */
function lastDayOf({ first, verdicts }: SeasonCompared): string {
  return new Date(Date.parse(first) + (verdicts.length - 1) * 86_400_000).toISOString().slice(0, 10);
}

/** How many days of a season come to each verdict, before and after. */
export function daysByVerdict({
  verdicts,
}: SeasonCompared): readonly { readonly verdict: VerdictWord; readonly a: number; readonly b: number }[] {
  return (['spray-today', 'wait', 'do-not-spray'] as const).map((verdict) => ({
    verdict,
    a: verdicts.filter((pair) => pair.a === verdict).length,
    b: verdicts.filter((pair) => pair.b === verdict).length,
  }));
}

const measure = z.number().nullable();
const weatherSchema = z.object({
  name: z.string().min(1),
  place: z.object({
    latitude: z.number().min(-90).max(90),
    longitude: z.number().min(-180).max(180),
    elevationM: z.number(),
  }),
  days: z
    .array(
      z.object({
        iso: z.iso.date(),
        airMeanC: measure,
        airMinC: measure,
        airMaxC: measure,
        rainMm: measure,
        heaviestMmPerH: measure.optional(),
        windKmh: measure,
        gustKmh: measure,
        referenceMm: measure.default(null),
        soil30cmC: measure.default(null),
      }),
    )
    .min(1)
    .max(20_000),
});

/** Daily records of a file. Throws FILE_NOT_JSON, WEATHER_FILE_WRONG naming the first place that is wrong. */
export function parseWeatherFile(text: string, file: string): SeasonWeather {
  const parsed = weatherSchema.safeParse(jsonOf(text, file));
  if (parsed.success) return { ...(parsed.data as StationRecord), invented: false };
  const [issue] = parsed.error.issues;
  const pointer = (issue?.path ?? []).map((step) => `/${String(step)}`).join('');
  throw codedError('WEATHER_FILE_WRONG', {
    file,
    pointer,
    expected: 'name, place and days with their daily values, or null',
    came: pointer === '' ? 'another form' : `something else at ${pointer}`,
  });
}

function jsonOf(text: string, file: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw codedError('FILE_NOT_JSON', { file, expected: 'one JSON value', came: String(error) });
  }
}
