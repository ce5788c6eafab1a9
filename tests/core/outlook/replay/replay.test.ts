import { describe, expect, test } from 'vitest';
import type { ReplayDay, ReplayInput, WeatherDay } from '../../../../src/core/outlook/replay/index.ts';
import { replay, seasonDatesOf } from '../../../../src/core/outlook/replay/index.ts';
import { compileRules } from '../../../../src/core/rules/compile.ts';
import { evaluateWithEngine } from '../../../../src/core/rules/engine.ts';
import { evaluateReference } from '../../../../src/core/rules/reference.ts';
import { verdictWord } from '../../../../src/core/verdict/verdict-of.ts';
import { inventedDays } from '../../../../src/demo/invented-seasons.ts';
import { shipped } from '../../../cases/shipped-pack.ts';
import { replayField } from '../../../generators/replay-field.ts';

const place = { latitude: 53, longitude: -1, elevationM: 80 };
const compiled = compileRules(shipped.pack, '2026-11-06');
const record = inventedDays(7, 2021, 2);

/** Two invented seasons at an invented field; made in each test, so that each can tell when its making breaks. */
function whole(changes: Partial<ReplayInput> = {}): ReplayInput {
  return {
    compiled,
    season: seasonDatesOf(compiled.parameters),
    place,
    record,
    given: replayField(),
    readingEveryDays: 7,
    ...changes,
  };
}
const replayed = (changes: Partial<ReplayInput> = {}) => [...replay(whole(changes))];

const outcomeIn = (day: ReplayDay, rule: string) =>
  day.outcomes[compiled.rules.findIndex((one) => one.rule.id === rule)];
const on = (iso: string, all: readonly ReplayDay[]) => all.find((day) => day.iso === iso)!;
const changed = (iso: string, change: Partial<WeatherDay>, days = record) =>
  days.map((day) => (day.iso === iso ? { ...day, ...change } : day));

describe('a replay of recorded seasons', () => {
  test('the engine and the tracing evaluator judge the facts of a sample of days alike', async () => {
    const counts = { met: 0, 'not-met': 0, unknown: 0 };
    for (const day of replayed().filter((_, index) => index % 4 === 0)) {
      const engine = await evaluateWithEngine(compiled, day.facts);
      expect(day.outcomes).toEqual(compiled.rules.map(({ rule }) => engine.get(rule.id)));
      expect(day.verdict).toBe(verdictWord(evaluateReference(compiled, day.facts)));
      for (const outcome of day.outcomes) counts[outcome] += 1;
    }
    expect(Math.min(...Object.values(counts))).toBeGreaterThan(20);
  });

  test('goes from the day the pack opens the season to its last day, over the turn of the year', () => {
    const days = replayed();
    expect(days.map(({ iso }) => iso).filter((iso) => iso.endsWith('10-01') || iso.endsWith('01-31'))).toEqual([
      '2021-10-01',
      '2022-01-31',
      '2022-10-01',
      '2023-01-31',
    ]);
    expect(days).toHaveLength(2 * (31 + 30 + 31 + 31));
    expect(new Set(days.map(({ season }) => season))).toEqual(new Set([2021, 2022]));
  });

  test('comes to every verdict in two seasons, and the same record gives the same days again', () => {
    const days = replayed();
    expect(new Set(days.map(({ verdict }) => verdict))).toEqual(new Set(['spray-today', 'wait', 'do-not-spray']));
    expect(replayed()).toEqual(days);
  });

  test('gives days one by one: a reader who stops early has nothing worked out beyond', () => {
    const read: number[] = [];
    const watched = new Proxy(record, {
      get: (all, key) => {
        if (/^\d+$/.test(String(key))) read.push(Number(key));
        return Reflect.get(all, key);
      },
    });
    const some = replay(whole({ record: watched }));
    some.next();
    read.length = 0;
    some.next();
    expect(Math.max(...read)).toBeLessThan(62 + 14);
  });

  test('rain of the day and the next counts as the 48 hours to come; that of the third day does not', () => {
    const dry = record.map((day) => (day.iso.startsWith('2021-11') ? { ...day, rainMm: 0 } : day));
    const wet = replayed({ record: changed('2021-11-10', { rainMm: 12, heaviestMmPerH: 2 }, dry) });
    const heavy = wet.filter((day) => outcomeIn(day, 'heavy-rain-coming') === 'met').map(({ iso }) => iso);
    expect(heavy.filter((iso) => iso > '2021-11-02' && iso < '2021-11-28')).toEqual(['2021-11-09', '2021-11-10']);
  });

  test('a day whose rain may all have fallen in one hour counts by that; a recorded hour outranks it', () => {
    const dry = record.map((day) => (day.iso.startsWith('2021-11') ? { ...day, rainMm: 0 } : day));
    const unsure = changed('2021-11-10', { rainMm: 5 }, dry);
    const spread = changed('2021-11-10', { rainMm: 5, heaviestMmPerH: 0.5 }, dry);
    expect(outcomeIn(on('2021-11-10', replayed({ record: unsure })), 'heavy-rain-coming')).toBe('met');
    expect(outcomeIn(on('2021-11-10', replayed({ record: spread })), 'heavy-rain-coming')).toBe('not-met');
  });

  test('the soil stands as read on the day of a reading and has a band between readings', () => {
    const temperature = (iso: string) => {
      const fact = on(iso, replayed()).facts['soil.temperature30cmC'];
      if (!fact?.known || fact.type !== 'number') throw new Error('a temperature was expected');
      return fact;
    };
    const truth = record.find(({ iso }) => iso === '2021-11-05')?.soil30cmC;
    expect(temperature('2021-11-05')).toMatchObject({ value: truth, low: truth, high: truth, source: 'measured' });
    const between = temperature('2021-11-10');
    expect(between.source).toBe('derived');
    expect(between.high - between.low).toBeGreaterThan(0.5);
    expect(Math.abs(between.value - record.find(({ iso }) => iso === '2021-11-10')!.soil30cmC!)).toBeLessThan(1.5);
  });

  test('a gap in the rain is unknown for the two days that need it, and is never dry', () => {
    const gap = changed('2021-11-10', { rainMm: null });
    const gappy = replayed({ record: gap });
    for (const iso of ['2021-11-09', '2021-11-10']) {
      expect(outcomeIn(on(iso, gappy), 'heavy-rain-coming')).toBe('unknown');
      expect(on(iso, gappy).verdict).not.toBe('spray-today');
    }
    expect(outcomeIn(on('2021-11-11', gappy), 'soil-too-dry')).toBe('unknown');
  });

  test('what was only held is listed as assumed, the field profile and what the record tells not', () => {
    const days = replayed();
    expect(on('2021-11-10', days).assumed).toContain('soil.surface');
    for (const id of ['field.drained', 'soil.temperature30cmC', 'wind.boomKmh', 'soil.drainsRunning'] as const) {
      expect(on('2021-11-10', days).assumed).not.toContain(id);
    }
  });

  test('drains that are sure to run by what fell before a gap are expected; else a gap leaves it unknown', () => {
    const expectedOn = (rainMm: number) => {
      const gap = changed('2021-12-06', { rainMm: null }, changed('2021-12-05', { rainMm }));
      return on('2021-12-05', replayed({ record: gap })).facts['soil.drainsExpected7d'];
    };
    expect(expectedOn(400)).toMatchObject({ known: true, possible: ['yes'] });
    expect(expectedOn(0)).toEqual({ known: false, reason: 'forecast-gap' });
  });

  test('on a field without drains none run and none are expected', () => {
    const undrained = replayed({ given: replayField({ 'field.drained': 'no' }) });
    for (const rule of ['water-standing', 'drains-about-to-run']) {
      expect(new Set(undrained.map((day) => outcomeIn(day, rule)))).toEqual(new Set(['not-met']));
    }
  });

  test('days that do not follow each other are refused', () => {
    const holed = record.filter(({ iso }) => iso !== '2021-11-10');
    expect(() => replayed({ record: holed })).toThrow(expect.objectContaining({ code: 'SCIENCE_OUT_OF_RANGE' }));
  });
});
