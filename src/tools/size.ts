import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** Most that the first question may cost on the wire, bytes after gzip -9. */
const budgetBytes = 90 * 1024;

const page = join('dist', 'web');

/** Loaded beside the first screen, and needed before a question about a field is shown: the checks of what the server sends, and words. */
const besides = /^(?:parse-message|en)-/;

/**
 * Weighs what a browser loads before the first question: the page, its scripts and styles, and what they import at once. What is
 * loaded later (the core for answering without a connection, parts of the page when they are asked for) is weighed apart.
 */
export async function main(): Promise<number> {
  const html = await readFile(join(page, 'index.html'), 'utf8');
  const named = [...html.matchAll(/(?:src|href)="\.?\/?([^"]+\.(?:js|css))"/g)].map((match) => match[1]!);
  const assets = await readdir(join(page, 'assets'));
  const checks = assets.filter((name) => besides.test(name)).map((name) => `assets/${name}`);
  const first = ['index.html', ...(await withImports([...named, ...checks]))];
  const total = await weigh(first);
  const within = total <= budgetBytes;
  process.stdout.write(`${shown(total)}  of ${budgetBytes} bytes allowed${within ? '' : ': too heavy'}\n`);
  const later = assets.map((name) => `assets/${name}`);
  process.stdout.write('\nLater, when the page has time or it is asked for:\n');
  await weigh([...later.filter((file) => /\.(?:js|css)$/.test(file) && !first.includes(file)), 'sw.js']);
  return within ? 0 : 1;
}

/** Prints what each file weighs after gzip, bytes; gives the sum. */
async function weigh(files: readonly string[]): Promise<number> {
  let total = 0;
  for (const file of files) {
    const bytes = gzipSync(await readFile(join(page, file)), { level: 9 }).length;
    total += bytes;
    process.stdout.write(`${shown(bytes)}  ${file}\n`);
  }
  return total;
}

function shown(bytes: number): string {
  return String(bytes).padStart(7);
}

/** Names of the files beside it that a script of the build imports at once. */
export function importedIn(script: string): string[] {
  const imports = script.matchAll(/(?:^|[;}\s])import\s*(?:[\w${},*\s]+from\s*)?"\.\/([^"]+\.js)"/g);
  return [...imports].map(([, name = '']) => name);
}

async function withImports(files: readonly string[]): Promise<string[]> {
  const seen = new Set<string>();
  const left = [...files];
  for (let file = left.pop(); file !== undefined; file = left.pop()) {
    if (seen.has(file)) continue;
    seen.add(file);
    if (!file.endsWith('.js')) continue;
    const text = await readFile(join(page, file), 'utf8');
    left.push(...importedIn(text).map((name) => join(file, '..', name)));
  }
  return [...seen].sort();
}
