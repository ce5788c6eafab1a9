import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { findPacks, readPackFolder } from '../../../src/adapters/pack-files/read-pack-folder.ts';
import { loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import { filesOf, miniPack } from '../../fixtures/mini-pack.ts';

let root = '';

beforeEach(async () => {
  root = await mkdtemp(join(tmpdir(), 'packs-'));
  await mkdir(join(root, 'mini-pack', 'cases'), { recursive: true });
  for (const [file, text] of filesOf(miniPack())) await writeFile(join(root, 'mini-pack', file), text);
});

afterEach(() => rm(root, { recursive: true, force: true }));

test('a folder is read whole, nested files with a slash, hidden files left out', async () => {
  await writeFile(join(root, 'mini-pack', '.hidden'), 'x');
  const files = await readPackFolder(join(root, 'mini-pack'));
  expect([...files.keys()]).toEqual(Object.keys(miniPack()).sort());
  expect(loadPack(files).cases).toHaveLength(1);
});

test('packs are the folders that hold a pack.json, in order; an absent folder holds none', async () => {
  await mkdir(join(root, 'empty'));
  await mkdir(join(root, 'another'));
  await writeFile(join(root, 'another', 'pack.json'), '{}');
  await writeFile(join(root, 'a-file'), '');
  expect((await findPacks(root)).map(({ id }) => id)).toEqual(['another', 'mini-pack']);
  expect(await findPacks(join(root, 'absent'))).toEqual([]);
});

test('a folder that is absent and a file that is not UTF-8 are coded errors', async () => {
  await expect(readPackFolder(join(root, 'absent'))).rejects.toThrow(
    /RULES_FILE_UNREADABLE.*absent.*no such file or folder/,
  );
  await writeFile(join(root, 'mini-pack', 'pack.json'), Uint8Array.of(0xff, 0xfe, 0x00));
  await expect(readPackFolder(join(root, 'mini-pack'))).rejects.toThrow(/RULES_FILE_UNREADABLE.*pack\.json.*not UTF-8/);
});
