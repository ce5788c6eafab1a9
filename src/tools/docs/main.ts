import { writeFile } from 'node:fs/promises';
import { generatedPages } from './pages.ts';

/** `npm run docs`: writes the documents that are made from code and pack. */
export async function main(): Promise<number> {
  for (const [path, text] of await generatedPages('.')) {
    await writeFile(path, text);
    process.stdout.write(`${path}\n`);
  }
  return 0;
}
