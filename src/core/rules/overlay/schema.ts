import * as z from 'zod';
import {
  camel,
  casesSchema,
  cautionsSchema,
  glossarySchema,
  isoDay,
  kebab,
  localised,
  questionsSchema,
  rulesSchema,
  semanticVersion,
  source,
  strict,
  words,
} from '../pack/schema.ts';

const parameter = strict({
  id: camel,
  value: z.unknown(),
  unit: words.optional(),
  source,
  why: localised,
  validFrom: isoDay.optional(),
  validTo: isoDay.optional(),
  tighter: z.enum(['lower', 'higher', 'fewer', 'more', 'neither']).optional(),
});

const rule = strict({ topic: kebab.optional(), ...rulesSchema.shape.rules.element.shape });
const ids = z.array(kebab).min(1, 'at least one id');

/** One file of an overlay; conditions, values and readings are judged once it is laid over a pack. */
export const overlaySchema = strict({
  overlay: strict({
    id: kebab,
    title: localised,
    author: words,
    place: words,
    reason: z.union([words, localised], 'a text, or a text in each language'),
    layer: z.enum(['area', 'farm']),
    pack: strict({ id: kebab, from: semanticVersion.optional(), before: semanticVersion.optional() }),
    validFrom: isoDay,
    validTo: isoDay.optional(),
    fixed: z.array(words).min(1, 'at least one id').optional(),
  }),
  parameters: z.array(parameter).optional(),
  rules: z.array(rule).optional(),
  questions: questionsSchema.shape.questions.optional(),
  cautions: cautionsSchema.shape.cautions.optional(),
  glossary: glossarySchema.shape.terms.optional(),
  cases: casesSchema.shape.cases.optional(),
  hash: z.exactOptional(words),
  removes: strict({ rules: ids.optional(), questions: ids.optional(), cautions: ids.optional() }).optional(),
});

/** An overlay's file as parsed. */
export type OverlayContent = z.output<typeof overlaySchema>;
