import { cp, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { listsFolder, pageFolder, wordsFolder } from './lists.ts';
import { englishErrors, englishFacts, englishPhrases } from './whole-words.ts';

/** Entries of a table in one file, so that none grows beyond what a file may be long. */
const entriesPerFile = 40;

/**
 * Copies the English words to the folders of a new language, with its code set, and adds what English has elsewhere: the errors and
 * the names of facts. `listens` also copies the word lists of what is typed. `root` is the project's folder. Returns the folders.
 */
export async function copyEnglish(root: string, code: string, listens: boolean): Promise<readonly string[]> {
  const folders = [wordsFolder, pageFolder, ...(listens ? [listsFolder] : [])];
  for (const folder of folders) {
    await cp(join(root, folder, 'en'), join(root, folder, code), { recursive: true, errorOnExist: true, force: false });
    await editEach(join(root, folder, code), (text) => text.replaceAll('/words/en/', `/words/${code}/`));
  }
  const words = join(root, wordsFolder, code);
  await editEach(words, (text, name) => (name === 'index.ts' || name === 'page.ts' ? ownIndex(text, code) : text));
  for (const [name, text] of ownFiles()) await writeFile(join(words, name), text);
  return folders.map((folder) => `${folder}/${code}`);
}

/** Tables that English has elsewhere, or has no need of, each with the file, the type and the sentences of a copy. */
const tables = [
  { key: 'errors', name: 'errorWords', type: 'ErrorWordsOf', from: '../errors.ts', english: englishErrors },
  {
    key: 'errorPhrases',
    name: 'errorPhrases',
    type: 'PhraseTable',
    from: '../phrase-table.ts',
    english: () => englishPhrases('errorPhrases'),
  },
  {
    key: 'help',
    name: 'helpWords',
    type: 'PhraseTable',
    from: '../phrase-table.ts',
    english: () => englishPhrases('help'),
  },
  {
    key: 'notes',
    name: 'notes',
    type: 'PhraseTable',
    from: '../phrase-table.ts',
    english: () => englishPhrases('notes'),
  },
  { key: 'facts', name: 'factLabels', type: 'FactLabels', from: '../facts.ts', english: englishFacts },
] as const;

/** The index with the code of the language, and with words of its own where English has none. */
function ownIndex(text: string, code: string): string {
  const own = tables.filter(({ key }) => new RegExp(`^ *${key}: `, 'm').test(text));
  const imports = own.map(({ key, name }) => `import { ${name} } from './${fileOf(key)}.ts';\n`).join('');
  const edited = own.reduce(
    (now, { key, name, type }) =>
      now
        .replace(new RegExp(`import type \\{ ${type} \\}[^\n]*\n`), '')
        .replace(new RegExp(`(?: *\\/\\*\\*[^\n]*\\*\\/\n)? *${key}: [^\n]*`), `  ${key}: ${name},`),
    text,
  );
  return `${imports}${edited}`
    .replace(/^(\/\*\* The (?:part of the )?)English catalogue/m, `$1catalogue of ${code}`)
    .replace("language: 'en'", `language: '${code}'`);
}

const fileOf = (key: string) => key.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

/** The files of the tables: one that brings its parts together, and the parts. */
function ownFiles(): ReadonlyMap<string, string> {
  return new Map(
    tables.flatMap(({ key, name, type, from, english }) => {
      const entries = Object.entries(english());
      const parts = Array.from({ length: Math.ceil(entries.length / entriesPerFile) }, (_, index) => ({
        file: `${fileOf(key)}-${index + 1}.ts`,
        name: `${name}${index + 1}`,
        entries: entries.slice(index * entriesPerFile, (index + 1) * entriesPerFile),
      }));
      const head = `import type { ${type} } from '${from}';\n`;
      return [
        ...parts.map((part): [string, string] => [
          part.file,
          `${head}\n/** A part of the table beside it. */\nexport const ${part.name}: ${type} = ${JSON.stringify(Object.fromEntries(part.entries))};\n`,
        ]),
        [
          `${fileOf(key)}.ts`,
          `${head}${parts.map((part) => `import { ${part.name} } from './${part.file}';\n`).join('')}
/** Put together from its parts. */
export const ${name}: ${type} = { ${parts.map((part) => `...${part.name}`).join(', ')} };\n`,
        ] as [string, string],
      ];
    }),
  );
}

async function editEach(folder: string, edit: (text: string, name: string) => string): Promise<void> {
  for (const name of await readdir(folder)) {
    const path = join(folder, name);
    await writeFile(path, edit(await readFile(path, 'utf8'), name));
  }
}
