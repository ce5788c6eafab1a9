import { expect, test } from 'vitest';
import { coreFacts } from '../../../../src/core/facts/registry/index.ts';
import { checkPack, loadPack } from '../../../../src/core/rules/pack/load-pack.ts';
import { filesOf, miniPack } from '../../../fixtures/mini-pack.ts';

type Files = Readonly<Record<string, Readonly<Record<string, unknown>>>>;
interface RawRule {
  readonly lifts?: string;
  readonly protected?: boolean;
}

const term = {
  id: 'boom',
  words: { en: ['boom'] },
  forms: { en: ['booms'] },
  text: { en: 'What carries the nozzles.' },
  source: 'invented for tests',
  picture: 'boom-height',
};

/** The mini pack with a glossary, a change log and an overlay that lies beside it. */
function files(more: Record<string, unknown> = {}): Map<string, string> {
  return new Map([
    ...filesOf({ ...miniPack(), 'glossary.json': { $schema: '../x.json', terms: [term] }, ...more }),
    ['CHANGELOG.md', '# Changes'],
    ['overlays/farm.json', 'not read'],
  ]);
}

test('a pack holds what its files say, nothing more and nothing less', () => {
  const parsed = miniPack() as Files;
  const { pack, cases, findings, ok } = loadPack(files());
  const rules = (parsed['a.rules.json']?.['rules'] ?? []) as readonly RawRule[];
  const { hash, ...said } = pack;
  expect(said).toEqual({
    ...parsed['pack.json'],
    facts: coreFacts,
    parameters: parsed['parameters.json']?.['parameters'],
    rules: rules.map(({ lifts, protected: kept, ...rule }) => ({
      ...rule,
      topic: 'soil',
      lifts: lifts ?? null,
      protectedByPractice: kept ?? false,
    })),
    questions: parsed['questions.json']?.['questions'],
    cautions: parsed['cautions.json']?.['cautions'],
    glossary: [term],
  });
  expect(hash).toMatch(/^[0-9a-f]{64}$/);
  const [one] = (parsed['cases/a.json']?.['cases'] ?? []) as object[];
  expect([cases, findings, ok]).toEqual([[{ file: 'cases/a.json', ...one }], [], true]);
});

test('the plain day of a pack is the case with the most facts on which all is well, the first of those, with its moment', () => {
  const one = (name: string, facts: object, verdict: string, at?: string) => ({
    name,
    facts,
    expect: { verdict },
    ...(at === undefined ? {} : { at }),
  });
  const calm = { 'wind.boomKmh': 5 };
  const calmAndMoist = { ...calm, 'soil.feel': 'moist' };
  const plainDayOf = (cases: readonly object[]) => loadPack(files({ 'cases/a.json': { cases } })).pack.plainDay;
  expect(plainDayOf([one('a', { ...calmAndMoist, date: '2026-11-06' }, 'wait')])).toBeUndefined();
  expect(
    plainDayOf([
      one('few facts', calm, 'spray-today'),
      one('the one', calmAndMoist, 'spray-today', '2026-11-06T09:00Z'),
      one('as many', { ...calm, 'soil.feel': 'wet' }, 'spray-today'),
    ]),
  ).toEqual({ facts: calmAndMoist, at: '2026-11-06T09:00Z' });
  expect(plainDayOf([one('a', calm, 'spray-today')])).toEqual({ facts: calm });
});

test('a pack of rules, cases and files in any order of names loads the same; findings come in the order of file names', () => {
  const turned = new Map([...files()].toReversed());
  expect(loadPack(turned).pack).toEqual(loadPack(files()).pack);
  const broken = new Map([...turned, ['b.rules.json', '{'], ['a.json', '{}'], ['cases/b/c.json', '{}']]);
  expect(checkPack(broken).findings.map(({ code, file }) => `${code} ${file}`)).toEqual([
    'PACK_FILE_UNEXPECTED a.json',
    'PACK_FILE_UNEXPECTED cases/b/c.json',
    'RULES_NOT_JSON b.rules.json',
  ]);
});

test('nothing at all is no pack, and each file that is missing is named', () => {
  const { ok, findings } = checkPack(new Map());
  expect(ok).toBe(false);
  expect(findings.map(({ code, file, expected }) => `${code} ${file} ${expected}`)).toEqual([
    'PACK_FILE_MISSING pack.json pack.json',
    'PACK_FILE_MISSING parameters.json parameters.json',
    'PACK_FILE_MISSING questions.json questions.json',
    'PACK_FILE_MISSING cautions.json cautions.json',
    'PACK_FILE_MISSING *.rules.json at least one *.rules.json',
  ]);
});
