import { mkdir, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { generatedPages } from './pages.ts';

/** `npm run docs`: writes the documents and JSON Schemas that are made from code and pack. */
export async function main(): Promise<number> {
  for (const [path, text] of await generatedPages('.')) {
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, text);
    process.stdout.write(`${path}\n`);
  }
  return 0;
}
