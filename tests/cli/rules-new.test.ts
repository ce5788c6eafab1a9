import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { readStarter, schemasFrom } from '../../src/adapters/pack-files/starter.ts';
import { runCommandLine } from '../../src/cli/main.ts';
import { newPackFiles } from '../../src/core/rules/pack/new-pack.ts';
import { fakeIo, root } from './fake-io.ts';

async function run(...words: string[]) {
  const io = fakeIo();
  const status = await runCommandLine(words, io);
  return { status, out: io.out(), err: io.err() };
}

async function folder(): Promise<string> {
  const made = await mkdtemp(join(tmpdir(), 'begun-'));
  onTestFinished(() => rm(made, { recursive: true, force: true }));
  return join(made, 'rules-of-ours');
}

test.each([
  ['en,de', [], 'do not spray'],
  ['de', ['--texts', 'de', '--language', 'de'], 'Jeder Grenzwert ist erfunden'],
] as const)(
  'a new pack with texts in %s is sound without a finding, and no change of it stays unnoticed',
  async (_, more, said) => {
    const into = await folder();
    const begun = await run('rules', 'new', 'oats-in-spring', '--in', into, '--crop', 'oats', ...more);
    expect(begun).toMatchObject({ status: 0, err: '' });
    expect(begun.out).toContain(said === 'do not spray' ? 'Every limit is invented' : said);
    expect(begun.out.match(/npx loamward rules (check|try|say) \S+/g)).toHaveLength(3);
    const checked = await run('rules', 'check', into, '--json');
    expect([checked.status, JSON.parse(checked.out)]).toMatchObject([0, [{ loads: true, findings: [] }]]);
    const tried = await run('rules', 'try', into, '--json');
    expect([tried.status, JSON.parse(tried.out)]).toMatchObject([0, { survivors: [] }]);
  },
);

test('it has a rule of each effect, and says spray today to nobody before somebody answers that it is approved', async () => {
  const into = await folder();
  await run('rules', 'new', 'oats', '--in', into);
  const facts = { 'crop.growthStage': 15, 'wind.boomKmh': 5 };
  const judge = async (more: object) => {
    const io = fakeIo({ 'facts.json': JSON.stringify({ ...facts, ...more }) });
    await runCommandLine(['decide', '--pack', into, '--facts', 'facts.json', '--json'], io);
    return JSON.parse(io.out()).verdict;
  };
  expect(await judge({})).toBe('wait');
  expect(await judge({ 'treatment.rulesApproved': 'no' })).toBe('do-not-spray');
  expect(await judge({ 'treatment.rulesApproved': 'yes' })).toBe('spray-today');
  const rules = (await readdir(into)).filter((name) => name.endsWith('.rules.json'));
  const texts = await Promise.all(rules.map((name) => readFile(join(into, name), 'utf8')));
  for (const effect of ['stop', 'hold', 'advise']) expect(texts.join()).toContain(`"effect": "${effect}"`);
});

test('each file under rules/ names its schema, which is there; outside none is named', async () => {
  const rules = join(root, 'rules');
  const names = { id: 'oats', title: 'Oats', active: 'example', crop: 'oats', languages: ['en', 'de'] };
  const schemas = schemasFrom(join(rules, 'oats'), rules);
  const files = newPackFiles(await readStarter(root), { ...names, schemas });
  for (const [file, text] of files) {
    if (!file.endsWith('.json')) continue;
    const named = String(JSON.parse(text).$schema);
    expect(existsSync(resolve(rules, 'oats', file, '..', named)), `${file}: ${named}`).toBe(true);
  }
  expect(schemasFrom(join(root, 'drafts', 'oats'), rules)).toBe(null);
  const outside = newPackFiles(await readStarter(root), { ...names, schemas: null });
  expect([...outside.values()].join()).not.toContain('$schema');
});

test('names are put in where pack.json needs them', async () => {
  const into = await folder();
  await run(
    'rules',
    'new',
    'oats',
    '--in',
    into,
    '--title',
    'Our oats',
    '--treatment',
    'invented-one',
    '--crop',
    'oats',
  );
  expect(JSON.parse(await readFile(join(into, 'pack.json'), 'utf8'))).toMatchObject({
    id: 'oats',
    active: 'invented-one',
    title: { en: 'Our oats (draft)', de: 'Our oats (Entwurf)' },
    scope: { en: expect.stringContaining('invented-one on oats') },
  });
});

test('nothing is written over: a folder that holds something is refused and stays as it is, in German too', async () => {
  const into = await folder();
  await mkdir(into);
  await writeFile(join(into, 'notes.txt'), 'mine');
  const { status, err } = await run('rules', 'new', 'oats', '--in', into, '--language', 'de');
  expect([status, err]).toEqual([2, expect.stringMatching(/^PACK_FOLDER_TAKEN: .*Geben Sie eine andere Kennung/s)]);
  expect(await readdir(into)).toEqual(['notes.txt']);
});

test.each([
  [['Oats Spring'], 'OPTION_VALUE'],
  [[], 'OPTION_VALUE'],
  [['oats', 'barley'], 'OPTION_VALUE'],
  [['oats', '--treatment', 'Big Name'], 'OPTION_VALUE'],
  [['oats', '--texts', 'en,fr'], 'OPTION_VALUE'],
])('rules new %j is refused', async (words, code) => {
  const into = await folder();
  expect(await run('rules', 'new', ...words, '--in', into)).toMatchObject({
    status: 2,
    err: expect.stringMatching(new RegExp(`^${code}: `)),
  });
  expect(existsSync(into)).toBe(false);
});

test('where a file stands in the way, it says that it cannot write', async () => {
  const into = await folder();
  await writeFile(into, '');
  const { status, err } = await run('rules', 'new', 'oats', '--in', join(into, 'within'));
  expect([status, err]).toEqual([2, expect.stringMatching(/^PACK_NOT_WRITTEN: .*a file where a folder must be/s)]);
});
