#!/usr/bin/env node
// Runs a TypeScript entry of this project: bundles it (packages stay outside), keeps the bundle under node_modules, imports it.
// Usage: node src/tools/run.mjs <entry.ts> [arguments of the entry]
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = resolve(dirname(fileURLToPath(import.meta.url)), '../..');

/** Each source keeps its own `import.meta.url`, so that files are found beside it as in the unbundled tree. */
const ownPlace = {
  name: 'own-place',
  setup(builder) {
    builder.onLoad({ filter: /\.tsx?$/ }, async ({ path }) => {
      const source = await readFile(path, 'utf8');
      const contents = source.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href));
      return { contents, loader: path.endsWith('x') ? 'tsx' : 'ts' };
    });
  },
};

/** Bundles `entry` and gives the address of the finished file; the file appears whole or not at all. */
export async function bundle(entry) {
  const result = await build({
    absWorkingDir: root,
    entryPoints: [entry],
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    sourcemap: 'inline',
    write: false,
    logLevel: 'error',
    plugins: [ownPlace],
  });
  const folder = join(root, 'node_modules/.cache/loamward');
  const name = relative(root, entry).replaceAll(/[^A-Za-z0-9]+/g, '-');
  const unfinished = join(folder, `${name}.${process.pid}.tmp`);
  const finished = join(folder, `${name}.mjs`);
  await mkdir(folder, { recursive: true });
  await writeFile(unfinished, result.outputFiles[0].contents);
  await rename(unfinished, finished);
  return pathToFileURL(finished).href;
}

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const [entry, ...rest] = process.argv.slice(2);
  if (!entry) {
    process.stderr.write('Usage: node src/tools/run.mjs <entry.ts> [arguments]\n');
    process.exitCode = 2;
  } else {
    const path = resolve(entry);
    const address = await bundle(path);
    process.argv = [process.argv[0], path, ...rest];
    await import(address);
  }
}
