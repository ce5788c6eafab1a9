import * as z from 'zod';
import type { FactId } from '../facts/registry/index.ts';

/** What a rule does, who stands behind it, what lifts it, and how it came out. */
export const effectSchema = z.enum(['stop', 'hold', 'advise']);
export const authoritySchema = z.enum(['law', 'label', 'water', 'practice']);
export const liftsSchema = z.enum(['hours', 'days', 'person', 'season']);
export const outcomeSchema = z.enum(['met', 'not-met', 'unknown']);

/** Schemas of a margin and of a worded reason, over the text and the fact id that their bearer takes. */
export function reasonSchemas(text: z.ZodType<string>, factId: z.ZodType<FactId>) {
  const margin = z.strictObject({
    fact: factId,
    parameter: text,
    limit: z.union([z.number(), text]),
    unit: text.nullable(),
    margin: z.number(),
    worst: z.number(),
  });
  const reason = z.strictObject({
    rule: text,
    effect: effectSchema,
    authority: authoritySchema,
    lifts: liftsSchema.nullable(),
    outcome: outcomeSchema,
    margin: z.number().nullable(),
    marginUnit: text.nullable(),
    title: text,
    text,
    lift: text.nullable(),
    margins: z.array(margin),
    marginText: text.nullable(),
  });
  return { margin, reason };
}
