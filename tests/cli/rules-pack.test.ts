import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import { shipped } from '../cases/shipped-pack.ts';
import { fakeIo } from './fake-io.ts';

async function run(...words: string[]) {
  const io = fakeIo();
  const status = await runCommandLine(words, io);
  return { status, out: io.out(), err: io.err() };
}

async function packed(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'packed-'));
  onTestFinished(() => rm(folder, { recursive: true }));
  const out = join(folder, 'sent.json');
  const { status, out: said } = await run('rules', 'pack', shipped.pack.id, '--out', out, '--json');
  expect([status, JSON.parse(said)]).toMatchObject([0, { file: out, id: shipped.pack.id, hash: shipped.pack.hash }]);
  return out;
}

test('rules pack writes one file that rules check, say and decide take in the place of a folder', async () => {
  const file = await packed();
  expect((await run('rules', 'check', file)).out).toMatch(/sound: \d+ rules, \d+ cases/);
  expect((await run('rules', 'say', file)).out).toBe((await run('rules', 'say')).out);
  const facts = ['decide', '--pack', file, '--facts', '-', '--json'];
  const io = { ...fakeIo(), readText: async () => '{ "soil.temperature30cmC": 12 }' };
  expect(await runCommandLine(facts, io)).toBe(0);
  expect(JSON.parse(io.out()).pack.hash).toBe(shipped.pack.hash);
});

test('a file that was changed on the way is refused by its hash, in German too', async () => {
  const file = await packed();
  const text = await readFile(file, 'utf8');
  await writeFile(file, text.replace('"value": 9.6', '"value": 19.6'));
  const { status, err } = await run('rules', 'say', file, '--language', 'de');
  expect(status).toBe(2);
  expect(err).toMatch(/PACK_HASH_MISFIT.*wurde geändert/s);
  expect(err).toContain(shipped.pack.hash);
});

test('rules pack without a file to write says so', async () => {
  expect(await run('rules', 'pack')).toMatchObject({ status: 2, err: expect.stringContaining('OPTION_VALUE') });
});
