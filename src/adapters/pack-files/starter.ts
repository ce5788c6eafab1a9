import { mkdir, readdir, writeFile } from 'node:fs/promises';
import { dirname, join, relative, sep } from 'node:path';
import { codedError } from '../../core/errors/coded-error.ts';
import type { PackFiles } from '../../core/rules/pack/load-pack.ts';
import { reasonOf } from '../system-reason.ts';
import { readPackFolder } from './read-pack-folder.ts';

/** The files of the example that a new pack begins from, in `src/core/rules/starter/` of the project's folder. */
export function readStarter(root: string): Promise<PackFiles> {
  return readPackFolder(join(root, 'src', 'core', 'rules', 'starter'));
}

/** Where the schemas lie as seen from a folder for a pack: null outside the folder of the rules. */
export function schemasFrom(folder: string, rulesFolder: string): string | null {
  const way = relative(folder, join(rulesFolder, 'schemas')).split(sep).join('/');
  const within = relative(rulesFolder, folder);
  return within === '' || within.startsWith('..') || within.includes(':') ? null : way;
}

/**
 * Writes the files of a new pack into a folder, which is made where it is not there; no file is written over another. Throws
 * PACK_FOLDER_TAKEN where the folder holds anything, PACK_NOT_WRITTEN.
 */
export async function writeNewPack(folder: string, files: PackFiles): Promise<void> {
  const failed = (file: string) => (error: unknown) => {
    throw codedError('PACK_NOT_WRITTEN', {
      file,
      expected: 'a folder that may be written to',
      came: reasonOf(error),
    });
  };
  const there = await readdir(folder).catch((error: NodeJS.ErrnoException) =>
    error.code === 'ENOENT' ? [] : failed(folder)(error),
  );
  if (there.length > 0) {
    throw codedError('PACK_FOLDER_TAKEN', {
      file: folder,
      expected: 'a folder that is empty, or not there yet',
      came: `a folder with ${there.length} files`,
    });
  }
  for (const [file, text] of files) {
    const path = join(folder, file);
    await mkdir(dirname(path), { recursive: true }).catch(failed(path));
    await writeFile(path, text, { flag: 'wx' }).catch(failed(path));
  }
}
