import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type Findings, findingsOf } from './findings.ts';
import { languagesIn, wordsFolder } from './lists.ts';
import { recordAfter, type TranslationRecord } from './record.ts';
import { type Sentences, sentencesOf } from './sentences.ts';
import { type SpokenWords, wholeEnglish } from './whole-words.ts';

/** Gives all that a language says, by its ISO 639-1 code. */
export type WordsOf = (code: string) => Promise<SpokenWords>;

/** Path of the record of what a language was translated from, below the project's folder. */
const recordPath = (code: string): string => `${wordsFolder}/${code}.translated.json`;

/** The sentences of English and of another language, and what was recorded of them. */
async function compared(
  root: string,
  code: string,
  wordsOf: WordsOf,
): Promise<[Sentences, Sentences, TranslationRecord]> {
  const path = join(root, recordPath(code));
  const record = existsSync(path) ? JSON.parse(await readFile(path, 'utf8')) : {};
  return [sentencesOf(wholeEnglish(await wordsOf('en'))), sentencesOf(await wordsOf(code)), record];
}

/** What is missing, stale, still English or too much in a language. `root` is the project's folder. */
export async function findingsIn(root: string, code: string, wordsOf: WordsOf): Promise<Findings> {
  return findingsOf(...(await compared(root, code, wordsOf)));
}

/** The records of every language as they are after a look, by path. `right` names sentences of one language that are right as they are. */
export async function generatedRecords(
  root: string,
  wordsOf: WordsOf,
  right: { readonly code: string; readonly places: readonly string[] } = { code: '', places: [] },
): Promise<ReadonlyMap<string, string>> {
  const files = new Map<string, string>();
  for (const code of languagesIn(root, wordsFolder).filter((one) => one !== 'en')) {
    const [english, translated, record] = await compared(root, code, wordsOf);
    const isRight = (place: string) => code === right.code && right.places.includes(place);
    files.set(recordPath(code), `${JSON.stringify(recordAfter(record, english, translated, isRight), null, 2)}\n`);
  }
  return files;
}
