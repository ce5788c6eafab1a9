import { describe, expect, test } from 'vitest';
import { runCommandLine } from '../../src/cli/main.ts';
import type { Decision } from '../../src/core/dialogue/decision-types.ts';
import { fakeIo } from './fake-io.ts';

async function decide(facts: string, ...options: string[]) {
  const io = fakeIo({ 'facts.json': facts });
  const status = await runCommandLine(['decide', '--facts', 'facts.json', '--json', ...options], io);
  return { status, out: io.out(), error: io.err() === '' ? null : JSON.parse(io.err()) };
}

const nested = (open: string, close: string, depth: number) => open.repeat(depth) + close.repeat(depth);

describe('awkward facts files are refused with a code, the place and what came', () => {
  test.each([
    ['a list', '[]', 'FACTS_NOT_AN_OBJECT', '', '[]'],
    ['nothing at all', '', 'FILE_NOT_JSON', undefined, 'Unexpected end of JSON input'],
    ['a key that stands twice', '{"soil.feel":"moist","soil.feel":"dry"}', 'FILE_KEY_REPEATED', '/soil.feel', 'twice'],
    [
      'a band member that stands twice',
      '{"wind.boomKmh":{"value":4,"value":12}}',
      'FILE_KEY_REPEATED',
      '/wind.boomKmh/value',
      'twice',
    ],
    ['lists nested deep', nested('[', ']', 100_000), 'FACTS_NOT_AN_OBJECT', '', 'a list nested too deep'],
    [
      'a value nested deep',
      `{"soil.feel":${nested('[', ']', 50_000)}}`,
      'FACT_WRONG_TYPE',
      '/soil.feel/0',
      'a list nested too deep',
    ],
    [
      'a band nested deep',
      `{"soil.feel":${'{"value":'.repeat(9000)}1${'}'.repeat(9000)}}`,
      'FACT_WRONG_TYPE',
      '/soil.feel/value',
      'an object nested too deep',
    ],
    ['a name that steers a terminal', '{"\\u001b[31m":1}', 'FACT_UNKNOWN_ID', '/\\u001b[31m', '\\u001b[31m'],
    [
      'a list of signs with a wrong one',
      '{"soil.surface":["friable","crack"]}',
      'FACT_CHOICE_UNKNOWN',
      '/soil.surface/1',
      'crack',
    ],
    ['a wrong sign', '{"soil.surface":"crack"}', 'FACT_CHOICE_UNKNOWN', '/soil.surface', 'crack'],
    [
      'no sign where signs are told',
      '{"soil.surface":{"value":null}}',
      'FACT_WRONG_TYPE',
      '/soil.surface/value',
      'null',
    ],
    [
      'a wrong sign that may be there',
      '{"soil.surface":{"value":[],"possible":["snow","ise"]}}',
      'FACT_CHOICE_UNKNOWN',
      '/soil.surface/possible/1',
      'ise',
    ],
    [
      'a wrong choice in a list within an object',
      '{"soil.feel":{"value":["moist","damp"]}}',
      'FACT_CHOICE_UNKNOWN',
      '/soil.feel/value/1',
      'damp',
    ],
    ['a country in small letters', '{"field.country":"gb-eng"}', 'FACT_CHOICE_UNKNOWN', '/field.country', 'gb-eng'],
    ['a number beyond all numbers', '{"air.temperatureC":1e999}', 'FACT_WRONG_TYPE', '/air.temperatureC', 'Infinity'],
    ['a number as text', '{"wind.boomKmh":"12 mph"}', 'FACT_WRONG_TYPE', '/wind.boomKmh', '12 mph'],
    [
      'a strength per kg by another name',
      '{"product.activeGPerKg":800}',
      'FACT_UNKNOWN_ID',
      '/product.activeGPerKg',
      'Kg',
    ],
  ])('%s', async (_, facts, code, pointer, came) => {
    const { status, out, error } = await decide(facts);
    expect([status, out]).toEqual([2, '']);
    expect(error).toMatchObject({ code });
    expect(error.pointer).toBe(pointer);
    expect(error.came).toContain(came);
  });

  test('what came is repeated in part only, however long it is', async () => {
    const { error } = await decide(JSON.stringify({ ['x'.repeat(1_000_000)]: 1 }));
    expect(JSON.stringify(error).length).toBeLessThan(800);
  });
});

test.each(['2026-11-06T09:00+99:00', '2026-11-06T09:00-15:00', '2026-11-06T09:00+05:75', '2026-02-30T09:00Z'])(
  '--at %s is no moment',
  async (at) => {
    expect((await decide('{}', '--at', at)).error).toMatchObject({ code: 'MOMENT_UNREADABLE', came: at });
  },
);

test('an offset as far as +14:00 is one (the Line Islands keep it)', async () => {
  const { out } = await decide('{}', '--at', '2026-11-06T23:00+14:00');
  expect((JSON.parse(out) as Decision).at).toBe('2026-11-06T09:00:00Z');
});

test('standard input is named as such where it is no JSON', async () => {
  const io = fakeIo({ '-': '{' });
  await runCommandLine(['decide', '--facts', '-'], io);
  expect(io.err()).toContain('(standard input)');
});

test('a byte order mark before the facts is passed over', async () => {
  expect((await decide('\uFEFF{"soil.feel":"moist"}')).status).toBe(0);
});

describe('the day of a moment is the day at the field', () => {
  test.each([
    ['2026-09-30T22:59:59Z', '2026-09-30', 'met'],
    ['2026-09-30T23:00Z', '2026-10-01', 'not-met'],
    ['2026-07-31T22:59Z', '2026-07-31', 'not-met'],
    ['2026-07-31T23:00Z', '2026-08-01', 'met'],
  ])('%s is %s in summer time', async (at, date, outcome) => {
    const { out } = await decide(JSON.stringify({ date }), '--at', at);
    const { trace } = JSON.parse(out) as Decision;
    expect(trace.find(({ rule }) => rule === 'season-not-open')?.outcome).toBe(outcome);
  });

  test.each([
    ['2026-07-31', 'season-closed', 1],
    ['2026-08-01', 'season-not-open', 61],
    ['2026-09-30', 'season-not-open', 1],
    ['2027-02-01', 'season-closed', 181],
    ['2027-02-28', 'season-closed', 154],
    ['2028-02-29', 'season-closed', 154],
  ])('on %s %s has %d days to go (counted on a calendar)', async (date, rule, days) => {
    const { reasons } = JSON.parse((await decide(JSON.stringify({ date }))).out) as Decision;
    expect(reasons.find((reason) => reason.rule === rule)).toMatchObject({ margin: -days, marginUnit: 'days' });
  });
});

test('a forecast file of another form is refused in plain words', async () => {
  const io = fakeIo({ 'facts.json': '{}', 'daily.json': '{"latitude":54,"longitude":-2,"daily":{}}' });
  await runCommandLine(['decide', '--facts', 'facts.json', '--forecast', 'daily.json', '--json'], io);
  const error = JSON.parse(io.err());
  expect(error).toMatchObject({ code: 'FORECAST_FILE_UNREADABLE', came: 'nothing', pointer: '/hourly_units' });
  expect(error.expected).not.toMatch(/invalid|undefined/i);
});

test.each([
  [{ 'crop.trueLeaves': 2.5 }, 'crop-too-small', '0.5 leaves too few'],
  [{ 'crop.trueLeaves': 2 }, 'crop-too-small', '1 leaf too few'],
  [{ 'soil.temperature30cmC': 10.01 }, 'soil-too-warm', '0.01 C too warm'],
  [{ 'soil.temperature30cmC': 10.5 }, 'soil-too-warm', '0.5 C too warm'],
  [{ 'field.waterDistanceM': 15, 'field.bufferMarked': 'no' }, 'near-water', '5 m too near'],
  [{ 'field.waterDistanceM': 19.8, 'field.bufferMarked': 'no' }, 'near-water', '0.2 m too near'],
])('of %j %s tells a margin as fine as its value: %s', async (facts, rule, text) => {
  const { reasons } = JSON.parse((await decide(JSON.stringify(facts))).out) as Decision;
  expect(reasons.find((reason) => reason.rule === rule)?.marginText).toBe(text);
});

test.each([[['GB', 'IE']], [['GB-ENG', 'GB']], ['GB'], ['UK'], [['GB-ENG', 'GB-NIR']]])(
  'the country %j settles no nation of the pack and counts as unknown',
  async (country) => {
    const { trace, missing } = JSON.parse((await decide(JSON.stringify({ 'field.country': country }))).out) as Decision;
    expect(trace.find(({ rule }) => rule === 'outside-region')?.outcome).toBe('unknown');
    expect(missing).toContain('field.country');
  },
);

test('where much is unknown the why names three things and counts the rest', async () => {
  const { why, reasons } = JSON.parse((await decide('{}')).out) as Decision;
  expect(why).toContain(` and ${reasons.length - 3} more.`);
});
