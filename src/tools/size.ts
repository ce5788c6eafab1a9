import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** Most that the first question may cost on the wire, bytes after gzip -9. */
const budgetBytes = 90 * 1024;

const page = join('dist', 'web');

/** Weighs what a browser loads before the first question: the page, its scripts and styles, and what they import at once. */
export async function main(): Promise<number> {
  const html = await readFile(join(page, 'index.html'), 'utf8');
  const named = [...html.matchAll(/(?:src|href)="\.?\/?([^"]+\.(?:js|css))"/g)].map((match) => match[1]!);
  const files = await withImports(named);
  let total = gzipSync(html, { level: 9 }).length;
  process.stdout.write(`${String(total).padStart(7)}  index.html\n`);
  for (const file of files) {
    const bytes = gzipSync(await readFile(join(page, file)), { level: 9 }).length;
    total += bytes;
    process.stdout.write(`${String(bytes).padStart(7)}  ${file}\n`);
  }
  const within = total <= budgetBytes;
  process.stdout.write(`${String(total).padStart(7)}  of ${budgetBytes} bytes allowed${within ? '' : ': too heavy'}\n`);
  return within ? 0 : 1;
}

async function withImports(files: readonly string[]): Promise<string[]> {
  const seen = new Set<string>();
  const left = [...files];
  for (let file = left.pop(); file !== undefined; file = left.pop()) {
    if (seen.has(file)) continue;
    seen.add(file);
    if (!file.endsWith('.js')) continue;
    const text = await readFile(join(page, file), 'utf8');
    for (const match of text.matchAll(/(?:^|[;}\s])import\s*(?:[\w${},*\s]+from\s*)?"\.\/([^"]+\.js)"/g)) {
      left.push(join(file, '..', match[1]!));
    }
  }
  return [...seen].sort();
}
