import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { locateFindings } from '../../src/adapters/pack-files/locate.ts';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import { asText } from '../../src/cli/check/print-checked.ts';
import { rulesCheck } from '../../src/cli/commands/rules-check.ts';
import { decideFacts } from '../../src/core/dialogue/decide.ts';
import { analysisErrors } from '../../src/core/errors/groups/analysis.ts';
import { ruleErrors } from '../../src/core/errors/groups/rules.ts';
import { checkThoroughly } from '../../src/core/rules/analyse/check-thoroughly.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { expectedOf, givenBy } from '../../src/core/verdict/cases/judge-case.ts';
import { catalogueOf } from '../../src/core/words/catalogue.ts';
import { root, textOf } from '../repo/files.ts';
import { shipped } from './shipped-pack.ts';

const page = textOf('docs/adviser.md');
const fences = [...page.matchAll(/^```(\w*)\n(.*?)^```$/gms)].map(([, language, text]) => ({ language, text: text! }));
const [parameter, rulesFile, casesFile] = fences.filter(({ language }) => language === 'json').map(({ text }) => text);
const [limit, rule] = fences
  .filter(({ language, text }) => language === '' && text.startsWith('{'))
  .map(({ text }) => JSON.parse(text));

async function filesWithExample() {
  const files = await readPackFolder(join(root, 'rules', 'propyzamide-winter-oilseed-rape'));
  const { parameters } = JSON.parse(files.get('parameters.json')!);
  return new Map([
    ...files,
    ['parameters.json', JSON.stringify({ parameters: [...parameters, JSON.parse(parameter!)] })],
    ['local.rules.json', rulesFile!],
    ['cases/local.json', casesFile!],
  ]);
}

test('the example of the adviser page loads without a finding, and its cases come out as they say', async () => {
  const { pack, cases, findings } = loadPack(await filesWithExample());
  expect(findings).toEqual([]);
  const added = cases.filter(({ file }) => file === 'cases/local.json');
  expect(added).toHaveLength(3);
  for (const one of added) {
    const request = { pack, facts: one.facts, forecast: null, at: null, now: epochSeconds(0), language: 'en' };
    const { trace, missing } = await decideFacts(request);
    expect(givenBy(trace, one)).toEqual(expectedOf(one));
    expect(missing).toEqual(expect.arrayContaining([...(one.expect.missing ?? [])]));
  }
});

test('the rule that the page explains and the counts that it names are those of the pack', () => {
  const { text, ...rest } = rule;
  expect(Object.keys(text.en)).toEqual(['title', 'met', 'unknown', 'lift']);
  expect(shipped.pack.rules.find(({ id }) => id === rest.id)).toMatchObject(rest);
  expect(shipped.pack.parameters).toContainEqual(limit);
  expect(page).toContain(`sound: ${shipped.pack.rules.length} rules, ${shipped.cases.length} cases`);
});

describe('what the page says of the check', () => {
  test('is the output for the example with a limit of 0', async () => {
    const files = new Map(await filesWithExample());
    files.set(
      'parameters.json',
      files.get('parameters.json')!.replace('"id":"windLeastKmh","value":2', '"id":"windLeastKmh","value":0'),
    );
    const day = '2026-11-06';
    const checked = checkThoroughly(files, day);
    const folder = 'rules/propyzamide-winter-oilseed-rape';
    const findings = locateFindings(checked.findings, files);
    const text = asText([{ folder, day, loads: checked.ok, rules: 0, cases: 0, findings }], catalogueOf('en'), '.');
    expect(fences.filter(({ language }) => language === 'text').map((fence) => fence.text)).toContain(text);
  });

  test('names every finding of an analysis, and no code that there is not', () => {
    const table = page.slice(page.indexOf('| Looked for |'), page.indexOf('### In the editor'));
    const named = new Set([...table.matchAll(/`([A-Z_]{8,})`/g)].map(([, code]) => code!));
    const right = Object.keys({ ...ruleErrors, ...analysisErrors });
    expect([...named].filter((code) => !right.includes(code))).toEqual([]);
    expect(Object.keys(analysisErrors).filter((code) => !named.has(code))).toEqual([]);
  });

  test('names every option, and no other', () => {
    const section = page.slice(page.indexOf('\n## Check\n'), page.indexOf('| Looked for |'));
    const options = new Set([...section.matchAll(/^\| `--([a-z]+)/gm)].map(([, option]) => option!));
    expect([...options].sort()).toEqual(Object.keys(rulesCheck.options).sort());
  });
});
