import { join } from 'node:path';
import type { Io } from './io.ts';

/** The version in package.json. */
export async function versionOf(io: Io): Promise<string> {
  const manifest: { version: string } = JSON.parse(await io.readText(join(io.root, 'package.json')));
  return manifest.version;
}
