import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { codedError, LoamwardError } from '../../core/errors/coded-error.ts';
import { type Overlay, parseOverlay } from '../../core/rules/overlay/parse-overlay.ts';
import type { Finding } from '../../core/rules/pack/findings.ts';
import { reasonOf } from '../system-reason.ts';

/** The files of overlays with what they hold; those that could not be parsed are in the findings alone. */
export interface ReadOverlays {
  /** Text by path, as it was named. */
  readonly files: ReadonlyMap<string, string>;
  readonly overlays: readonly Overlay[];
  readonly findings: readonly Finding[];
}

/** Reads overlays named by their files, or by folders of such files (*.json, not those below). Throws RULES_FILE_UNREADABLE. */
export async function readOverlays(paths: readonly string[]): Promise<ReadOverlays> {
  const files = new Map<string, string>();
  for (const path of paths) {
    for (const file of await filesOf(path))
      files.set(file, await readFile(file, 'utf8').catch((error) => fail(file, error)));
  }
  const parsed = [...files].map(([file, text]) => parseOverlay(file, text));
  const overlays = parsed.flatMap(({ overlay }) => (overlay === null ? [] : [overlay]));
  return { files, overlays, findings: parsed.flatMap((one) => one.findings) };
}

/** The overlays where all could be parsed. Throws the first fault. */
export function requireOverlays(read: ReadOverlays): ReadOverlays {
  if (read.findings.some(({ severity }) => severity === 'error')) throw firstFault(read.findings);
  return read;
}

/** The first error among findings, to be thrown. */
export function firstFault(findings: readonly Finding[]): LoamwardError {
  const {
    code = 'RULES_NOT_JSON',
    severity: _severity,
    ...details
  } = findings.find(({ severity }) => severity === 'error') ?? findings[0] ?? {};
  return new LoamwardError(code, { expected: 'an overlay', came: 'nothing', ...details });
}

async function filesOf(path: string): Promise<readonly string[]> {
  const found = await stat(path).catch((error) => fail(path, error));
  if (!found.isDirectory()) return [path];
  const names = await readdir(path).catch((error) => fail(path, error));
  return names
    .filter((name) => name.endsWith('.json') && !name.startsWith('.'))
    .sort()
    .map((name) => join(path, name));
}

function fail(path: string, error: unknown): never {
  throw codedError('RULES_FILE_UNREADABLE', {
    file: basename(path),
    expected: 'a file in UTF-8 that may be read',
    came: reasonOf(error),
  });
}
