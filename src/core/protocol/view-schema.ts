import * as z from 'zod';
import type { ConversationView } from '../dialogue/view-types.ts';
import type { ErrorReport } from '../errors/coded-error.ts';
import { type ErrorCode, errorTable } from '../errors/table.ts';
import type { FactId } from '../facts/registry/index.ts';
import { outlookSchema } from './outlook-schema.ts';
import { authoritySchema, effectSchema, outcomeSchema, reasonSchemas } from './reason-schema.ts';

const text = z.string();
const textOrNull = text.nullable();
/** A fact id is text to whoever shows it; which ids there are is the registry's matter. */
const factId = z.string().min(1) as unknown as z.ZodType<FactId>;
const numberOrNull = z.number().nullable();
const { reason } = reasonSchemas(text, factId);

/** A coded error as sent over a socket. */
export const errorReportSchema: z.ZodType<ErrorReport> = z.strictObject({
  code: z.enum(Object.keys(errorTable) as ErrorCode[]),
  says: text,
  expected: text,
  came: text,
  next: text,
  file: z.exactOptional(text),
  pointer: z.exactOptional(text),
  fact: z.exactOptional(text),
  rule: z.exactOptional(text),
  parameter: z.exactOptional(text),
  nearest: z.exactOptional(text),
});

const term = z.strictObject({ id: text, said: z.array(text), text });

const ruleView = z.strictObject({
  rule: text,
  title: text,
  outcome: outcomeSchema,
  outcomeText: text,
  effect: effectSchema,
  authority: authoritySchema,
  source: text,
  why: text,
  facts: z.array(z.strictObject({ fact: text, label: text, value: text, from: text })),
  limits: z.array(z.strictObject({ parameter: text, value: text, source: text })),
  margins: z.array(text),
});

const verdictView = z.strictObject({
  verdict: z.enum(['spray-today', 'wait', 'do-not-spray']),
  headline: text,
  why: text,
  reasons: z.array(reason),
  advice: z.array(reason),
  jobs: z.array(text),
  doseText: text,
  doseNeeds: z.boolean(),
  cautions: z.array(z.strictObject({ id: text, authority: authoritySchema, text })),
  forecastText: text,
  packText: text,
  at: text,
  validUntil: textOrNull,
  validUntilText: textOrNull,
  givenText: text,
  goodUntilText: textOrNull,
  canCheckRest: z.boolean(),
  change: textOrNull,
  rules: z.array(ruleView),
});

const entry = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('person'), id: text, text, undone: z.boolean() }),
  z.strictObject({ kind: z.literal('understood'), id: text, text, undo: text, undone: z.boolean() }),
  z.strictObject({ kind: z.literal('said'), id: text, text }),
  z.strictObject({ kind: z.literal('question'), id: text, text }),
  z.strictObject({ kind: z.literal('verdict'), id: text, verdict: verdictView }),
  z.strictObject({ kind: z.literal('error'), id: text, error: errorReportSchema, text }),
]);

const questionFields = {
  id: text,
  ask: text,
  why: text,
  how: text,
  now: text,
  before: textOrNull,
  picture: textOrNull,
  form: z.enum(['number', 'choice', 'signs', 'place', 'confirm']),
  choices: z.array(z.strictObject({ id: text, label: text, help: textOrNull })),
  boxes: z.array(
    z.strictObject({
      fact: text,
      label: text,
      unit: textOrNull,
      low: numberOrNull,
      high: numberOrNull,
      step: z.number(),
    }),
  ),
  hours: z.array(text),
};

const question = z.strictObject({
  ...questionFields,
  together: z.array(z.strictObject({ ...questionFields, together: z.array(z.never()) })),
});

/** All that a page or terminal shows of one conversation, as it comes over the socket. */
export const viewSchema: z.ZodType<ConversationView> = z.strictObject({
  language: text,
  field: z.strictObject({ id: text, name: text, invented: z.boolean(), note: textOrNull }).nullable(),
  packTitle: text,
  entries: z.array(entry),
  earlier: z.int().min(0),
  question: question.nullable(),
  verdict: verdictView.nullable(),
  outlook: outlookSchema.nullable(),
  said: z.array(
    z.strictObject({ fact: text, label: text, value: text, from: text, undo: textOrNull, canChange: z.boolean() }),
  ),
  fields: z.array(z.strictObject({ id: text, name: text, text })),
  terms: z.array(term),
  now: text,
  busy: z.enum(['forecast', 'rules']).nullable(),
  eventCount: z.number(),
});
