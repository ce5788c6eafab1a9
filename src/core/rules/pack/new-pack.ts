import type { PackFiles } from './load-pack.ts';

/** What a new pack is begun with. */
export interface NewPack {
  readonly id: string;
  readonly title: string;
  /** Common name of the active, in lower case with hyphens. */
  readonly active: string;
  readonly crop: string;
  /** Languages of its texts, two-letter codes. */
  readonly languages: readonly string[];
  /** Where the schemas lie as seen from the pack's folder; null where no file names its schema. */
  readonly schemas: string | null;
}

/** The files of a new pack, made from those of the example: names put in, its languages alone, each file with its schema. */
export function newPackFiles(starter: PackFiles, pack: NewPack): PackFiles {
  const known = languagesOf(starter);
  return new Map([...starter].map(([file, text]) => [file, file.endsWith('.json') ? made(file, text) : text]));

  function made(file: string, text: string): string {
    const content = withNames(inLanguages(JSON.parse(text), known, pack.languages), pack);
    const schema = pack.schemas === null ? {} : { $schema: schemaOf(file, pack.schemas) };
    const own = file === 'pack.json' ? { languages: pack.languages } : {};
    return written({ ...schema, ...(content as object), ...own });
  }
}

/** Languages in which the example has its texts. */
export function languagesOf(starter: PackFiles): readonly string[] {
  return (JSON.parse(starter.get('pack.json') ?? '{}') as { languages?: string[] }).languages ?? [];
}

/** A value with only some of the languages wherever an object has a text in each. */
function inLanguages(value: unknown, known: readonly string[], wanted: readonly string[]): unknown {
  if (Array.isArray(value)) return value.map((one) => inLanguages(one, known, wanted));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value);
  const isText = entries.length > 0 && entries.every(([key]) => known.includes(key));
  return Object.fromEntries(
    entries
      .filter(([key]) => !isText || wanted.includes(key))
      .map(([key, one]) => [key, inLanguages(one, known, wanted)]),
  );
}

/** A value with the names of the new pack in the place of `{id}`, `{title}`, `{active}` and `{crop}`. */
function withNames(value: unknown, names: NewPack): unknown {
  if (typeof value === 'string') return value.replace(/\{(id|title|active|crop)\}/g, (_, key: 'id') => names[key]);
  if (Array.isArray(value)) return value.map((one) => withNames(one, names));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, withNames(one, names)]));
}

function schemaOf(file: string, schemas: string): string {
  const [within, kind] = file.startsWith('cases/') ? ['../', 'cases'] : ['', file.split('.').at(-2)];
  return `${within}${schemas}/${kind}.schema.json`;
}

/** As JSON with two spaces, lists of plain values in one line. */
function written(value: unknown): string {
  const text = JSON.stringify(value, null, 2);
  return `${text.replace(/\[\s+([^[\]{}]*?)\s+\]/g, (_, inner: string) => `[${inner.replace(/\n\s+/g, ' ')}]`)}\n`;
}
