import type * as z from 'zod';
import { inside, type Path, type Place, type Report, show } from './findings.ts';

/** Parses a value by a schema; each issue becomes a finding of ours and the result is then null. */
export function parseBySchema<Schema extends z.ZodType>(
  schema: Schema,
  value: unknown,
  place: Place,
  report: Report,
): z.output<Schema> | null {
  const parsed = schema.safeParse(value);
  if (parsed.success) return parsed.data;
  for (const issue of parsed.error.issues) reportIssue(issue, value, place, report);
  return null;
}

function reportIssue(issue: z.core.$ZodIssue, root: unknown, place: Place, report: Report): void {
  const path = issue.path as Path;
  const came = valueAt(root, path);
  const at = inside(place, ...path);
  switch (issue.code) {
    case 'unrecognized_keys': {
      const right = issue.message.split(' ');
      for (const key of issue.keys) {
        report('PACK_KEY_UNKNOWN', inside(at, key), {
          expected: `one of ${right.join(', ')}`,
          came: show(key),
          among: right,
        });
      }
      return;
    }
    case 'invalid_type':
      if (came === undefined) {
        report('PACK_KEY_MISSING', at, { expected: kindOf(path, jsonType(issue.expected)), came: 'nothing' });
      } else report('PACK_VALUE_WRONG', at, { expected: expectedFor(issue.expected, came), came: show(came) });
      return;
    case 'invalid_value': {
      const right = issue.values.map(String);
      const code = came === undefined ? 'PACK_KEY_MISSING' : 'PACK_VALUE_WRONG';
      const expected = `${came === undefined ? `${path.at(-1)}, ` : ''}one of ${right.join(', ')}`;
      report(code, at, { expected, came: show(came), among: came === undefined ? [] : right });
      return;
    }
    default: {
      const code = came === undefined ? 'PACK_KEY_MISSING' : 'PACK_VALUE_WRONG';
      report(code, at, { expected: issue.message, came: show(came) });
    }
  }
}

function expectedFor(type: string, came: unknown): string {
  if (type === 'record' && typeof came === 'string') return 'a text in each language, as { "en": "..." }';
  return `a value of type ${jsonType(type)}`;
}

function kindOf(path: Path, type: string): string {
  const key = String(path.at(-1));
  return type === 'nonoptional' ? key : `${key} (${type})`;
}

const jsonTypes: Readonly<Record<string, string>> = { record: 'object' };

/** The JSON type of what a schema expects: a record of any names is an object. */
function jsonType(type: string): string {
  return jsonTypes[type] ?? type;
}

/** The value at the end of a path; the path of an issue leads through what is there, its last step alone may lead to nothing. */
function valueAt(root: unknown, path: Path): unknown {
  let value = root;
  for (const step of path) value = (value as Readonly<Record<string | number, unknown>>)[step];
  return value;
}
