import { describe, expect, test } from 'vitest';
import { forecastToJson } from '../../src/adapters/openmeteo/json-own.ts';
import { runCommandLine } from '../../src/cli/main.ts';
import { utc } from '../core/facts/moments.ts';
import { buildForecast } from '../generators/forecast.ts';
import { fakeIo } from './fake-io.ts';

const warm = { 'field.country': 'GB-ENG', 'soil.temperature30cmC': 11.4, 'soil.surface': ['friable'] };
const at = ['--at', '2026-11-06T09:00Z'];

async function run(facts: object, ...options: string[]) {
  const forecast = buildForecast({ from: utc('2026-11-06T09:00Z'), hours: 72 });
  const io = fakeIo({ 'facts.json': JSON.stringify(facts), 'forecast.json': forecastToJson(forecast) });
  const status = await runCommandLine(['decide', '--facts', 'facts.json', ...at, ...options], io);
  return { status, out: io.out(), err: io.err() };
}

const decided = async (facts: object, ...options: string[]) => JSON.parse((await run(facts, '--json', ...options)).out);

describe('loamward decide --what-if', () => {
  test('says what another value would change beside the answer, which stays as it is', async () => {
    const plain = await decided(warm);
    const { whatIf, ...answer } = await decided(warm, '--what-if', 'soil.temperature30cmC=9');
    expect(answer).toEqual(plain);
    expect(whatIf).toMatchObject({
      changes: [{ fact: 'soil.temperature30cmC', reading: { type: 'number', value: 9 } }],
      verdict: 'wait',
    });
    expect(whatIf.change).toContain('soil too warm');
    expect(whatIf.headline).not.toBe('');
  });

  test('takes several, signs and bands among them, and a fact that the file does not give', async () => {
    const { whatIf } = await decided(
      warm,
      ...['--what-if', 'soil.surface=cracked,sticky', '--what-if', 'crop.trueLeaves={"value":3,"low":2,"high":4}'],
      ...['--what-if', 'soil.feel=moist', '--what-if', 'field.drained=no'],
    );
    expect(whatIf.changes.map(({ reading }: { reading: unknown }) => reading)).toMatchObject([
      { type: 'signs', present: ['cracked', 'sticky'] },
      { type: 'number', value: 3, low: 2, high: 4 },
      { type: 'choice', possible: ['moist'] },
      { type: 'choice', possible: ['no'] },
    ]);
  });

  test('takes a reading of another depth and hour as a facts file does', async () => {
    const supposed = { value: 5, depthCm: 10, readAt: '2026-11-06T08:00Z' };
    const option = ['--what-if', `soil.temperature30cmC=${JSON.stringify(supposed)}`];
    const { whatIf } = await decided(warm, ...option);
    expect(whatIf.changes[0].reading.from).toEqual({ depthCm: 10, valueC: 5, hour: '08:00' });
    const asFile = await decided({ ...warm, 'soil.temperature30cmC': supposed });
    expect(whatIf.verdict).toBe(asFile.verdict);
    expect(whatIf.headline).toBe(asFile.headline);
    expect((await run(warm, ...option)).out).toContain('(worked out from 5 C at 10 cm at 08:00)');
  });

  test('says it as text too', async () => {
    const { out } = await run(warm, '--what-if', 'soil.temperature30cmC=9');
    expect(out).toContain('What if: soil temperature at 30 cm 9 C');
    expect(out).toContain('the answer above stands');
  });

  test.each([
    ['soil.temperature30cmC', 'OPTION_VALUE'],
    ['=9', 'OPTION_VALUE'],
    ['date=2026-12-01', 'OPTION_VALUE'],
    ['soil.temperature=9', 'FACT_UNKNOWN_ID'],
    ['soil.temperature30cmC=cold', 'FACT_'],
    ['soil.surface=purple', 'FACT_'],
    ['soil.temperature30cmC={"value":7,"depthCm":10}', 'DEPTH_NEEDS_HOUR'],
    ['soil.temperature30cmC={"value":7,"depthCm":2,"readAt":"2026-11-06T08:00Z"}', 'DEPTH_NOT_30CM'],
    ['soil.temperature30cmC={"value":7,"depthCm":10,"readAt":"2026-11-07T08:00Z"}', 'READING_IN_FUTURE'],
    ['soil.temperature30cmC=null', 'OPTION_VALUE'],
  ])('refuses %s with %s', async (given, code) => {
    const { status, err, out } = await run(warm, '--what-if', given);
    expect([status, out]).toEqual([2, '']);
    expect(err).toContain(code);
  });
});

test('--outlook adds the days ahead to the JSON, and nothing without it', async () => {
  expect(await decided(warm)).not.toHaveProperty('outlook');
  const { outlook } = await decided(warm, '--outlook', '--forecast', 'forecast.json');
  expect(outlook.hours).toHaveLength(72);
  expect(outlook.changes).toMatchObject([{ rule: 'soil-too-warm', to: 10, by: -1.4 }]);
});
