import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';

/** Root folder of the project. */
export const root = resolve(import.meta.dirname, '..', '..');

/** Paths of the project's own files (tracked, or new and not ignored), relative to the root. */
export function projectFiles(pattern: RegExp): string[] {
  const listed = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', '--deduplicate'], {
    cwd: root,
    encoding: 'utf8',
  });
  return listed.split('\n').filter((path) => path !== '' && pattern.test(path) && exists(path));
}

/** Text of a file of the project. */
export function textOf(path: string): string {
  return readFileSync(join(root, path), 'utf8');
}

/** Module names that a TypeScript file imports, types included. */
export function importsOf(path: string): string[] {
  return [...textOf(path).matchAll(/(?<!')\b(?:from|import)\s*\(?\s*'([^']+)'/g)].map((match) => match[1]!);
}

function exists(path: string): boolean {
  try {
    readFileSync(join(root, path));
    return true;
  } catch {
    return false;
  }
}
