import { randomUUID } from 'node:crypto';
import { readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { codedError } from '../../core/errors/coded-error.ts';
import { reasonOf } from '../system-reason.ts';

/** The text of a file of a folder; null where there is none of that name. */
export async function readIfThere(folder: string, name: string): Promise<string | null> {
  return readFile(join(folder, name), 'utf8').catch(() => null);
}

/**
 * Writes a file of a folder whole or not at all: whoever reads meanwhile sees the old one or the new one.
 * Throws OVERLAY_NOT_WRITTEN.
 */
export async function writeWhole(folder: string, name: string, text: string): Promise<void> {
  const unfinished = join(folder, `.${name}.${randomUUID()}`);
  try {
    await writeFile(unfinished, text, { flag: 'wx' });
    await rename(unfinished, join(folder, name));
  } catch (error) {
    await rm(unfinished, { force: true });
    const came = reasonOf(error);
    throw codedError('OVERLAY_NOT_WRITTEN', { file: name, expected: 'a folder that may be written to', came });
  }
}
