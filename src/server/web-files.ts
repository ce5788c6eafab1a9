import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** One file of the built page, in memory. */
export interface WebFile {
  readonly body: Buffer;
  /** Smaller form for clients that take gzip; null where it would not be smaller. */
  readonly gzipped: Buffer | null;
  readonly type: string;
  /** SHA-256 of the body as an entity tag. */
  readonly etag: string;
  readonly cacheControl: string;
}

/** Files by the path of their address, `/` standing for index.html. */
export type WebFiles = ReadonlyMap<string, WebFile>;

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
};

/** A name that carries a hash of its content, as the build makes them under assets/. */
const hashedName = /^\/assets\/.*-[\w-]{8,}\.\w+$/;

/**
 * Reads every file of the built page once. Only what lies in the folder and has a type of the list is served, looked up by its
 * whole path: a request never reaches the file system. Links are not followed. An absent folder gives an empty map.
 */
export async function readWebFiles(folder: string): Promise<WebFiles> {
  const files = new Map<string, WebFile>();
  for (const path of await filesUnder(folder, '')) {
    const type = types[extname(path)];
    if (type === undefined) continue;
    const file = webFile(path, type, await readFile(join(folder, path)));
    files.set(path, file);
    if (path === '/index.html') files.set('/', file);
  }
  return files;
}

async function filesUnder(folder: string, below: string): Promise<string[]> {
  const found: string[] = [];
  for (const each of await entriesOf(join(folder, below))) {
    const path = `${below}/${each.name}`;
    if (each.isDirectory()) found.push(...(await filesUnder(folder, path)));
    if (each.isFile()) found.push(path);
  }
  return found;
}

async function entriesOf(folder: string) {
  try {
    return await readdir(folder, { withFileTypes: true });
  } catch {
    return [];
  }
}

function webFile(path: string, type: string, body: Buffer): WebFile {
  const gzipped = /^(text|application|image\/svg)/.test(type) ? gzipSync(body, { level: 9 }) : null;
  return {
    body,
    gzipped: gzipped && gzipped.length < body.length ? gzipped : null,
    type,
    etag: `"${createHash('sha256').update(body).digest('base64url')}"`,
    cacheControl: hashedName.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache',
  };
}
