import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { codedError } from '../core/errors/coded-error.ts';

/** What the built page is made from. */
const sources = ['web', 'src/core', 'src/adapters/conversation', 'src/demo', 'vite.config.ts', 'package-lock.json'];

/** Builds the page into dist/web where it is missing or older than its sources. Resolves to true where it was built. */
export async function buildPage(root: string, always = false): Promise<boolean> {
  const stampFile = join(root, 'dist', 'page-sources.txt');
  const stamp = await stampOf(root);
  const built = await readFile(stampFile, 'utf8').catch(() => '');
  const present = await stat(join(root, 'dist', 'web', 'index.html')).then(
    () => true,
    () => false,
  );
  if (!always && present && built === stamp) return false;
  try {
    const vite = await import('vite');
    await vite.build({ configFile: join(root, 'vite.config.ts'), logLevel: 'warn' });
  } catch (error) {
    throw codedError('BUILD_FAILED', { expected: 'a page in dist/web', came: String(error) });
  }
  await mkdir(dirname(stampFile), { recursive: true });
  await writeFile(stampFile, stamp);
  return true;
}

/** One hash over path, size and time of change of every source file. */
async function stampOf(root: string): Promise<string> {
  const hash = createHash('sha256');
  for (const source of sources) {
    for (const file of await filesUnder(join(root, source))) {
      const { mtimeMs, size } = await stat(file);
      hash.update(`${file}:${mtimeMs}:${size}\n`);
    }
  }
  return hash.digest('hex');
}

async function filesUnder(path: string): Promise<string[]> {
  if (!(await stat(path)).isDirectory()) return [path];
  const entries = await readdir(path, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}
