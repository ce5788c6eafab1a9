import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import type { Decision } from '../../src/core/dialogue/decision-types.ts';
import { decisionSchema } from '../../src/core/protocol/events/decision-schema.ts';
import { newRule, overlayOf, parameter } from '../core/rules/overlay/overlay-of.ts';
import { textOf } from '../repo/files.ts';
import { fakeIo } from './fake-io.ts';

const examples = 'rules/propyzamide-winter-oilseed-rape/overlays';
const facts = {
  'field.loosenedThisSeason': 'yes',
  'field.waterPlanAgreed': 'no',
  'field.protectedWaterArea': 'inside',
};
let folder = '';

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'loamward-overlay-'));
});
afterEach(() => rm(folder, { recursive: true }));

async function run(...args: string[]) {
  const files = {
    'facts.json': JSON.stringify({ date: '2026-11-06', ...facts }),
    'dateless.json': JSON.stringify(facts),
  };
  const io = fakeIo(files);
  const status = await runCommandLine(args, io);
  return { status, out: io.out(), err: io.err() };
}

async function written(parts: Parameters<typeof overlayOf>[0]): Promise<string> {
  const path = join(folder, 'ours.json');
  await writeFile(path, JSON.stringify(overlayOf(parts).content, null, 2));
  return path;
}

describe('the examples of local conditions', () => {
  test('are sound, over the pack and over each other', async () => {
    const { status, out } = await run('rules', 'check', '--overlay', examples);
    expect(out).toContain('hollin-bank-farm.json');
    expect(out).toMatch(/upper-brook-area\.json \(2026-11-06\): sound: 1 rules, 8 cases/);
    expect(status).toBe(0);
  });

  test('have a case for every change of what they give', async () => {
    expect((await run('rules', 'try', '--overlay', examples)).status).toBe(0);
  });
});

describe('the local rules that the adviser page writes out', () => {
  test('are sound without a warning, and their cases notice every change', async () => {
    const fences = [...textOf('docs/adviser.md').matchAll(/^```json\n(.*?)^```$/gms)].map(([, text]) => text ?? '');
    const path = join(folder, 'our-farm.json');
    await writeFile(path, fences.find((text) => text.includes('"overlay": {')) ?? '');
    const { status, out } = await run('rules', 'check', '--overlay', path);
    expect(out).toMatch(/our-farm\.json \(2026-11-06\): sound: 1 rules, 3 cases\n*$/);
    expect(status).toBe(0);
    expect((await run('rules', 'try', '--overlay', path)).status).toBe(0);
  });
});

describe('rules try --overlay', () => {
  const own = (cases: readonly unknown[], validFrom = '2026-11-20') =>
    written({
      parameters: [parameter('ownGustKmh', 9.6, { unit: 'km/h', tighter: 'lower', validFrom })],
      rules: [newRule('own-gusts', { fact: 'wind.gustKmh', above: 'ownGustKmh' })],
      cases,
    });
  const onDay = (date: string, gust: number | null, outcome: string) => ({
    name: `${date} with gusts of ${gust}`,
    facts: { date, 'wind.gustKmh': gust },
    expect: { verdict: 'wait', [outcome]: ['own-gusts'] },
  });

  test('judges each case on its day: those before a new limit holds are left out and told, the others notice', async () => {
    const late = [onDay('2026-11-21', 9.6, 'notMet'), onDay('2026-11-21', null, 'unknown')];
    const { status, out, err } = await run('rules', 'try', '--overlay', await own(late));
    expect(err).toBe('');
    expect(out).toMatch(/^10 cases, [1-9]\d* changes: /);
    expect(out).toContain('cases of 2026-11-06: ownGustKmh does not hold then');
    expect(status).toBe(1);
  });

  test('says so where no case is left, and does not pass', async () => {
    const { status, out } = await run('rules', 'try', '--overlay', await own([], '2030-01-01'), '--language', 'de');
    expect(out).toMatch(/^0 Fälle, 0 Änderungen.*Fälle vom 2026-11-06: ownGustKmh gilt dann nicht/s);
    expect(status).toBe(1);
  });
});

describe('decide --overlay', () => {
  test('judges by the local rules and says whose they are, as JSON and as text, in both languages', async () => {
    const local = ['--facts', 'facts.json', '--overlay', `${examples}/upper-brook-area.json`];
    const json = JSON.parse((await run('decide', ...local, '--json')).out) as Decision;
    expect(json.verdict).toBe('do-not-spray');
    expect(json.pack.overlays).toMatchObject([
      { id: 'upper-brook-area', changedRules: ['High-risk field for water', 'Loosened soil above the brook'] },
    ]);
    expect(decisionSchema.parse(json)).toEqual(json);
    expect((await run('decide', ...local)).out).toContain(
      'Local rules: Upper Brook catchment (invented) by R. Reeve, catchment adviser (invented), for the fields above Upper Brook (invented): rules changed or added: High-risk field for water, Loosened soil above the brook.',
    );
    expect((await run('decide', ...local, '--language', 'de')).out).toContain(
      'Örtliche Regeln: Einzugsgebiet Oberer Bach (erfunden) von R. Reeve',
    );
  });

  test('without one says nothing of local rules', async () => {
    const json = JSON.parse((await run('decide', '--facts', 'facts.json', '--json')).out) as Decision;
    expect(json.pack).not.toHaveProperty('overlays');
    expect(json.verdict).toBe('wait');
  });

  test('leaves out one that does not hold on the day asked about', async () => {
    const overlay = await written({ overlay: { validFrom: '2026-11-07' }, removes: { rules: ['dark'] } });
    const decided = async (at: string) =>
      JSON.parse((await run('decide', '--facts', 'dateless.json', '--at', at, '--overlay', overlay, '--json')).out)
        .pack;
    expect(await decided('2026-11-06T09:00Z')).not.toHaveProperty('overlays');
    expect(await decided('2026-11-07T09:00Z')).toHaveProperty('overlays');
  });

  test('is refused with its code where it would loosen', async () => {
    const overlay = await written({ parameters: [parameter('windMostKmh', 14.5)] });
    const { status, err } = await run('decide', '--facts', 'facts.json', '--overlay', overlay, '--json');
    expect(status).toBe(2);
    expect(JSON.parse(err)).toMatchObject({ code: 'OVERLAY_PARAMETER_LOOSENED', pointer: '/parameters/0/value' });
  });
});

describe('rules check --overlay', () => {
  test('says what is wrong with file, line and column', async () => {
    const overlay = await written({ parameters: [parameter('windMostKmh', 14.5)] });
    const { status, out } = await run('rules', 'check', '--overlay', overlay, '--json');
    const local = JSON.parse(out).at(-1);
    expect(local.findings).toMatchObject([{ code: 'OVERLAY_PARAMETER_LOOSENED', line: 20, column: 7 }]);
    expect(status).toBe(1);
  });

  test('finds bounds of its own that contradict each other', async () => {
    const when = {
      all: [
        { fact: 'field.drained', is: 'yes' },
        { fact: 'field.drained', is: 'no' },
      ],
    };
    const overlay = await written({ rules: [newRule('never', when)] });
    const { out } = await run('rules', 'check', '--overlay', overlay, '--json');
    const codes = JSON.parse(out)
      .at(-1)
      .findings.map(({ code }: { code: string }) => code);
    expect(codes).toContain('RULE_BOUNDS_CONTRADICT');
  });
});
