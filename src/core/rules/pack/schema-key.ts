import { isObject, type Report, show } from './findings.ts';

/** Key by which a file of a pack names its JSON Schema for editors. It decides nothing and is not in the hash. */
export const schemaKey = '$schema';

/** The content of a file without the name of its schema; one that is no text is reported. */
export function withoutSchemaKey(value: unknown, file: string, report: Report): unknown {
  if (!isObject(value) || !Object.hasOwn(value, schemaKey)) return value;
  const { [schemaKey]: named, ...content } = value;
  if (typeof named !== 'string') {
    const place = { file, path: [schemaKey] };
    report('PACK_VALUE_WRONG', place, { expected: 'the path of a JSON Schema', came: show(named) });
  }
  return content;
}
