import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/** Folder of the sentences shared by page, server and terminal. */
export const wordsFolder = 'src/core/words';
/** Folder of the sentences of the page and of the drawings. */
export const pageFolder = 'web/words';
/** Folder of the word lists by which typed words are understood. */
export const listsFolder = 'src/core/dialogue/understand';

const head = '// Written by `npm run languages` from the folders beside this file. Do not edit; run it again.\n';

/** The languages that have a folder there, by ISO 639-1 code: English first, the others by the alphabet. */
export function languagesIn(root: string, folder: string): string[] {
  const codes = readdirSync(join(root, folder), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && /^[a-z]{2}$/.test(entry.name))
    .filter(({ name }) => existsSync(join(root, folder, name, 'index.ts')))
    .map(({ name }) => name);
  return ['en', ...codes.filter((code) => code !== 'en').sort()];
}

/** Each list of languages that is written from the folders there are, by its path. `root` is the project's folder. */
export function generatedLists(root: string): ReadonlyMap<string, string> {
  return new Map([
    [
      `${wordsFolder}/languages.ts`,
      list(languagesIn(root, wordsFolder), {
        type: 'Catalogue',
        from: './catalogue.ts',
        name: 'catalogues',
        says: 'Catalogues by ISO 639-1 code, English first.',
      }),
    ],
    [
      `${listsFolder}/word-lists.ts`,
      list(languagesIn(root, listsFolder), {
        type: 'LanguageWords',
        from: './language-words.ts',
        name: 'wordLists',
        says: 'Word lists of the languages that are understood when typed, by ISO 639-1 code, English first.',
      }),
    ],
  ]);
}

/** One list: an import for each folder, and a record of them. */
function list(
  codes: readonly string[],
  { type, from, name, says }: Readonly<Record<'type' | 'from' | 'name' | 'says', string>>,
): string {
  const imports = [
    { from, text: `import type { ${type} } from '${from}';\n` },
    ...codes.map((code) => {
      const path = `./${code}/index.ts`;
      return { from: path, text: `import { words as ${code} } from '${path}';\n` };
    }),
  ].sort((a, b) => (a.from < b.from ? -1 : 1));
  const entries = codes.map((code) => `  ${code},\n`).join('');
  return `${head}${imports.map(({ text }) => text).join('')}
/** ${says} */
export const ${name}: Readonly<Record<string, ${type}>> = {
${entries}};
`;
}
