import * as z from 'zod';
import { coreFacts } from '../../../core/facts/registry/index.ts';
import type { FactDefinition } from '../../../core/facts/types.ts';
import { type FileSchema, fileSchemas } from './file-schemas.ts';
import { keyDescriptions } from './key-descriptions.ts';

/** A JSON Schema as plain data. */
export type JsonSchema = Record<string, unknown>;

/** The JSON Schemas (draft 7, which editors know) by path below rules/schemas. */
export function schemaFiles(): ReadonlyMap<string, string> {
  return new Map(
    fileSchemas.map((file) => [
      `rules/schemas/${file.kind}.schema.json`,
      `${JSON.stringify(jsonSchemaOf(file), null, 2)}\n`,
    ]),
  );
}

/** The JSON Schema of one kind of file, with what each of its keys is for. */
export function jsonSchemaOf({ kind, title, description, schema }: FileSchema): JsonSchema {
  const made = z.toJSONSchema(schema, { target: 'draft-7', io: 'input', unrepresentable: 'any' }) as JsonSchema;
  const { $schema, properties, ...rest } = made;
  describeKeys(made, '', keyDescriptions[kind] ?? {});
  if (kind === 'cases') offerFacts(made);
  const naming = { type: 'string', description: 'Path of this schema, for editors; it decides nothing.' };
  return { $schema, title, description, ...rest, properties: { $schema: naming, ...(properties as JsonSchema) } };
}

/** Puts the description of each key into a schema, in place. */
function describeKeys(schema: JsonSchema, path: string, words: Readonly<Record<string, string>>): void {
  const step = (member: unknown, to: string): void => {
    if (typeof member !== 'object' || member === null) return;
    const text = words[to];
    if (text !== undefined) (member as JsonSchema)['description'] = text;
    describeKeys(member as JsonSchema, to, words);
  };
  for (const [key, member] of Object.entries((schema['properties'] as JsonSchema | undefined) ?? {})) {
    step(member, path === '' ? key : `${path}.${key}`);
  }
  step(schema['items'], `${path}[]`);
  step(schema['additionalProperties'], `${path}.*`);
}

/** Lets an editor offer the facts of the registry, and their choices, wherever a case gives facts. */
function offerFacts(schema: JsonSchema): void {
  const { base, cases } = schema['properties'] as { base: JsonSchema; cases: { items: JsonSchema } };
  const { facts } = cases.items['properties'] as { facts: JsonSchema };
  const entries = Object.entries(coreFacts);
  const properties = Object.fromEntries(entries.map(([id, definition]) => [id, offered(definition)]));
  for (const place of [base, facts]) place['properties'] = properties;
}

function offered({ label, unit, choices, type }: FactDefinition): JsonSchema {
  const description = unit === null ? `${label}.` : `${label}, ${unit}.`;
  return type === 'choice' && choices ? { description, anyOf: [{ enum: [...choices] }, {}] } : { description };
}
