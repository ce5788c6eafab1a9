import { join, resolve } from 'node:path';
import { findPacks, readPackFolder } from '../adapters/pack-files/read-pack-folder.ts';
import { codedError } from '../core/errors/coded-error.ts';
import { nearestName } from '../core/errors/nearest.ts';
import { type LoadedPack, loadPack } from '../core/rules/pack/load-pack.ts';
import type { Io } from './io.ts';

/** Pack that is used where none is named. */
export const firstPack = 'propyzamide-winter-oilseed-rape';

/** The folder of a pack named by its id under rules/, or by a path. Throws PACK_UNKNOWN. */
export async function packFolder(io: Io, name: string): Promise<string> {
  const found = await findPacks(join(io.root, 'rules'));
  const byId = found.find((pack) => pack.id === name);
  if (byId) return byId.folder;
  if (/[\\/.]/.test(name)) return resolve(name);
  const ids = found.map((pack) => pack.id);
  const nearest = nearestName(name, ids);
  throw codedError('PACK_UNKNOWN', {
    expected: `one of ${ids.join(', ')}, or the path of a folder`,
    came: name,
    ...(nearest ? { nearest } : {}),
  });
}

/** Reads and checks a pack by id or path. Throws PACK_UNKNOWN or the first fault of its files. */
export async function loadNamedPack(io: Io, name: string): Promise<LoadedPack> {
  return loadPack(await readPackFolder(await packFolder(io, name)));
}
