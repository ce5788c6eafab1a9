import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { main } from './main.ts';
import { validateRecordedReplies } from './recorded-replies.ts';
import { runChecks } from './validator.ts';

let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'validate-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Writes invented replies as if recorded. */
function recorded(name: string, replies: Record<string, unknown>): string {
  const data = join(folder, name);
  const open = join(data, 'open-meteo-responses', 'open');
  mkdirSync(open, { recursive: true });
  for (const [file, reply] of Object.entries(replies)) writeFileSync(join(open, file), JSON.stringify(reply));
  return data;
}

const invented = {
  latitude: 53.4,
  longitude: -1.9,
  utc_offset_seconds: 3600,
  hourly_units: { time: 'iso8601', wind_speed_10m: 'kn' },
  hourly: { time: ['2026-10-25T00:00', '2026-10-25T01:00'], wind_speed_10m: [10, null] },
};

async function run(...options: string[]) {
  const said: string[] = [];
  const keep = (text: unknown) => said.push(String(text)) > 0;
  const out = vi.spyOn(process.stdout, 'write').mockImplementation(keep);
  const err = vi.spyOn(process.stderr, 'write').mockImplementation(keep);
  const code = await main(options);
  out.mockRestore();
  err.mockRestore();
  return { code, last: said.at(-1), all: said.join('') };
}

describe('validation against recorded data', () => {
  test('says plainly that no folder was given, or that it is absent, and does not fail', async () => {
    expect(await run()).toMatchObject({
      code: 0,
      last: '0 passed, 0 failed\n',
      all: expect.stringContaining('No folder'),
    });
    const absent = join(folder, 'nowhere');
    expect(await run('--data', absent)).toMatchObject({ code: 0, all: expect.stringContaining('is absent') });
    // Two worked examples of evapotranspiration need no data.
    expect(await run('--data', recorded('bare', {}))).toMatchObject({ code: 0, last: '2 passed, 0 failed\n' });
  });

  test('a bad option is not taken for no folder', async () => {
    expect((await run('--date', folder)).code).toBe(2);
    expect((await run('--data')).code).toBe(2);
  });

  test('passes what is read rightly and ends in the counts', async () => {
    const data = recorded('right', { 'a.json': invented, 'b.json': { latitude: 1, longitude: 1, daily: {} } });
    expect(await run('--data', data)).toMatchObject({ code: 0, last: '5 passed, 0 failed\n' });
  });

  test('with --json it says the same as one object', async () => {
    const data = recorded('machine', { 'a.json': invented });
    const { code, all } = await run('--json', '--data', data);
    expect(code).toBe(0);
    expect(JSON.parse(all)).toMatchObject({ passed: 4, failed: 0, note: null, validators: expect.any(Array) });
    expect(JSON.parse((await run('--json')).all)).toMatchObject({
      passed: 0,
      note: expect.stringContaining('No folder'),
    });
  });

  test('fails where a reply cannot be read', async () => {
    const uneven = { ...invented, hourly: { ...invented.hourly, time: ['2026-10-25T00:00', '2026-10-25T05:00'] } };
    const data = recorded('wrong', { 'a.json': uneven });
    expect(validateRecordedReplies(data)).toMatchObject({ passed: 0, failed: 2 });
    expect(await run('--data', data)).toMatchObject({ code: 1, last: '2 passed, 2 failed\n' });
  });

  test('a check that throws is a failure with its words', () => {
    const broken = () => {
      throw new Error('3 is not 4');
    };
    expect(runChecks([['sum', broken]])).toEqual({ passed: 0, failed: 1, lines: ['FAILED  sum: 3 is not 4'] });
  });
});
