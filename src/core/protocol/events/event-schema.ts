import * as z from 'zod';
import type { ConversationEvent, FieldProfile } from '../../dialogue/events.ts';
import { errorReportSchema } from '../view-schema.ts';
import { decisionSchema } from './decision-schema.ts';
import { momentSchema, observationSchema, textSchema } from './fact-schema.ts';
import { forecastSchema } from './forecast-schema.ts';

const id = z.string().min(1).max(64);
const stamp = {
  id,
  at: momentSchema,
  device: id,
  count: z.int().min(0),
  clampedFrom: z.exactOptional(momentSchema),
};

/** A field with what is known of it for the season. */
export const fieldProfileSchema: z.ZodType<FieldProfile> = z.strictObject({
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
  }),
  said: z.strictObject({
    kind: z.literal('said'),
    ...stamp,
    text: z.string().min(1).max(2000),
    asked: id.nullable(),
  }),
  answered: z.strictObject({
    kind: z.literal('answered'),
    ...stamp,
    question: id,
    choices: z.array(id).max(20),
    numbers: z.record(id, z.number()),
    doesNotKnow: z.boolean(),
  }),
  requested: z.strictObject({
    kind: z.literal('requested'),
    ...stamp,
    request: z.enum([
      'why-asked',
      'what-said',
      'check-the-rest',
      'look-again',
      'dose',
      'verdict-now',
      'confirm',
      'deny',
    ]),
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
