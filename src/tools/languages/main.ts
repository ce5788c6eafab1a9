import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { copyEnglish } from './copy-english.ts';
import { generatedLists, languagesIn, pageFolder, wordsFolder } from './lists.ts';
import { loadWords } from './load-words.ts';
import { findingsIn, generatedRecords, type WordsOf } from './records.ts';

const root = '.';
const wordsOf: WordsOf = (code) => loadWords(root, code);

const usage = `npm run languages                          writes the lists of languages and the records of translations anew
npm run languages -- xx                    begins the language xx (ISO 639-1): copies the English words
npm run languages -- xx --buttons-only     the same without the lists of typed words, which are then read as English
npm run languages -- --missing xx          names each sentence that is missing, stale, still English, or too many
npm run languages -- --right xx PLACE ...  a sentence so named is right as it is, though English changed or is the same
`;

/** `npm run languages`: what a new language needs beside its words. Gives 0; 1 where sentences are to be done; 2 for bad options. */
export async function main(options: readonly string[]): Promise<number> {
  const [first, code = '', ...places] = options;
  if (first === '--missing' && isThere(code) && places.length === 0) return missing(code);
  if (first === '--right' && isThere(code) && places.length > 0) return write({ code, places });
  if (first === undefined) return write();
  if (/^[a-z]{2}$/.test(first) && (code === '' || code === '--buttons-only') && places.length === 0) {
    return begin(first, code === '');
  }
  process.stderr.write(usage);
  return 2;
}

function isThere(code: string): boolean {
  return code !== 'en' && languagesIn(root, wordsFolder).includes(code);
}

/** Copies the English, tidies the copy and writes the lists. */
async function begin(code: string, listens: boolean): Promise<number> {
  if ([wordsFolder, pageFolder].some((folder) => existsSync(join(root, folder, code)))) {
    process.stderr.write(`${code} is begun already: npm run languages -- --missing ${code}\n`);
    return 2;
  }
  const folders = await copyEnglish(root, code, listens);
  const biome = join(root, 'node_modules', '.bin', 'biome');
  execFileSync(biome, ['check', '--write', '--vcs-use-ignore-file=false', ...folders], { stdio: 'ignore' });
  for (const folder of folders) process.stdout.write(`${folder}/\n`);
  return write();
}

/** Writes the lists and the records. */
async function write(right?: Parameters<typeof generatedRecords>[2]): Promise<number> {
  for (const [path, text] of generatedLists(root)) await put(path, text);
  for (const [path, text] of await generatedRecords(root, wordsOf, right)) await put(path, text);
  return 0;
}

async function put(path: string, text: string): Promise<void> {
  await writeFile(join(root, path), text);
  process.stdout.write(`${path}\n`);
}

/** Prints what is to be done, a line a sentence, and how much that is. */
async function missing(code: string): Promise<number> {
  const findings = await findingsIn(root, code, wordsOf);
  const rows = Object.entries(findings).flatMap(([what, places]) =>
    (places as readonly string[]).map((place) => `${what}  ${place}\n`),
  );
  for (const row of rows) process.stdout.write(row);
  process.stdout.write(`${rows.length === 0 ? 'nothing' : rows.length} to do in ${code}\n`);
  return rows.length === 0 ? 0 : 1;
}
