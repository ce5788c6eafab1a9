import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { commands, runCommandLine } from '../../src/cli/main.ts';
import { fakeIo } from './fake-io.ts';

const facts = (content: unknown) => ({ 'facts.json': JSON.stringify(content) });

describe('loamward', () => {
  test('without words says what there is, and that the label decides', async () => {
    const io = fakeIo();
    expect(await runCommandLine([], io)).toBe(0);
    for (const { name } of commands) expect(io.out()).toContain(`loamward ${name}`);
    expect(io.out()).toContain('the label in hand, local law and a qualified adviser decide');
  });

  test.each(commands.map(({ name }) => name))('%s has help with an example, as text and as JSON', async (name) => {
    const io = fakeIo();
    expect(await runCommandLine([...name.split(' '), '--help'], io)).toBe(0);
    expect(io.out()).toContain(`loamward ${name}`);
    expect(io.out()).toContain('For example:');
    const json = fakeIo();
    await runCommandLine([...name.split(' '), '--help', '--json'], json);
    expect(JSON.parse(json.out()).help).toBe(io.out());
  });

  test('--version gives the version of package.json', async () => {
    const io = fakeIo();
    await runCommandLine(['--version'], io);
    const json = fakeIo();
    await runCommandLine(['--version', '--json'], json);
    expect(io.out()).toMatch(/^\d+\.\d+\.\d+\n$/);
    expect(JSON.parse(json.out())).toEqual({ version: io.out().trim() });
  });

  test.each([
    [['decidde'], 'COMMAND_UNKNOWN', 'decide'],
    [['decide', '--fact', 'x'], 'OPTION_UNKNOWN', '--facts'],
    [['decide'], 'OPTION_VALUE', '--facts FILE'],
    [['decide', '--facts'], 'OPTION_VALUE', '--facts FILE'],
    [['decide', '--facts', 'absent.json'], 'FILE_UNREADABLE', 'absent.json'],
    [['decide', '--facts', 'broken.json'], 'FILE_NOT_JSON', 'broken.json'],
    [['decide', '--facts', 'facts.json', '--pack', 'propyzamid-winter-oilseed-rape'], 'PACK_UNKNOWN', 'propyzamide-'],
    [['decide', '--facts', 'facts.json', '--at', '2026-11-06T09:00'], 'MOMENT_UNREADABLE', '2026-11-06T09:00'],
    [['decide', '--facts', 'facts.json', '--at', '2026-13-45'], 'MOMENT_UNREADABLE', '2026-13-45'],
    [['decide', '--facts', 'typo.json'], 'FACT_UNKNOWN_ID', 'soil.temperature30cmC'],
    [['decide', '--facts', 'text.json'], 'FACT_WRONG_TYPE', '"9"'],
    [['decide', '--facts', 'day.json', '--at', '2026-11-06T09:00Z'], 'FACT_DATE_OTHER_DAY', '2026-11-07'],
    [['decide', '--facts', 'facts.json', '--forecast', 'facts.json'], 'FORECAST_FILE_UNREADABLE', ''],
    [['rules', 'chekc'], 'COMMAND_UNKNOWN', 'rules check'],
  ])('%j ends with status 2 and %s on standard error', async (args, code, words) => {
    const io = fakeIo({
      ...facts({}),
      'broken.json': '{"a":',
      'typo.json': '{"soil.temprature30cmC": 9}',
      'text.json': '{"soil.temperature30cmC": "9"}',
      'day.json': '{"date": "2026-11-07"}',
    });
    expect(await runCommandLine(args, io)).toBe(2);
    expect(io.out()).toBe('');
    expect(io.err()).toContain(`${code}: `);
    expect(io.err()).toContain(words);
    const json = fakeIo({ ...facts({}), 'broken.json': '{"a":' });
    if (await runCommandLine([...args, '--json'], json)) expect(JSON.parse(json.err())).toHaveProperty('next');
  });

  test('rules check finds every shipped pack sound, and says so as JSON too', async () => {
    const io = fakeIo();
    expect(await runCommandLine(['rules', 'check'], io)).toBe(0);
    expect(io.out()).toMatch(/sound: 35 rules, \d+ cases/);
    const json = fakeIo();
    await runCommandLine(['rules', 'check', '--json'], json);
    expect(
      JSON.parse(json.out()).map(({ rules, findings }: { rules: number; findings: object[] }) => [rules, findings]),
    ).toEqual([21, 35].map((rules) => [rules, []]));
  });

  test('rules check of a folder with faults ends with status 1 and names file and place', async () => {
    const io = fakeIo();
    const folder = resolve(import.meta.dirname, '..', 'fixtures', 'faulty-pack');
    expect(await runCommandLine(['rules', 'check', folder], io)).toBe(1);
    expect(io.out()).toMatch(/10 to mend; nothing of it is used/);
    expect(io.out()).toMatch(/faulty-pack\/pack\.json:1:24 error PACK_VALUE_WRONG \/version\n/);
  });
});
