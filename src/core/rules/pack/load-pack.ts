import { LoamwardError } from '../../errors/coded-error.ts';
import type { Pack, PackCase } from '../pack-types.ts';
import { plainDayIn } from '../plain-day.ts';
import { buildPack } from './build-pack.ts';
import { readKinds } from './file-kinds.ts';
import { collectFindings, type Finding } from './findings.ts';
import { hashPackFiles } from './hash-pack.ts';
import { parseJsonFile } from './parse-json.ts';
import { withoutSchemaKey } from './schema-key.ts';

/** A pack that may be used, its cases, and findings that do not keep it from loading. */
export interface LoadedPack {
  readonly ok: true;
  readonly pack: Pack;
  readonly cases: readonly PackCase[];
  readonly findings: readonly Finding[];
}

/** A pack that does not load, and why: at least one finding is an error. */
export interface RefusedPack {
  readonly ok: false;
  readonly findings: readonly Finding[];
}

/** Text of each file of a pack's folder, by its path relative to the folder, with `/`. */
export type PackFiles = ReadonlyMap<string, string>;

/** Reads and checks a whole pack; a bad file never loads. Findings come in file order, then as found. */
export function checkPack(files: PackFiles): LoadedPack | RefusedPack {
  const { findings, report } = collectFindings();
  const kinds = readKinds([...files.keys()].sort(), report);
  const parsed = new Map<string, unknown>();
  for (const file of kinds.json) {
    const value = parseJsonFile(file, files.get(file) ?? '', report);
    if (value !== undefined) parsed.set(file, withoutSchemaKey(value, file, report));
  }
  const built = buildPack(kinds, parsed, report);
  if (!built || findings.some(({ severity }) => severity === 'error')) return { ok: false, findings };
  const counting = new Map([...parsed].filter(([file]) => !kinds.cases.includes(file)));
  const pack = { ...built.pack, hash: hashPackFiles(counting), ...plainDayIn(built.cases) };
  return { ok: true, pack, cases: built.cases, findings };
}

/** Loads a pack or throws the first error found, as a coded error. */
export function loadPack(files: PackFiles): LoadedPack {
  const checked = checkPack(files);
  if (checked.ok) return checked;
  const first = checked.findings.find(({ severity }) => severity === 'error') ?? checked.findings[0];
  const { code = 'PACK_FILE_MISSING', severity: _severity, ...details } = first ?? {};
  throw new LoamwardError(code, { expected: 'a pack', came: 'nothing', ...details });
}
