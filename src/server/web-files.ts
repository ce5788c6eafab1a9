import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { extname, join } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';

/** One file of the built page, in memory. */
export interface WebFile {
  readonly body: Buffer;
  /** Smaller forms by the content encoding that a client must take, the smallest first. */
  readonly encoded: readonly (readonly [encoding: string, body: Buffer])[];
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

/** The highest but one: the highest takes more than twice as long at every start, for 2 % less. */
const brotliQuality = 10;

const [brotliForm, gzipForm] = [promisify(brotliCompress), promisify(gzip)];

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
    const file = await webFile(path, type, await readFile(join(folder, path)));
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

async function webFile(path: string, type: string, body: Buffer): Promise<WebFile> {
  const forms = /^(text|application|image\/svg)/.test(type) ? await encodedForms(body) : [];
  return {
    body,
    encoded: forms.filter(([, form]) => form.length < body.length).sort(([, a], [, b]) => a.length - b.length),
    type,
    etag: `"${createHash('sha256').update(body).digest('base64url')}"`,
    cacheControl: hashedName.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache',
  };
}

async function encodedForms(body: Buffer): Promise<(readonly [string, Buffer])[]> {
  const params = { [constants.BROTLI_PARAM_QUALITY]: brotliQuality, [constants.BROTLI_PARAM_SIZE_HINT]: body.length };
  const forms = await Promise.all([brotliForm(body, { params }), gzipForm(body, { level: 9 })]);
  return [
    ['br', forms[0]],
    ['gzip', forms[1]],
  ];
}
