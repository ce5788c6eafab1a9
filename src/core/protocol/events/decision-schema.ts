import * as z from 'zod';
import type { Decision } from '../../dialogue/decision-types.ts';
import type { ConditionTrace, RuleTrace } from '../../rules/trace-types.ts';
import type { Limit } from '../../rules/types.ts';
import { authoritySchema, effectSchema, liftsSchema, outcomeSchema, reasonSchemas } from '../reason-schema.ts';
import { factIdSchema, resolvedFactsSchema, resolvedSchema, textSchema } from './fact-schema.ts';

const text = textSchema;
const textOrNull = text.nullable();
const instant = z.iso.datetime();
const { margin, reason } = reasonSchemas(text, factIdSchema);

const limit: z.ZodType<Limit> = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('number'), value: z.number() }),
  z.strictObject({ kind: z.literal('month-day'), value: z.number() }),
  z.strictObject({ kind: z.literal('choices'), values: z.array(text) }),
]);

/** Nested as a rule's own condition is, two levels and what a reference adds. */
const condition: z.ZodType<ConditionTrace> = z.lazy(() =>
  z.discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('comparison'),
      name: text,
      fact: factIdSchema,
      op: z.enum(['below', 'atMost', 'above', 'atLeast', 'is', 'isNot', 'oneOf', 'noneOf', 'has']),
      limit,
      parameter: textOrNull,
      unit: textOrNull,
      value: resolvedSchema,
      outcome: outcomeSchema,
      margin: margin.nullable(),
      present: z.exactOptional(z.boolean()),
    }),
    z.strictObject({
      kind: z.enum(['all', 'any', 'eitherOf']),
      outcome: outcomeSchema,
      members: z.array(condition).max(60),
    }),
    z.strictObject({ kind: z.literal('not'), outcome: outcomeSchema, member: condition }),
    z.strictObject({ kind: z.literal('rule'), rule: text, outcome: outcomeSchema, member: condition }),
  ]),
);

const ruleTrace: z.ZodType<RuleTrace> = z.strictObject({
  rule: text,
  effect: effectSchema,
  authority: authoritySchema,
  lifts: liftsSchema.nullable(),
  outcome: outcomeSchema,
  facts: z.array(factIdSchema),
  parameters: z.array(text),
  margins: z.array(margin),
  condition,
});

const forecast = z.strictObject({
  attribution: text,
  invented: z.boolean(),
  fetchedAt: instant,
  ageHours: z.number(),
  reachesTo: instant.nullable(),
  unused: z.enum(['too-old', 'too-far']).nullable(),
  note: textOrNull,
  rainChance: z.strictObject({ courses: z.number(), share: z.number(), atMostMm: z.number() }).nullable(),
  latitude: z.number(),
  longitude: z.number(),
  distanceKm: z.number(),
});

const dose = z.union([
  z.strictObject({
    activeGPerHa: z.number(),
    productLPerHa: z.number(),
    activeInProductGPerHa: z.number(),
    labelMaxGPerHa: z.number(),
    basis: z.enum(['usual', 'severe']),
    cutToLabel: z.boolean(),
  }),
  z.strictObject({ needs: z.array(factIdSchema) }),
]);

const overlay = z.strictObject({
  id: text,
  title: text,
  author: text,
  place: text,
  hash: text,
  changedRules: z.array(text).max(500),
});

/** A whole answer as a verdict event keeps it. */
export const decisionSchema: z.ZodType<Decision> = z.strictObject({
  verdict: z.enum(['spray-today', 'wait', 'do-not-spray']),
  slowest: z.enum(['hours', 'days', 'season']).nullable(),
  missing: z.array(factIdSchema),
  trace: z.array(ruleTrace).max(500),
  headline: text,
  why: text,
  reasons: z.array(reason).max(500),
  advice: z.array(reason).max(500),
  dose,
  doseText: text,
  cautions: z.array(z.strictObject({ id: text, authority: authoritySchema, text })),
  pack: z.strictObject({
    id: text,
    version: text,
    hash: text,
    title: text,
    overlays: z.exactOptional(z.array(overlay).max(50)),
  }),
  forecast: forecast.nullable(),
  facts: resolvedFactsSchema,
  at: instant,
  validUntil: instant.nullable(),
});
