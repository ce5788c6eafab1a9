import { DateTime } from 'luxon';
import * as z from 'zod';
import { pictureIds } from './picture-ids.ts';

/** Object schema that refuses unknown keys; the message of that issue lists the right ones for `zod-findings.ts`. */
export function strict<Shape extends z.core.$ZodLooseShape>(shape: Shape) {
  return z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? Object.keys(shape).join(' ') : undefined),
  });
}

/** Id of a pack, rule, question or caution. */
export const kebab = z.string().regex(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/, 'a kebab-case id');
/** Id of a parameter. */
export const camel = z.string().regex(/^[a-z][a-zA-Z0-9]*$/, 'a camelCase id');
/** A day, YYYY-MM-DD. */
export const isoDay = z.iso.date('a date YYYY-MM-DD');
const instant = z
  .string()
  .refine(
    (text) => /T.*(Z|[+-]\d\d:\d\d)$/.test(text) && DateTime.fromISO(text).isValid,
    'an ISO instant such as 2026-11-06T09:00Z',
  );
/** A text that is not empty. */
export const words = z.string().regex(/\S/, 'a text that is not empty');
/** A text in each language. */
export const localised = z.record(z.string(), words);
/** Where something comes from. */
export const source = z.union([words, localised], 'a title, or a text in each language');
const authority = z.enum(['law', 'label', 'water', 'practice']);

/** A semantic version. */
export const semanticVersion = z
  .string()
  .regex(/^\d+\.\d+\.\d+(-[0-9A-Za-z.-]+)?$/, 'a semantic version such as 1.0.0');

/** pack.json. */
export const packSchema = strict({
  id: kebab,
  version: semanticVersion,
  title: localised,
  scope: localised,
  zone: words,
  active: kebab,
  languages: z.array(z.string().regex(/^[a-z]{2}$/, 'a two-letter ISO 639-1 code')).min(1, 'at least one language'),
});

/** parameters.json; the value is judged against the unit by `check-parameters.ts`. */
export const parametersSchema = strict({
  parameters: z.array(
    strict({
      id: camel,
      value: z.unknown(),
      unit: words,
      source,
      why: localised,
      validFrom: isoDay,
      validTo: isoDay.optional(),
      tighter: z.enum(['lower', 'higher', 'fewer', 'more', 'neither']),
    }),
  ),
});

/** *.rules.json; `when` is parsed by `parse-condition.ts`. */
export const rulesSchema = strict({
  topic: kebab,
  rules: z.array(
    strict({
      id: kebab,
      effect: z.enum(['stop', 'hold', 'advise']),
      authority,
      lifts: z.enum(['hours', 'days', 'person', 'season']).optional(),
      protected: z.boolean().optional(),
      source,
      why: localised,
      when: z.record(z.string(), z.unknown()),
      text: z.record(z.string(), strict({ title: words, met: words, unknown: words, lift: words.optional() })),
    }),
  ),
});

/** questions.json; readings are parsed by `check-questions.ts`. */
export const questionsSchema = strict({
  questions: z.array(
    strict({
      id: kebab,
      facts: z.array(z.string()).min(1, 'at least one fact'),
      form: z.enum(['number', 'choice', 'signs', 'place']),
      effortSeconds: z.number().positive('a number above 0'),
      group: z.enum(['season', 'field', 'crop', 'soil', 'weather', 'dose']),
      forDose: z.literal(true).optional(),
      with: z.array(kebab).min(1, 'at least one question').optional(),
      picture: z.string().optional(),
      choices: z
        .array(
          strict({
            id: kebab,
            label: localised,
            help: localised.optional(),
            gives: z.record(z.string(), z.record(z.string(), z.unknown())),
          }),
        )
        .min(1, 'at least one choice')
        .optional(),
      text: z.record(z.string(), strict({ ask: words, why: words, how: words })),
    }),
  ),
});

/** cautions.json. */
export const cautionsSchema = strict({ cautions: z.array(strict({ id: kebab, authority, text: localised })) });

/** glossary.json. */
export const glossarySchema = strict({
  terms: z.array(
    strict({
      id: kebab,
      words: z.record(z.string(), z.array(words).min(1, 'at least one word')),
      forms: z.exactOptional(z.record(z.string(), z.array(words).min(1, 'at least one form'))),
      text: localised,
      source,
      picture: z.exactOptional(z.enum(pictureIds)),
    }),
  ),
});

/** cases/*.json. `about` says what the file shows; `base` holds facts that stand under those of every case, null takes one away. */
export const casesSchema = strict({
  about: words.optional(),
  base: z.record(z.string(), z.unknown()).optional(),
  cases: z.array(
    strict({
      name: words,
      why: words.optional(),
      at: instant.optional(),
      facts: z.record(z.string(), z.unknown()),
      expect: strict({
        verdict: z.enum(['spray-today', 'wait', 'do-not-spray']),
        met: z.array(z.string()).optional(),
        notMet: z.array(z.string()).optional(),
        unknown: z.array(z.string()).optional(),
        missing: z.array(z.string()).optional(),
        lifts: z.record(z.string(), z.enum(['hours', 'days', 'person', 'season'])).optional(),
        doseGPerHa: z.number().positive('a number above 0').optional(),
      }),
    }),
  ),
});

/** Readings that an answer gives, by type. */
export const readingSchemas = {
  number: strict({
    type: z.literal('number'),
    value: z.number(),
    low: z.number().optional(),
    high: z.number().optional(),
  }),
  choice: strict({ type: z.literal('choice'), possible: z.array(z.string()).min(1, 'at least one choice') }),
  signs: strict({
    type: z.literal('signs'),
    present: z.array(z.string()),
    absent: z.array(z.string()),
    complete: z.boolean(),
  }),
  date: strict({ type: z.literal('date'), iso: isoDay }),
  'does-not-know': strict({ type: z.literal('does-not-know') }),
} as const;
