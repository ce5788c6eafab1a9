import './register.ts';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import { fakeIo } from '../cli/fake-io.ts';
import { fit } from '../cli/weather-answers.ts';
import { byRight } from './by-right.ts';
import { plainWords } from './decorate.ts';
import { decoratedFiles, decoratedPack } from './pack.ts';

/** Names of the files that rules stand in, which head their lists. */
const groups = new Set([...decoratedFiles.keys()].map((path) => path.replace(/\.rules\.json$/, '')));
/** Ids of rules, options, the name of the pack's folder, of a file and a command, and codes of the system. */
const ids = [
  ...decoratedPack.rules.map(({ id }) => new RegExp(`(?<=\\()${id}\\b`, 'g')),
  /--[a-z-]+/g,
  `/rules/${decoratedPack.id}`,
  'none.json',
  /\bdecide\b/g,
];

let project = '';
beforeAll(async () => {
  project = await mkdtemp(join(tmpdir(), 'loamward-made-up-'));
  for (const [path, text] of decoratedFiles) {
    const file = join(project, 'rules', decoratedPack.id, path);
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, text);
  }
});
afterAll(() => rm(project, { recursive: true }));

test.each([
  ['a decision', ['decide', '--facts', 'facts.json', '--at', '2026-11-06T09:00Z', '--language', 'zz'], 0],
  ['a decision that is refused', ['decide', '--facts', 'none.json', '--language', 'zz'], 2],
  ['a wrong option', ['decide', '--nonsense', '--language', 'zz'], 2],
  ['a rule said as a sentence', ['rules', 'say', '--language', 'zz'], 0],
  ['a check of the rules', ['rules', 'check', '--language', 'zz'], 0],
] as const)('%s shows no word outside the catalogue', async (_, options, status) => {
  const io = { ...fakeIo({ 'facts.json': JSON.stringify(fit) }), root: project };
  expect([await runCommandLine([...options], io), status]).toEqual([status, status]);
  const lines = `${io.out()}${io.err()}`
    .replaceAll(project, '')
    .replaceAll(/^rules\/[a-z-]+/gm, '')
    .split('\n');
  const left = lines.filter((line) => !groups.has(line) && plainWords(line, [...byRight, ...ids]).length > 0);
  expect(left).toEqual([]);
});
