import { reasonOf } from '../adapters/system-reason.ts';
import { codedError } from '../core/errors/coded-error.ts';
import { keyAs, pointerStep } from '../core/facts/parse/given.ts';
import { repeatedKeys } from '../core/rules/pack/parse-json.ts';
import type { Io } from './io.ts';

/** Text of a file named on the command line; `-` is standard input. Throws FILE_UNREADABLE. */
export async function readNamedFile(io: Io, path: string): Promise<string> {
  try {
    return await io.readText(path);
  } catch (error) {
    const came = reasonOf(error);
    throw codedError('FILE_UNREADABLE', { file: nameOf(path), expected: 'a file that can be read', came });
  }
}

/**
 * JSON of a file named on the command line; a byte order mark before it is passed over. Throws FILE_UNREADABLE, FILE_NOT_JSON,
 * or FILE_KEY_REPEATED where a key stands twice: which of two values holds is not guessed.
 */
export async function readJsonFile(io: Io, path: string): Promise<unknown> {
  const text = (await readNamedFile(io, path)).replace(/^\uFEFF/, '');
  const value = parsed(path, text);
  const [repeated] = repeatedKeys(text);
  if (repeated === undefined) return value;
  throw codedError('FILE_KEY_REPEATED', {
    file: nameOf(path),
    pointer: repeated.map((step) => pointerStep(keyAs(String(step)))).join(''),
    expected: 'each key once',
    came: `"${keyAs(String(repeated.at(-1)))}" twice`,
  });
}

function parsed(path: string, text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (error) {
    const came = error instanceof Error ? error.message : String(error);
    throw codedError('FILE_NOT_JSON', { file: nameOf(path), expected: 'one JSON value', came });
  }
}

function nameOf(path: string): string {
  return path === '-' ? 'standard input' : path;
}
