import * as z from 'zod';
import type { CarriedOver, ConversationEvent, FieldProfile } from '../../dialogue/events.ts';
import { languageSchema } from '../language-schema.ts';
import { requestKinds } from '../request-kinds.ts';
import { errorReportSchema } from '../view-schema.ts';
import { decisionSchema } from './decision-schema.ts';
import { momentSchema, observationSchema, observationShape, textSchema } from './fact-schema.ts';
import { forecastSchema } from './forecast-schema.ts';

const id = z.string().min(1).max(64);
const stamp = {
  id,
  at: momentSchema,
  device: id,
  count: z.int().min(0),
  clampedFrom: z.exactOptional(momentSchema),
};

const given = {
  question: id,
  choices: z.array(id).max(20),
  numbers: z.record(id, z.number()),
  doesNotKnow: z.boolean(),
};
const fieldName = z.strictObject({ id, name: z.string().max(200) });
const carriedSchema: z.ZodType<CarriedOver> = z.strictObject({
  from: fieldName,
  observations: z
    .array(z.strictObject({ ...observationShape, doubtful: z.boolean(), quote: z.string().max(2000).nullable() }))
    .max(100),
});

/** A field with what is known of it for the season. */
const fieldProfileSchema: z.ZodType<FieldProfile> = z.strictObject({
  id,
  name: z.string().max(200),
  invented: z.boolean(),
  note: z.exactOptional(textSchema),
  observations: z.array(observationSchema).max(200),
});

/** Every kind of event of a conversation, as page, server and terminal hand it to one another. */
export const eventSchemas: {
  readonly [K in ConversationEvent['kind']]: z.ZodType<Extract<ConversationEvent, { kind: K }>>;
} = {
  started: z.strictObject({
    kind: z.literal('started'),
    ...stamp,
    packId: z.string().max(100),
    packHash: z.string().max(64),
    field: fieldProfileSchema.nullable(),
    shiftSeconds: z.number(),
    carried: z.exactOptional(carriedSchema),
    fields: z.exactOptional(z.array(fieldName).max(200)),
    language: languageSchema,
  }),
  said: z.strictObject({
    kind: z.literal('said'),
    ...stamp,
    text: z.string().min(1).max(2000),
    asked: id.nullable(),
    language: languageSchema,
  }),
  answered: z.strictObject({
    kind: z.literal('answered'),
    ...stamp,
    ...given,
    also: z.exactOptional(z.array(z.strictObject(given)).max(4)),
  }),
  requested: z.strictObject({
    kind: z.literal('requested'),
    ...stamp,
    request: z.enum(requestKinds),
    fact: z.exactOptional(id),
    language: languageSchema,
  }),
  undone: z.strictObject({ kind: z.literal('undone'), ...stamp, of: id }),
  'forecast-attached': z.strictObject({
    kind: z.literal('forecast-attached'),
    ...stamp,
    forecast: forecastSchema,
    warning: z.exactOptional(errorReportSchema),
  }),
  'forecast-failed': z.strictObject({ kind: z.literal('forecast-failed'), ...stamp, error: errorReportSchema }),
  evaluated: z.strictObject({
    kind: z.literal('evaluated'),
    ...stamp,
    tag: z.string().max(64),
    outcomes: z.record(id, z.enum(['met', 'not-met', 'unknown'])),
  }),
  'evaluation-failed': z.strictObject({
    kind: z.literal('evaluation-failed'),
    ...stamp,
    tag: z.string().max(64),
    error: errorReportSchema,
  }),
  'verdict-given': z.strictObject({
    kind: z.literal('verdict-given'),
    ...stamp,
    tag: z.string().max(64),
    saw: z.array(id).max(5000),
    decision: decisionSchema,
  }),
};
