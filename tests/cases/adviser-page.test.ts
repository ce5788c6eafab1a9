import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readPackFolder } from '../../src/adapters/pack-files/read-pack-folder.ts';
import { decideFacts } from '../../src/core/dialogue/decide.ts';
import { loadPack } from '../../src/core/rules/pack/load-pack.ts';
import { epochSeconds } from '../../src/core/units/brands.ts';
import { root, textOf } from '../repo/files.ts';
import { expectedOf, givenBy, shipped } from './shipped-pack.ts';

const page = textOf('docs/adviser.md');
const fences = [...page.matchAll(/^```(\w*)\n(.*?)^```$/gms)].map(([, language, text]) => ({ language, text: text! }));
const [parameter, rulesFile, casesFile] = fences.filter(({ language }) => language === 'json').map(({ text }) => text);
const [limit, rule] = fences.filter(({ language }) => language === '').map(({ text }) => JSON.parse(text));

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
