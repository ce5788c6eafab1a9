import { codedError } from '../core/errors/coded-error.ts';
import type { Io } from './io.ts';

/** Text of a file named on the command line; `-` is standard input. Throws FILE_UNREADABLE. */
export async function readNamedFile(io: Io, path: string): Promise<string> {
  try {
    return await io.readText(path);
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    throw codedError('FILE_UNREADABLE', { file: path, expected: 'a file that can be read', came: reason });
  }
}

/** JSON of a file named on the command line. Throws FILE_UNREADABLE or FILE_NOT_JSON. */
export async function readJsonFile(io: Io, path: string): Promise<unknown> {
  const text = await readNamedFile(io, path);
  try {
    return JSON.parse(text);
  } catch (error) {
    const came = error instanceof Error ? error.message : String(error);
    throw codedError('FILE_NOT_JSON', { file: path, expected: 'one JSON value', came });
  }
}
