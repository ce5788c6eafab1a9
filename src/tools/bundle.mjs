import { createHash } from 'node:crypto';
import { mkdir, readFile, rename, stat, writeFile } from 'node:fs/promises';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

/** Root folder of the project. */
export const projectRoot = resolve(dirname(fileURLToPath(import.meta.url)), '..', '..');

const cacheFolder = join(projectRoot, 'node_modules', '.cache', 'loamward');

/**
 * Node 20 does not run TypeScript, so an entry is bundled first (packages stay outside) into a cache under node_modules.
 * The bundle is made again only where a source file that went into it has changed. Returns its path.
 */
export async function bundle(entry) {
  const path = resolve(projectRoot, entry);
  const name = createHash('sha256').update(relative(projectRoot, path)).digest('hex').slice(0, 16);
  const bundled = join(cacheFolder, `${name}.mjs`);
  if (await isFresh(bundled)) return bundled;
  const esbuild = await import('esbuild');
  const { outputFiles, metafile } = await esbuild.build({
    entryPoints: [path],
    absWorkingDir: projectRoot,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    packages: 'external',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    write: false,
    metafile: true,
    logLevel: 'silent',
  });
  const sources = await stampsOf(Object.keys(metafile.inputs));
  await mkdir(cacheFolder, { recursive: true });
  await writeWhole(bundled, outputFiles[0].contents);
  await writeWhole(`${bundled}.sources.json`, JSON.stringify(sources));
  return bundled;
}

/** Bundles a TypeScript entry and imports it. */
export async function importTypeScript(entry) {
  return import(pathToFileURL(await bundle(entry)).href);
}

async function isFresh(bundled) {
  try {
    await stat(bundled);
    const sources = JSON.parse(await readFile(`${bundled}.sources.json`, 'utf8'));
    const now = await stampsOf(Object.keys(sources));
    return Object.entries(sources).every(([file, stamp]) => now[file] === stamp);
  } catch {
    return false;
  }
}

async function stampsOf(files) {
  const stamps = await Promise.all(
    files.map(async (file) => {
      const { mtimeMs, size } = await stat(resolve(projectRoot, file));
      return [file, `${mtimeMs}:${size}`];
    }),
  );
  return Object.fromEntries(stamps);
}

/** Writes beside and renames, so that two processes at once never read half a file. */
async function writeWhole(path, content) {
  const beside = `${path}.${process.pid}.tmp`;
  await writeFile(beside, content);
  await rename(beside, path);
}
