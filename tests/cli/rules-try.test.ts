import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import { filesOf, miniPack } from '../fixtures/mini-pack.ts';
import { fakeIo } from './fake-io.ts';

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'loamward-try-'));
  for (const [file, text] of filesOf(miniPack())) {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await writeFile(join(folder, file), text);
  }
});
afterAll(() => rm(folder, { recursive: true }));

async function run(...options: string[]) {
  const io = fakeIo({});
  const status = await runCommandLine(['rules', 'try', ...options], io);
  return { status, out: io.out(), err: io.err() };
}

describe('loamward rules try', () => {
  test('of the first pack no change is left that no case notices', async () => {
    const { status, out } = await run();
    expect(out).toMatch(
      /^\d+ cases, \d+ changes: \d+ noticed, 0 that no facts can tell apart, 0 that no case notices\.\n$/,
    );
    expect(status).toBe(0);
  });

  test('a pack with one case: what no case notices, as sentences, with the case that would', async () => {
    const { status, out } = await run(folder);
    expect(status).toBe(1);
    expect(out).toContain(
      [
        '  windMostKmh: 9.6 km/h made 9.61 km/h',
        '  windMostKmh: 9.6 km/h made 9.7 km/h',
        '    A case that would: wind at the boom 9.61 km/h. Expect wait, with too-windy met.',
      ].join('\n'),
    );
    expect(out).toContain(
      '    is:      Holds (lifts in hours): when wind at boom height is above 9.6 km/h (windMostKmh).\n',
    );
    expect(out).toContain(
      '    changed: Holds (lifts in days): when wind at boom height is above 9.6 km/h (windMostKmh).\n',
    );
    expect(out).toContain('All else as on the day of “wind” in cases/a.json.');
  });

  test('in German, and as JSON with the whole case', async () => {
    const { out } = await run(folder, '--language', 'de');
    expect(out).toMatch(
      /^ {4}Ein Fall, der es bemerkt: [^\n]* 9,61 km\/h\. Zu erwarten: warten, erfüllt ist too-windy\./m,
    );
    const said = JSON.parse((await run(folder, '--json')).out);
    expect(said.survivors[0]).toMatchObject({
      kind: 'limit',
      id: 'windMostKmh',
      facts: { 'wind.boomKmh': 9.61 },
      case: { facts: { 'wind.boomKmh': 9.61 }, expect: { verdict: 'wait' } },
    });
    expect(said.noticed + said.equal.length + said.survivors.length).toBe(said.changes);
  });
});

test.each([
  [
    'en',
    'with too-windy met; too-dry not known; missing that could change it: wind.boomKmh.',
    'nothing that is missing could change it',
  ],
  [
    'de',
    'erfüllt ist too-windy; too-dry nicht bekannt; es fehlt, was es ändern könnte: wind.boomKmh.',
    'nichts Fehlendes könnte es ändern',
  ],
])('in %s, of a case that fails only in what is missing, both sides are told apart', async (language, says, comes) => {
  const own = await mkdtemp(join(tmpdir(), 'loamward-try-'));
  const [, cases] = [...filesOf(miniPack())].find(([file]) => file === 'cases/a.json')!;
  const [one] = JSON.parse(cases).cases;
  const expected = { ...one.expect, missing: ['wind.boomKmh'] };
  for (const [file, text] of filesOf(miniPack())) {
    await mkdir(dirname(join(own, file)), { recursive: true });
    const isCases = file === 'cases/a.json';
    await writeFile(join(own, file), isCases ? JSON.stringify({ cases: [{ ...one, expect: expected }] }) : text);
  }
  const { status, out } = await run(own, '--language', language);
  await rm(own, { recursive: true });
  expect(status).toBe(1);
  expect(out).toContain(says);
  expect(out).toContain(comes);
});
