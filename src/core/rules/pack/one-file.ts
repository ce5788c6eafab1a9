import { codedError } from '../../errors/coded-error.ts';
import { isObject, show } from './findings.ts';
import { hashPackFiles } from './hash-pack.ts';
import { loadPack, type PackFiles } from './load-pack.ts';
import { parseJsonFile } from './parse-json.ts';
import { schemaKey, withoutSchemaKey } from './schema-key.ts';

/** What `format` says in a pack that is one file. */
const oneFileFormat = 'loamward-pack';

/** A pack as one file, and its content hash, which is that of the folder. */
export interface OneFile {
  readonly text: string;
  readonly id: string;
  readonly version: string;
  readonly hash: string;
}

/** Puts a sound pack into one file: its JSON files with their hashes; no overlays and no change log. Throws the first fault of the pack. */
export function toOneFile(files: PackFiles): OneFile {
  const { pack } = loadPack(files);
  const names = [...files.keys()].filter((name) => name.endsWith('.json') && !name.startsWith('overlays/')).sort();
  const parsed = new Map(
    names.map((name) => [name, contentOf(name, JSON.parse((files.get(name) ?? '').replace(/^\uFEFF/, '')))]),
  );
  const { id, version, hash } = pack;
  const one = { format: oneFileFormat, hash, casesHash: hashesOf(parsed).casesHash, files: Object.fromEntries(parsed) };
  return { text: `${JSON.stringify(one, null, 2)}\n`, id, version, hash };
}

/**
 * The files of a pack that came as one file, as a folder would hold them. Throws RULES_NOT_JSON, PACK_ONE_FILE_WRONG, and
 * PACK_HASH_MISFIT where any of them was changed after the hashes were made.
 */
export function fromOneFile(text: string, file: string): PackFiles {
  let fault: Parameters<Parameters<typeof parseJsonFile>[2]> | null = null;
  const value = parseJsonFile(file, text, (...found) => {
    fault ??= found;
  });
  if (fault !== null) {
    const [code, , details] = fault as Parameters<Parameters<typeof parseJsonFile>[2]>;
    throw codedError(code, { file, expected: details.expected, came: details.came });
  }
  const { hash, casesHash, files } = headOf(value, file);
  const parsed = new Map(Object.entries(files).map(([name, content]) => [name, contentOf(name, content)]));
  const found = hashesOf(parsed);
  if (found.hash !== hash)
    throw codedError('PACK_HASH_MISFIT', { file, pointer: '/hash', expected: hash, came: found.hash });
  if (found.casesHash !== casesHash) {
    throw codedError('PACK_HASH_MISFIT', { file, pointer: '/casesHash', expected: casesHash, came: found.casesHash });
  }
  return new Map([...parsed].map(([name, content]) => [name, JSON.stringify(content, null, 2)]));
}

function contentOf(file: string, value: unknown): unknown {
  return withoutSchemaKey(value, file, () => {});
}

function hashesOf(parsed: ReadonlyMap<string, unknown>): { readonly hash: string; readonly casesHash: string } {
  const isCase = (name: string) => name.startsWith('cases/');
  return {
    hash: hashPackFiles(new Map([...parsed].filter(([name]) => !isCase(name)))),
    casesHash: hashPackFiles(new Map([...parsed].filter(([name]) => isCase(name)))),
  };
}

interface Head {
  readonly hash: string;
  readonly casesHash: string;
  readonly files: Readonly<Record<string, unknown>>;
}

function headOf(value: unknown, file: string): Head {
  const expected = 'the format of a pack in one file, with hash, casesHash and files';
  if (!isObject(value) || value['format'] !== oneFileFormat) {
    throw codedError('PACK_ONE_FILE_WRONG', {
      file,
      expected,
      came: isObject(value) ? show(value['format']) : show(value),
    });
  }
  const { [schemaKey]: _named, format: _format, hash, casesHash, files, ...others } = value;
  if (typeof hash !== 'string' || typeof casesHash !== 'string' || !isObject(files) || Object.keys(others).length > 0) {
    throw codedError('PACK_ONE_FILE_WRONG', { file, expected, came: Object.keys(value).join(', ') });
  }
  return { hash, casesHash, files };
}
