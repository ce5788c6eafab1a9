import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import { parseDaySet } from '../../src/core/practice/files.ts';
import { shipped, shippedPacks } from '../cases/shipped-pack.ts';
import { fakeIo } from './fake-io.ts';
import { irishTable } from './irish-table.ts';

const second = shippedPacks.find(({ pack }) => pack.id === 'fluroxypyr-winter-wheat')!.pack;
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'loamward-practice-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function run(args: readonly string[], lines: readonly string[] = []) {
  const io = fakeIo({}, lines);
  const status = await runCommandLine(args, io);
  return { status, out: io.out(), err: io.err() };
}

const field = {
  'field.country': 'GB-ENG',
  'field.texture': 'clay-loam',
  'field.drained': 'yes',
  'field.loosenedThisSeason': 'no',
  'field.protectedWaterArea': 'outside',
  'field.organicSoil': 'no',
  'field.slopePercent': 1,
  'field.waterDistanceM': 300,
  'weed.present': 'yes',
  'treatment.alreadyApplied': 'no',
  'treatment.partnerInTank': 'no',
  'wind.towardsSensitive': 'no',
  'crop.frostOnLeaves': 'no',
  'crop.trueLeaves': 5,
  'weed.tillers': 1,
  'rain.nowMmPerH': 0,
  'soil.surface': ['friable'],
};

describe('loamward practice', () => {
  test('puts a day, takes verdict and reason, says what the rules say, and keeps the answer in a file', async () => {
    const progress = join(folder, 'progress.jsonl');
    const once = (lines: readonly string[]) => run(['practice', '--once', '--progress', progress], lines);
    const first = await once(['5', '1', 'bananas', 'g']);
    expect(first.status).toBe(0);
    expect(first.out).toContain('Type 1, 2 or 3, or the words; "quit" to leave.');
    expect(first.out).toContain('That fits no rule.');
    expect(first.out).toMatch(/You decided: Spray today\. Your reason: Nothing stands in the way\./);
    expect(first.out).toContain('Your words: “bananas”');
    expect(first.out).toMatch(/A day like this comes again in/);
    expect(first.out).toMatch(/: seen 1, right \d; next in/);
    expect(first.out).toMatch(new RegExp(`\n  Not seen yet \\(${shipped.pack.rules.length - 1}\\): .*; .*\n$`));
    await once(['2', 'a']);
    const kept = (await readFile(progress, 'utf8'))
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(kept).toHaveLength(2);
    expect(kept[0]).toMatchObject({ verdict: 'spray-today', reason: null, typed: 'bananas' });
  });

  test('one file of answers serves two treatments: each counts its own; what was kept before they were named is of the first', async () => {
    const progress = join(folder, 'both.jsonl');
    const old = {
      rule: 'too-windy',
      kind: 'inside',
      at: 1e9,
      day: 'd',
      result: 'right',
      verdict: 'wait',
      reason: null,
    };
    await writeFile(progress, `${JSON.stringify(old)}\n`);
    const seen = ({ out }: { readonly out: string }) =>
      [...out.matchAll(/: seen (\d+), /g)].reduce((sum, [, count]) => sum + Number(count), 0);
    const wheat = await run(['practice', '--once', '--progress', progress, '--pack', second.id], ['2', 'a']);
    expect(wheat.out).toContain('Growth stage of the wheat');
    expect(seen(wheat)).toBe(1);
    const rape = await run(['practice', '--once', '--progress', progress], ['2', 'a']);
    expect(rape.out).not.toContain('Growth stage of the wheat');
    expect(rape.out).toContain('Too windy: seen');
    expect(seen(rape)).toBe(2);
    const kept = (await readFile(progress, 'utf8')).trim().split('\n');
    expect(kept.map((line) => JSON.parse(line).pack)).toEqual([undefined, second.id, shipped.pack.id]);
  });

  test('tells it in German, every rule and progress on request, and ends with the input', async () => {
    const { out, status } = await run(
      ['practice', '--language', 'de'],
      ['1', 'g', 'regeln', 'fortschritt', 'was?', ''],
    );
    expect(status).toBe(0);
    expect(out).toMatch(/Ihre Entscheidung: Heute spritzen\./);
    expect(out).toContain(`Jede Regel einzeln (${shipped.pack.rules.length})`);
    expect(out.match(/Wie weit Sie sind, Regel für Regel/g)).toHaveLength(2);
    expect(out.match(/Was tun Sie\?/g)).toHaveLength(2);
    expect(out).not.toMatch(/\b(?:What|Spray|today|seen|in the way)\b/);
  });

  test.each([
    ['en', ['wait', 'w', 'WAIT', '2'], 'You decided: Wait.'],
    ['en', ['do not spray', 'do not', 'd', '3'], 'You decided: Do not spray.'],
    ['de', ['heute spritzen', 'heute', '1'], 'Ihre Entscheidung: Heute spritzen.'],
  ])('a decision is taken by its words as by its number (%s: %j)', async (language, said, told) => {
    for (const one of said) {
      const { out } = await run(['practice', '--once', '--language', language], [one, 'g']);
      expect(out).toContain(told);
    }
  });

  test('a rule that a learner names without need is told with its distance', async () => {
    const { out } = await run(['practice', '--once'], ['wait', 'the soil is too warm']);
    expect(out).toMatch(
      /Your words: “the soil is too warm”\nSoil too warm: does not apply; soil temperature at 30 cm: \d\.\d C room left\.\n/,
    );
    const none = await run(['practice', '--once'], ['wait', 'g']);
    expect(none.out).not.toContain('does not apply');
  });

  test('another seed, other days', async () => {
    const outs = await Promise.all(
      ['1', '2', '3'].map((seed) => run(['practice', '--once', '--seed', seed], ['1', 'g'])),
    );
    expect(new Set(outs.map(({ out }) => out)).size).toBe(3);
  });

  test('a file that is no set of days, and a progress file that is none, are refused with a code', async () => {
    const wrong = join(folder, 'wrong.json');
    await writeFile(wrong, '{"format":"loamward-practice-days","days":[]}');
    expect((await run(['practice', '--days', wrong], [])).err).toMatch(/^PRACTICE_FILE_MISFIT/);
    expect((await run(['practice', '--progress', wrong], [])).err).toMatch(/^PRACTICE_FILE_MISFIT/);
    await writeFile(wrong, 'no json');
    expect((await run(['practice', '--progress', wrong], [])).err).toMatch(/^FILE_NOT_JSON/);
  });
});

describe('loamward practice days', () => {
  test('chooses days of a recorded season that the rules judge as they did in the replay, and practice opens them', async () => {
    await writeFile(join(folder, 'invented.csv'), irishTable(7, 2021, 2));
    const facts = join(folder, 'field.json');
    await writeFile(facts, JSON.stringify(field));
    const out = join(folder, 'days.json');
    const made = await run(['practice', 'days', '--data', folder, '--season', '2021', '--facts', facts, '--out', out]);
    expect(made.err).toBe('');
    expect(made.out).toMatch(/^\d+ days written to /);
    const set = parseDaySet(JSON.parse(await readFile(out, 'utf8')), shipped.pack, out);
    expect(set).toMatchObject({ place: 'TOP BROW (INVENTED)', season: 2021, pack: { hash: shipped.pack.hash } });
    expect(set.days.length).toBeGreaterThan(10);
    expect(new Set(set.days.map(({ rule }) => rule)).size).toBeGreaterThan(3);
    const practised = await run(['practice', '--days', out, '--once'], ['2', 'a']);
    expect(practised.out).toContain('Days of real weather: TOP BROW (INVENTED), season 2021');
    expect(practised.out).toContain('You decided: Wait.');
  });

  test('of a treatment without a season the days are of the whole year; under another treatment the set is refused', async () => {
    await writeFile(join(folder, 'invented.csv'), irishTable(7, 2021, 2));
    const facts = join(folder, 'wheat-field.json');
    const { date: _day, ...field } = second.plainDay?.facts ?? {};
    await writeFile(facts, JSON.stringify(field));
    const out = join(folder, 'wheat-days.json');
    const made = await run([
      'practice',
      'days',
      '--pack',
      second.id,
      '--data',
      folder,
      '--season',
      '2021',
      '--facts',
      facts,
      '--out',
      out,
    ]);
    expect(made.err).toBe('');
    const set = parseDaySet(JSON.parse(await readFile(out, 'utf8')), second, out);
    expect(set.pack).toEqual({ id: second.id, hash: second.hash });
    expect(set.days.length).toBeGreaterThan(5);
    const practised = await run(['practice', '--pack', second.id, '--days', out, '--once'], ['2', 'a']);
    expect(practised.out).toContain('Days of real weather: TOP BROW (INVENTED), season 2021');
    const misfit = await run(['practice', '--days', out, '--once'], ['2', 'a']);
    expect(misfit.err).toMatch(/^PRACTICE_FILE_MISFIT.*days of the treatment propyzamide-winter-oilseed-rape/);
  });

  test.each([
    [['--season', '2021'], 'OPTION_VALUE'],
    [['--data', '/nowhere', '--season', '2021', '--facts', 'x', '--out', 'y'], 'FILE_UNREADABLE'],
    [['--data', 'x', '--season', 'soon', '--facts', 'x', '--out', 'y'], 'OPTION_VALUE'],
  ])('%j is refused with %s', async (args, code) => {
    const { status, err } = await run(['practice', 'days', ...args]);
    expect(status).toBe(2);
    expect(err).toMatch(new RegExp(`^${code}`));
  });
});
