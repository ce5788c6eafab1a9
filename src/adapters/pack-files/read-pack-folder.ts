import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { codedError } from '../../core/errors/coded-error.ts';
import type { PackFiles } from '../../core/rules/pack/load-pack.ts';
import { fromOneFile } from '../../core/rules/pack/one-file.ts';
import { reasonOf } from '../system-reason.ts';

/**
 * The text of every file of a pack's folder, by its path relative to the folder with `/`; hidden files are left out. A pack that is
 * one file gives those that are in it. Throws RULES_FILE_UNREADABLE with the file's relative path, and as `fromOneFile`.
 */
export async function readPackFolder(folder: string): Promise<PackFiles> {
  const isOneFile = await stat(folder).then(
    (found) => found.isFile(),
    () => false,
  );
  if (isOneFile) return fromOneFile(await readText(dirname(folder), basename(folder)), basename(folder));
  const files = new Map<string, string>();
  for (const file of (await listFiles(folder, '')).sort()) files.set(file, await readText(folder, file));
  return files;
}

/** A pack that lies in a folder of packs. */
export interface FoundPack {
  /** Name of the folder, which is the pack's id. */
  readonly id: string;
  readonly folder: string;
}

/** The packs of a folder of packs, in id order: its subfolders that hold a pack.json. None where the folder is absent. */
export async function findPacks(rootFolder: string): Promise<readonly FoundPack[]> {
  const entries = await readdir(rootFolder, { withFileTypes: true }).catch(() => []);
  const found: FoundPack[] = [];
  for (const entry of entries) {
    const folder = join(rootFolder, entry.name);
    if (!entry.isDirectory()) continue;
    const files: string[] = await readdir(folder).catch(() => []);
    if (files.includes('pack.json')) found.push({ id: entry.name, folder });
  }
  return found.sort((a, b) => (a.id < b.id ? -1 : 1));
}

async function listFiles(folder: string, within: string): Promise<string[]> {
  const entries = await readdir(join(folder, within), { withFileTypes: true }).catch((error: unknown) => {
    throw unreadable(within === '' ? basename(folder) : within, error);
  });
  const nested = entries
    .filter(({ name }) => !name.startsWith('.'))
    .map(async (entry) => {
      const path = within === '' ? entry.name : `${within}/${entry.name}`;
      return entry.isDirectory() ? listFiles(folder, path) : [path];
    });
  return (await Promise.all(nested)).flat();
}

async function readText(folder: string, file: string): Promise<string> {
  const bytes = await readFile(join(folder, file)).catch((error: unknown) => {
    throw unreadable(file, error);
  });
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (error) {
    throw unreadable(file, error);
  }
}

function unreadable(file: string, error: unknown) {
  const came = reasonOf(error);
  return codedError('RULES_FILE_UNREADABLE', { file, expected: 'a file in UTF-8 that may be read', came });
}
