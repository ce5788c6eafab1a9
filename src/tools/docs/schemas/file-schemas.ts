import * as z from 'zod';
import { overlaySchema } from '../../../core/rules/overlay/schema.ts';
import { factsSchema } from '../../../core/rules/pack/facts-schema.ts';
import {
  casesSchema,
  cautionsSchema,
  glossarySchema,
  packSchema,
  parametersSchema,
  questionsSchema,
  readingSchemas,
  rulesSchema,
} from '../../../core/rules/pack/schema.ts';
import { conditionSchema } from './condition-schema.ts';

/** One kind of file that a JSON Schema is written for. */
export interface FileSchema {
  /** Name of the schema's file, without its ending. */
  readonly kind: string;
  readonly title: string;
  readonly description: string;
  readonly schema: z.ZodType;
}

const parameterValue = z.union([z.number(), z.string(), z.array(z.string()).min(1)]);
const parameters = z.strictObject({
  parameters: z.array(parametersSchema.shape.parameters.element.safeExtend({ value: parameterValue })),
});

const rules = rulesSchema.safeExtend({
  rules: z.array(rulesSchema.shape.rules.element.safeExtend({ when: conditionSchema })),
});

const reading = z
  .discriminatedUnion('type', [
    readingSchemas.number,
    readingSchemas.choice,
    readingSchemas.signs,
    readingSchemas.date,
    readingSchemas['does-not-know'],
  ])
  .meta({
    id: 'reading',
    description: 'What the answer says of the fact; its type is that of the fact, or does-not-know.',
  });
const question = questionsSchema.shape.questions.element;
const answer = question.shape.choices.unwrap().element;
const questions = questionsSchema.safeExtend({
  questions: z.array(
    question.safeExtend({
      choices: z
        .array(answer.safeExtend({ gives: z.record(z.string(), reading) }))
        .min(1)
        .optional(),
    }),
  ),
});

const overlay = overlaySchema.safeExtend({
  parameters: z.array(overlaySchema.shape.parameters.unwrap().element.safeExtend({ value: parameterValue })).optional(),
  rules: z.array(overlaySchema.shape.rules.unwrap().element.safeExtend({ when: conditionSchema })).optional(),
  questions: questions.shape.questions.optional(),
});

/** Every kind of file that an editor can complete and explain, by zod schema; conditions and readings are spelt out. */
export const fileSchemas: readonly FileSchema[] = [
  {
    kind: 'pack',
    title: 'A treatment pack',
    description: 'pack.json: what the pack is for, where it holds and in which languages it speaks.',
    schema: packSchema,
  },
  {
    kind: 'parameters',
    title: 'Parameters of a pack',
    description: 'parameters.json: every number, day of the year and list, with unit, source and reason.',
    schema: parameters,
  },
  {
    kind: 'facts',
    title: 'Facts of the pack itself',
    description: 'facts.json: facts that are not built in, asked or taken from the forecast; may be left out.',
    schema: factsSchema,
  },
  {
    kind: 'rules',
    title: 'Rules of one topic',
    description: '*.rules.json: rules of one topic, each with its condition and its sentences.',
    schema: rules,
  },
  {
    kind: 'questions',
    title: 'Questions of a pack',
    description: 'questions.json: what is asked, how to find out, and the answers offered.',
    schema: questions,
  },
  {
    kind: 'cautions',
    title: 'Cautions of a pack',
    description: 'cautions.json: what is shown with every "spray today" and always at hand.',
    schema: cautionsSchema,
  },
  {
    kind: 'glossary',
    title: 'Glossary of a pack',
    description: 'glossary.json: the trade terms explained, each with its source.',
    schema: glossarySchema,
  },
  {
    kind: 'cases',
    title: 'Cases of a pack',
    description: 'cases/*.json: fields on a day with the answer that is expected.',
    schema: casesSchema,
  },
  {
    kind: 'overlay',
    title: 'Local rules',
    description: 'overlays/*.json: local changes to a pack, by whom, why and for which place.',
    schema: overlay,
  },
];
