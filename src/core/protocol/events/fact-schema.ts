import * as z from 'zod';
import type { FactId } from '../../facts/registry/index.ts';
import type { FactObservation, ResolvedFacts } from '../../facts/resolved.ts';
import type { Reading, Resolved } from '../../facts/types.ts';
import type { EpochSeconds } from '../../units/brands.ts';

/** Epoch seconds UTC from 1970 to the end of 9999. */
export const momentSchema = z.number().min(0).max(253_402_300_799) as unknown as z.ZodType<EpochSeconds>;
/** A fact id is text here; which ids there are is the registry's matter. */
export const factIdSchema = z.string().min(1).max(64) as unknown as z.ZodType<FactId>;
/** A sentence or a name. */
export const textSchema = z.string().max(4000);

const number = z.number();
const texts = z.array(z.string().max(64)).max(60);

/** What a person said or measured, before ageing. */
const readingSchema: z.ZodType<Reading> = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('number'),
    value: number,
    low: z.exactOptional(number),
    high: z.exactOptional(number),
    from: z.exactOptional(z.strictObject({ depthCm: number, valueC: number, hour: z.string().max(8) })),
  }),
  z.strictObject({ type: z.literal('choice'), possible: texts }),
  z.strictObject({ type: z.literal('signs'), present: texts, absent: texts, complete: z.boolean() }),
  z.strictObject({ type: z.literal('date'), iso: z.iso.date() }),
  z.strictObject({ type: z.literal('does-not-know') }),
]);

/** The fields of an observation. */
export const observationShape = {
  fact: factIdSchema,
  reading: readingSchema,
  at: momentSchema,
  source: z.enum(['said', 'measured', 'told', 'profile']),
};

/** One observation of a registered fact. */
export const observationSchema: z.ZodType<FactObservation> = z.strictObject(observationShape);

const origin = {
  known: z.literal(true),
  source: z.enum(['said', 'measured', 'told', 'profile', 'derived', 'forecast']),
  at: momentSchema,
  goodUntil: momentSchema.nullable(),
  note: z.exactOptional(textSchema),
};

/** A fact as the rules saw it. */
export const resolvedSchema: z.ZodType<Resolved> = z.union([
  z.strictObject({ ...origin, type: z.literal('number'), value: number, low: number, high: number }),
  z.strictObject({ ...origin, type: z.literal('choice'), possible: texts }),
  z.strictObject({ ...origin, type: z.literal('signs'), present: texts, possible: texts }),
  z.strictObject({ ...origin, type: z.literal('date'), iso: z.iso.date() }),
  z.strictObject({
    known: z.literal(false),
    reason: z.enum([
      'not-asked',
      'person-does-not-know',
      'too-old',
      'forecast-gap',
      'implausible',
      'in-conflict',
      'does-not-settle',
    ]),
    note: z.exactOptional(textSchema),
  }),
]);

/** Facts by id. */
export const resolvedFactsSchema = z.record(
  z.string().min(1).max(64),
  resolvedSchema,
) as unknown as z.ZodType<ResolvedFacts>;
