import { cp, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { listsFolder, pageFolder, wordsFolder } from './lists.ts';
import { englishErrors, englishFacts } from './whole-words.ts';

/** Codes of errors in one file, so that none grows beyond what a file may be long. */
const errorsPerFile = 40;

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
  await editEach(words, (text, name) => (name === 'index.ts' ? ownIndex(text, code) : text));
  for (const [name, text] of ownFiles()) await writeFile(join(words, name), text);
  return folders.map((folder) => `${folder}/${code}`);
}

/** The index with the code of the language, and with words of its own for errors and facts. */
function ownIndex(text: string, code: string): string {
  return text
    .replace(/import type \{ (?:ErrorWordsOf|FactLabels) \}[^\n]*\n/g, '')
    .replace(/\n\/\*\* The English catalogue[^\n]*/, `\n/** The catalogue of ${code}. */`)
    .replace(/ *\/\*\* The (?:table|registry) itself is English\. \*\/\n/g, '')
    .replace("language: 'en'", `language: '${code}'`)
    .replace(/errors: [^\n]*/, 'errors: errorWords,')
    .replace(/facts: [^\n]*/, 'facts: factLabels,')
    .replace(/^/, "import { errorWords } from './errors.ts';\nimport { factLabels } from './facts.ts';\n");
}

/** Files that English has no need of: errors in parts, and facts. */
function ownFiles(): ReadonlyMap<string, string> {
  const errors = Object.entries(englishErrors());
  const parts = Array.from({ length: Math.ceil(errors.length / errorsPerFile) }, (_, index) => ({
    name: `errors-${index + 1}`,
    variable: `errors${index + 1}`,
    entries: errors.slice(index * errorsPerFile, (index + 1) * errorsPerFile),
  }));
  const type = "import type { ErrorWordsOf } from '../errors.ts';\n";
  const says = '/** What codes of the error table say and advise. */\n';
  return new Map([
    ...parts.map(({ name, variable, entries }): [string, string] => [
      `${name}.ts`,
      `${type}\n${says}export const ${variable}: ErrorWordsOf = ${JSON.stringify(Object.fromEntries(entries))};\n`,
    ]),
    [
      'errors.ts',
      `${type}${parts.map(({ name, variable }) => `import { ${variable} } from './${name}.ts';\n`).join('')}
${says}export const errorWords: ErrorWordsOf = { ${parts.map(({ variable }) => `...${variable}`).join(', ')} };\n`,
    ],
    [
      'facts.ts',
      `import type { FactLabels } from '../facts.ts';

/** What each fact is called. */
export const factLabels: FactLabels = ${JSON.stringify(englishFacts())};\n`,
    ],
  ]);
}

async function editEach(folder: string, edit: (text: string, name: string) => string): Promise<void> {
  for (const name of await readdir(folder)) {
    const path = join(folder, name);
    await writeFile(path, edit(await readFile(path, 'utf8'), name));
  }
}
