import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { readBritish } from './british.ts';
import { readIrish } from './irish.ts';
import { readReynoldsRaw, readReynoldsTable } from './reynolds.ts';
import type { RecordFile, SoilRecord } from './types.ts';
import { readUsNetwork } from './us-network.ts';

const perFile = [readUsNetwork, readReynoldsTable, readIrish];
const together = [readReynoldsRaw, readBritish];

/** Every station with air and soil temperature in a folder and below, found by the form of the files, never by their names. */
export function readSoilRecords(folder: string): SoilRecord[] {
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .sort()
    .map((name) => join(folder, name))
    .filter((path) => /\.(csv|txt)$/i.test(path) && statSync(path).isFile())
    .map((path): RecordFile => ({ path, text: readFileSync(path, 'latin1').replace(/^ï»¿/, '') }));
  return [
    ...files.flatMap((file) => perFile.flatMap((read) => read(file))),
    ...together.flatMap((read) => read(files)),
  ];
}
