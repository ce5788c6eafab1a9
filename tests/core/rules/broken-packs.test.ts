import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { describeError } from '../../../src/core/errors/coded-error.ts';
import * as errorGroups from '../../../src/core/errors/groups/rules.ts';
import { checkPack, loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import { filesOf, miniPack } from '../../fixtures/mini-pack.ts';
import { expectPage } from './said/said-of.ts';

interface Broken {
  readonly name: string;
  readonly file: string;
  readonly at?: string;
  readonly value?: unknown;
  readonly text?: string;
  readonly code: string;
  readonly pointer: string;
  readonly words: readonly string[];
}

const folder = new URL('../../fixtures/broken-packs/', import.meta.url);
const topics = readdirSync(folder).map(
  (file) => [file, JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as Broken[]] as const,
);

function breakPack({ file, at = '', value, text }: Broken): Map<string, string> {
  const parsed = miniPack();
  if (at === '') {
    if (value === undefined) delete parsed[file];
    else parsed[file] = value;
  } else patch(parsed[file], at.slice(1).split('/'), value);
  const files = filesOf(parsed);
  if (text !== undefined) files.set(file, text);
  return files;
}

function patch(root: unknown, steps: string[], value: unknown): void {
  let target = root as Record<string, unknown>;
  for (const step of steps.slice(0, -1)) target = target[step] as Record<string, unknown>;
  const last = steps.at(-1)!;
  if (value !== undefined) target[last] = value;
  else if (Array.isArray(target)) target.splice(Number(last), 1);
  else delete target[last];
}

test('the mini pack that the broken ones are patched from loads without a finding', () => {
  const loaded = checkPack(filesOf(miniPack()));
  expect(loaded.findings).toEqual([]);
  expect(loaded.ok).toBe(true);
});

describe.each(topics)('%s', (topic, table) => {
  test.each(table)('refuses $name', (broken) => {
    const files = breakPack(broken);
    const checked = checkPack(files);
    expect(checked.ok).toBe(false);
    const found = checked.findings.find(({ code, pointer }) => code === broken.code && pointer === broken.pointer);
    expect(found, JSON.stringify(checked.findings, null, 1)).toBeDefined();
    const message = describeError(found!.code, found!);
    for (const words of broken.words) expect(message).toContain(words);
    expect(() => loadPack(files)).toThrow(checked.findings.find(({ severity }) => severity === 'error')!.code);
  });

  test('everything that is said of each stands on its page, word for word', async () => {
    const said = table.map((broken) => [broken.name, checkPack(breakPack(broken)).findings] as const);
    await expectPage(`broken-${topic.replace('.json', '')}`, said);
  });
});

test('every code of pack files has a broken pack, save those that are no fault of the files', () => {
  const covered = new Set(topics.flatMap(([, table]) => table.map(({ code }) => code)));
  const ofOneFile = ['PACK_ONE_FILE_WRONG', 'PACK_HASH_MISFIT'];
  const elsewhere = ['RULES_FILE_UNREADABLE', 'PARAMETER_UNUSED', 'PACK_FACT_UNUSED', ...ofOneFile];
  const { ruleErrors } = errorGroups;
  expect(Object.keys(ruleErrors).filter((code) => !covered.has(code) && !elsewhere.includes(code))).toEqual([]);
});
