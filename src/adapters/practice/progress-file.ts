import { appendFile, readFile, writeFile } from 'node:fs/promises';
import { codedError } from '../../core/errors/coded-error.ts';
import { parseReview } from '../../core/practice/files.ts';
import type { Review } from '../../core/practice/schedule.ts';
import { reasonOf } from '../system-reason.ts';

/** Answers kept in a file of JSON lines, to which rows are only added. */
export interface ProgressFile {
  readonly read: () => Promise<readonly Review[]>;
  readonly add: (review: Review) => Promise<void>;
}

/** The file at a path; none there yet is none answered yet. Throws FILE_UNREADABLE, FILE_NOT_JSON or PRACTICE_FILE_MISFIT. */
export function progressFile(path: string): ProgressFile {
  return {
    read: async () =>
      (await textOf(path))
        .split('\n')
        .filter((line) => line.trim() !== '')
        .map((line) => reviewIn(line, path)),
    add: async (review) => {
      const text = await textOf(path);
      const gap = text === '' || text.endsWith('\n') ? '' : '\n';
      await appendFile(path, `${gap}${JSON.stringify(review)}\n`).catch((error: unknown) =>
        Promise.reject(unusable(path, error)),
      );
    },
  };
}

/** Writes a text into a file, over what is there. Throws FILE_UNREADABLE where that is not possible. */
export async function writeText(path: string, text: string): Promise<void> {
  await writeFile(path, text).catch((error: unknown) => Promise.reject(unusable(path, error)));
}

async function textOf(path: string): Promise<string> {
  return readFile(path, 'utf8').catch((error: NodeJS.ErrnoException) =>
    error.code === 'ENOENT' ? '' : Promise.reject(unusable(path, error)),
  );
}

function reviewIn(line: string, file: string): Review {
  let json: unknown;
  try {
    json = JSON.parse(line);
  } catch (error) {
    throw codedError('FILE_NOT_JSON', {
      file,
      expected: 'one JSON value',
      came: error instanceof Error ? error.message : '',
    });
  }
  return parseReview(json, file);
}

function unusable(file: string, error: unknown) {
  return codedError('FILE_UNREADABLE', { file, expected: 'a file that can be read', came: reasonOf(error) });
}
