import { describe, expect, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import { fakeIo } from './fake-io.ts';

async function run(...options: string[]) {
  const io = fakeIo({});
  const status = await runCommandLine(['understand', ...options], io);
  return { status, out: io.out(), err: io.err() };
}
const read = async (text: string, ...options: string[]) =>
  JSON.parse((await run('--text', text, '--json', ...options)).out);

describe('loamward understand', () => {
  test.each([
    ['nine and a half at 30 cm', [], { facts: { 'soil.temperature30cmC': 9.5 } }],
    ['9', ['--asked', 'soil.temperature30cmC'], { facts: { 'soil.temperature30cmC': 9 } }],
    [
      'no, 11 not 9',
      ['--previous', 'soil.temperature30cmC'],
      { facts: { 'soil.temperature30cmC': 11 }, correction: true },
    ],
    [
      'not cracked',
      [],
      {
        facts: { 'soil.surface': { value: [], possible: ['friable', 'sticky', 'ponded', 'frozen', 'snow'] } },
        needsConfirming: [],
      },
    ],
    [
      'about 9',
      ['--asked', 'soil.temperature30cmC'],
      {
        facts: {},
        needsConfirming: ['soil.temperature30cmC'],
        offered: { 'soil.temperature30cmC': { value: 9, low: 8.5, high: 9.5 } },
      },
    ],
    [
      'what if it were 9?',
      ['--previous', 'soil.temperature30cmC'],
      { facts: {}, intents: ['what-if'], supposed: { 'soil.temperature30cmC': 9 } },
    ],
    ['9.2 at 30 cm yesterday', [], { hoursAgo: { 'soil.temperature30cmC': 24 } }],
    [
      'neun Komma zwei Grad in 30 cm, Dräne laufen nicht',
      ['--language', 'de'],
      { facts: { 'soil.temperature30cmC': 9.2, 'soil.drainsRunning': 'no' } },
    ],
    ['why?', [], { facts: {}, intents: ['why'] }],
    ['the price is 40', [], { facts: {}, needsConfirming: [] }],
  ])('%s', async (text, options, expected) => {
    expect(await read(text, ...options)).toMatchObject(expected);
  });

  test('says the same in words', async () => {
    const { out } = await run('--text', 'about 9, drains not running', '--asked', 'soil.temperature30cmC');
    expect(out).toBe(
      [
        'Taken:',
        '  soil.drainsRunning = "no"',
        'Asked again first:',
        '  soil.temperature30cmC = {"value":9,"low":8.5,"high":9.5}',
        '',
      ].join('\n'),
    );
  });

  test.each([
    [[], 'OPTION_VALUE'],
    [['--text', ' '], 'OPTION_VALUE'],
    [['--text', '9', '--asked', 'soil.temperatur'], 'FACT_UNKNOWN_ID'],
    [['--text', '9', '--asked', 'air.deltaTC'], 'OPTION_VALUE'],
    [['--text', '9', '--previous', 'x'], 'FACT_UNKNOWN_ID'],
    [['--text', '9', '--pack', 'no-such'], 'PACK_UNKNOWN'],
  ])('refuses %j by code', async (options, code) => {
    const { status, err } = await run(...options);
    expect([status, err.split(':')[0]]).toEqual([2, code]);
  });
});
