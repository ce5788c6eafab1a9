import { describe, expect, test } from 'vitest';
import { describeError } from '../../../src/core/errors/coded-error.ts';
import * as errorGroups from '../../../src/core/errors/groups/rules.ts';
import { checkPack, loadPack } from '../../../src/core/rules/pack/load-pack.ts';
import { breakPack, brokenTopics } from '../../fixtures/broken-pack.ts';
import { filesOf, miniPack } from '../../fixtures/mini-pack.ts';
import { expectPage } from './said/said-of.ts';

test('the mini pack that the broken ones are patched from loads without a finding', () => {
  const loaded = checkPack(filesOf(miniPack()));
  expect(loaded.findings).toEqual([]);
  expect(loaded.ok).toBe(true);
});

describe.each(brokenTopics)('%s', (topic, table) => {
  test.each(table)('refuses $name', (broken) => {
    const files = breakPack(broken, filesOf);
    const checked = checkPack(files);
    expect(checked.ok).toBe(false);
    const found = checked.findings.find(({ code, pointer }) => code === broken.code && pointer === broken.pointer);
    expect(found, JSON.stringify(checked.findings, null, 1)).toBeDefined();
    const message = describeError(found!.code, found!);
    for (const words of broken.words) expect(message).toContain(words);
    expect(() => loadPack(files)).toThrow(checked.findings.find(({ severity }) => severity === 'error')!.code);
  });

  test('everything that is said of each stands on its page, word for word', async () => {
    const said = table.map((broken) => [broken.name, checkPack(breakPack(broken, filesOf)).findings] as const);
    await expectPage(`broken-${topic.replace('.json', '')}`, said);
  });
});

test('every code of pack files has a broken pack, save those that are no fault of the files', () => {
  const covered = new Set(brokenTopics.flatMap(([, table]) => table.map(({ code }) => code)));
  const ofOneFile = ['PACK_ONE_FILE_WRONG', 'PACK_HASH_MISFIT'];
  const elsewhere = ['RULES_FILE_UNREADABLE', 'PARAMETER_UNUSED', 'PACK_FACT_UNUSED', ...ofOneFile];
  const { ruleErrors } = errorGroups;
  expect(Object.keys(ruleErrors).filter((code) => !covered.has(code) && !elsewhere.includes(code))).toEqual([]);
});
