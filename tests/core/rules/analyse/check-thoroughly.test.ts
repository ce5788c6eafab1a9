import { describe, expect, test } from 'vitest';
import { locateFindings } from '../../../../src/adapters/pack-files/locate.ts';
import { readPackFolder } from '../../../../src/adapters/pack-files/read-pack-folder.ts';
import { analysisErrors } from '../../../../src/core/errors/groups/analysis.ts';
import { checkThoroughly } from '../../../../src/core/rules/analyse/check-thoroughly.ts';
import { put, thoroughPack, writtenOut } from '../../../fixtures/thorough-pack.ts';
import { textOf } from '../../../repo/files.ts';
import { expectPage } from '../said/said-of.ts';
import { analysisExamples, type Example } from './examples.ts';

const day = '2026-11-06';

function filesWith({ changes }: Pick<Example, 'changes'>): Map<string, string> {
  const parsed = thoroughPack();
  for (const [file, pointer, value] of changes) put(parsed, file, pointer, value);
  return writtenOut(parsed);
}

test('nothing is found in the pack that the examples are changes of', () => {
  const checked = checkThoroughly(writtenOut(thoroughPack()), day);
  expect(checked.findings).toEqual([]);
});

test('nothing is found in the first pack: every limit has its cases on both sides', async () => {
  const checked = checkThoroughly(await readPackFolder('rules/propyzamide-winter-oilseed-rape'), day);
  expect(checked.findings).toEqual([]);
});

describe('the analysis', () => {
  test.each(analysisExamples.map((example) => [example.code, example.name, example] as const))(
    '%s: %s',
    (code, _name, example) => {
      const files = filesWith(example);
      const checked = checkThoroughly(files, day);
      expect(checked.ok).toBe(true);
      const found = locateFindings(checked.findings, files).filter((one) => one.code === code);
      const text = files.get(example.file) ?? '';
      const before = text.slice(0, text.indexOf(example.mark)).split('\n');
      const { file, pointer, severity } = example;
      expect(found, JSON.stringify(checked.findings, null, 1)).toContainEqual(
        expect.objectContaining({ file, pointer, severity, line: before.length, column: before.at(-1)!.length + 1 }),
      );
    },
  );

  test('says of each example what stands on its page, word for word', async () => {
    /** What each small pack of many parameters is told besides, and would fill the page. */
    const besides = (code: string, of: string) => (code === 'PARAMETER_UNUSED' || of === 'RULE_TOO_BIG') && code !== of;
    const said = analysisExamples.map((example) => {
      const { findings } = checkThoroughly(filesWith(example), day);
      const own = findings.filter(({ code }) => !besides(code, example.code));
      return [`${example.code}, ${example.name}`, own] as const;
    });
    await expectPage('analysis', said);
  });

  test('has an example for each of its codes, and a documented entry for each example', () => {
    const elsewhere = ['PARAMETER_UNUSED', 'CASE_MISFIT', 'FACT_WRONG_TYPE'];
    const shown = new Set(analysisExamples.map(({ code }) => code).filter((code) => !elsewhere.includes(code)));
    expect([...shown].sort()).toEqual(Object.keys(analysisErrors).sort());
    const page = textOf('docs/errors.md');
    for (const { code } of analysisExamples) expect(page).toContain(`\n## ${code}\n`);
  });
});

test('a rule that is too big is said so once, and nothing else is said of it', () => {
  const files = filesWith(analysisExamples.find(({ code }) => code === 'RULE_TOO_BIG')!);
  const said = checkThoroughly(files, day).findings.filter(({ rule }) => rule === 'of-many');
  expect(said.map(({ code }) => code).filter((code) => code !== 'RULE_LIMIT_WITHOUT_CASE')).toEqual(['RULE_TOO_BIG']);
});

test('two rules that are too big only together are named as not compared', () => {
  const parsed = thoroughPack();
  const { changes } = analysisExamples.find(({ code }) => code === 'RULE_TOO_BIG')!;
  const [, , whole] = changes[0]!;
  for (const [file, pointer, value] of changes.slice(1)) put(parsed, file, pointer, value);
  const { when } = whole as { when: { any: unknown[] } };
  const advice = (id: string, any: unknown[]) => ({ ...(whole as object), id, when: { any } });
  put(parsed, 'a.rules.json', '/rules/-', advice('first-half', when.any.slice(0, 9)));
  put(parsed, 'a.rules.json', '/rules/-', advice('second-half', when.any.slice(8)));
  const said = checkThoroughly(writtenOut(parsed), day).findings.filter(({ code }) => code === 'RULE_TOO_BIG');
  expect(said).toMatchObject([{ rule: 'second-half', came: '65536: the two are not compared' }]);
});
