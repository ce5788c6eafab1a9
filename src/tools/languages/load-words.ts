import { resolve } from 'node:path';
import { build } from 'esbuild';
import { pageFolder, wordsFolder } from './lists.ts';
import type { SpokenWords } from './whole-words.ts';

/** All that a language says, from its folders as they are now. `root` is the project's folder. */
export async function loadWords(root: string, code: string): Promise<SpokenWords> {
  const { outputFiles } = await build({
    stdin: {
      contents: `export { default as page } from './${pageFolder}/${code}/index.ts'; export { default as later } from './${pageFolder}/${code}/later.ts'; export { words } from './${wordsFolder}/${code}/index.ts';`,
      resolveDir: resolve(root),
      loader: 'ts',
    },
    bundle: true,
    write: false,
    format: 'esm',
    logLevel: 'silent',
  });
  const text = outputFiles[0]?.text ?? '';
  const { page, later, words } = await import(`data:text/javascript;base64,${Buffer.from(text).toString('base64')}`);
  const { pictures, learn, card } = later;
  return { ...page, pictures, learn, card, core: words };
}
