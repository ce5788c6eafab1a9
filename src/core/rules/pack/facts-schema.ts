import * as z from 'zod';
import { camel, localised, strict, words } from './schema.ts';

const pair = z.tuple([z.number(), z.number()]);
const ways = z.enum(['asked', 'forecast']);

/** How long an observation stays good: a season, the day, or hours or days by a parameter of the pack. */
const goodFor = z.discriminatedUnion('kind', [
  strict({ kind: z.literal('season') }),
  strict({ kind: z.literal('same-day') }),
  strict({ kind: z.literal('hours'), parameter: camel, untilRainMm: camel.optional() }),
  strict({ kind: z.literal('days'), parameter: camel }),
]);

/** How the value is taken from the hourly forecast. */
const forecast = strict({
  variable: z.enum(['air-temperature', 'relative-humidity', 'rain', 'wind-at-boom', 'gusts-at-boom', 'delta-t']),
  over: z.union([z.literal('now'), z.literal('next-night'), strict({ hoursAhead: camel })]),
  take: z.enum(['value', 'min', 'max', 'sum', 'mean']),
  end: z.enum(['low', 'high']).optional(),
});

/** facts.json: facts that are the pack's own; what fits together is judged by `build-facts.ts`. */
export const factsSchema = strict({
  facts: z.array(
    strict({
      id: z.string().regex(/^[a-z][a-zA-Z]*(\.[a-z][a-zA-Z0-9]*)+$/, 'an id such as crop.growthStage'),
      label: localised,
      type: z.enum(['number', 'choice', 'signs', 'date']),
      unit: words.optional(),
      range: pair.optional(),
      plausible: pair.optional(),
      choices: z
        .array(strict({ id: z.string().regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, 'a kebab-case id'), label: localised }))
        .min(2, 'at least two choices')
        .optional(),
      precision: z.number().positive('a number above 0').optional(),
      shownDecimals: z.int().min(0).max(6).optional(),
      obtained: z.array(ways).min(1, 'at least one way'),
      goodFor,
      scope: z.enum(['farm', 'near']).optional(),
      profile: z.literal(true).optional(),
      noQuestion: words.optional(),
      source: words,
      words: z.record(z.string(), z.array(words).min(1, 'at least one word')).optional(),
      forecast: forecast.optional(),
    }),
  ),
});
