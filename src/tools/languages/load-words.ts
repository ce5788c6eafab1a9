import { resolve } from 'node:path';
import { build } from 'esbuild';
import { pageFolder } from './lists.ts';
import type { SpokenWords } from './whole-words.ts';

/** All that a language says, from its folders as they are now. `root` is the project's folder. */
export async function loadWords(root: string, code: string): Promise<SpokenWords> {
  const { outputFiles } = await build({
    entryPoints: [`${pageFolder}/${code}/index.ts`],
    absWorkingDir: resolve(root),
    bundle: true,
    write: false,
    format: 'esm',
    logLevel: 'silent',
  });
  const text = outputFiles[0]?.text ?? '';
  return (await import(`data:text/javascript;base64,${Buffer.from(text).toString('base64')}`)).default;
}
