import { describe, expect, test } from 'vitest';
import { goodUntilOf } from '../../../src/core/facts/ageing.ts';
import {
  depthProblem,
  is30cm,
  isWorkedOut,
  workedOutNote,
  workOutAt30cm,
} from '../../../src/core/facts/depth-reading.ts';
import { checkRange, judgePlausible } from '../../../src/core/facts/plausible.ts';
import { atPrecision } from '../../../src/core/facts/precision.ts';
import { fitsFact } from '../../../src/core/facts/reading-fits.ts';
import { coreFacts, type FactId } from '../../../src/core/facts/registry/index.ts';
import type { FactObservation } from '../../../src/core/facts/resolved.ts';
import { describeReading, sayReading } from '../../../src/core/facts/say-reading.ts';
import type { Reading } from '../../../src/core/facts/types.ts';
import { temperatureAt30cm } from '../../../src/core/science/soil/reading-at-depth.ts';
import { factDefinition } from '../../fixtures/core-facts.ts';
import { testParameters } from '../../generators/parameters.ts';
import { utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const soil: FactId = 'soil.temperature30cmC';
const ageing = { zone: 'Europe/London', parameters: testParameters(), registry: coreFacts, forecast: null };

const number = (value: number, more: object = {}): Reading => ({ type: 'number', value, ...more });
const choice = (...possible: string[]): Reading => ({ type: 'choice', possible });
const signs = (present: readonly string[], absent: readonly string[] = []): Reading => ({
  type: 'signs',
  present,
  absent,
  complete: false,
});
const seen = (fact: FactId, reading: Reading): FactObservation => ({ fact, reading, at, source: 'said' });

describe('a reading in words', () => {
  test.each<[FactId, Reading, string]>([
    [soil, number(9.6), '9.6 C'],
    ['soil.feel', choice('dry', 'moist'), 'dry or moist'],
    ['soil.surface', signs(['cracked', 'snow']), 'cracked, snow'],
    ['soil.surface', signs([]), 'none'],
    ['date', { type: 'date', iso: '2026-11-06' }, '2026-11-06'],
    ['soil.feel', { type: 'does-not-know' }, 'not known'],
  ])('of %s, %j, is "%s"', (id, reading, text) => {
    expect(sayReading(factDefinition(id), reading)).toBe(text);
    expect(describeReading(factDefinition(id), seen(id, reading), 'Europe/London')).toBe(`${text} at 2026-11-06 09:00`);
  });
});

describe('a reading fits its fact', () => {
  test.each<[FactId, Reading, boolean]>([
    [soil, number(45), true],
    [soil, number(45.1), false],
    [soil, number(9, { low: 10 }), false],
    [soil, choice('9'), false],
    ['soil.feel', choice('dry', 'moist'), true],
    ['soil.feel', choice('dry', 'soggy'), false],
    ['soil.feel', choice(), false],
    ['soil.feel', number(9), false],
    ['field.country', choice('GB', 'FR'), true],
    ['field.country', choice('GB', 'XX'), false],
    ['field.country', choice(), false],
    ['field.country', number(9), false],
    ['soil.surface', signs(['snow'], ['cracked']), true],
    ['soil.surface', signs([], []), true],
    ['soil.surface', signs(['moss'], ['cracked']), false],
    ['soil.surface', signs(['snow'], ['moss']), false],
    ['soil.surface', choice('snow'), false],
    ['date', { type: 'date', iso: '2026-11-06' }, true],
    ['date', { type: 'date', iso: '2026-11-31' }, false],
    ['date', choice('2026-11-06'), false],
  ])('%s, %j: %s', (id, reading, fits) => {
    expect(fitsFact(id, factDefinition(id), reading)).toBe(fits);
  });
});

describe('a number is within what can be', () => {
  test('at either end, and told with the member at fault', () => {
    const check = (value: number, band: object = {}) =>
      checkRange(soil, factDefinition(soil), { type: 'number', value, ...band });
    expect([check(-20), check(45), check(9, { low: 8, high: 10 }), check(9, { low: 9 })]).toEqual(Array(4).fill(null));
    expect(check(-20.1)).toMatchObject({ member: 'value', details: { came: '-20.1', fact: soil } });
    expect(check(9, { low: -20.1 })).toMatchObject({ code: 'FACT_OUT_OF_RANGE', member: 'low' });
    expect(check(9, { high: 45.1 })).toMatchObject({ code: 'FACT_OUT_OF_RANGE', member: 'high' });
    expect(check(9, { low: 9.1, high: 9.2 })).toMatchObject({ code: 'FACT_BAND_WRONG', member: 'low' });
    expect(check(9, { high: 8.9 })).toEqual({
      code: 'FACT_BAND_WRONG',
      member: 'high',
      details: { expected: 'low <= value <= high', came: '9, 9, 8.9', fact: soil },
    });
  });

  test('or anything finite where a fact has no range, and told without a unit where it has none', () => {
    const { range: _, plausible: __, ...bare } = factDefinition(soil);
    const judged = (value: number) => judgePlausible(soil, bare, { type: 'number', value });
    expect(judged(1e9)).toBe('fine');
    expect(judged(Number.POSITIVE_INFINITY)).toMatchObject({ expected: 'a finite number', came: 'Infinity' });
    const unitless = { ...factDefinition(soil), unit: null };
    expect(judgePlausible(soil, unitless, { type: 'number', value: 99 })).toMatchObject({ expected: '-20 to 45' });
  });
});

describe('a number is kept', () => {
  test.each([
    [
      { value: 9.994, low: 9.994, high: 9.994 },
      { value: 9.99, low: 9.99, high: 9.99 },
    ],
    [
      { value: 9.994, low: 9.994, high: 10.001 },
      { value: 9.99, low: 9.99, high: 10.01 },
    ],
    [
      { value: 9.996, low: 9.991, high: 9.996 },
      { value: 10, low: 9.99, high: 10 },
    ],
    [
      { value: 9.996, low: 9.996, high: 10.2 },
      { value: 10, low: 9.99, high: 10.2 },
    ],
    [
      { value: 9.994, low: 9.9, high: 9.994 },
      { value: 9.99, low: 9.9, high: 10 },
    ],
  ])('%j to a hundredth as %j: the value to the nearest, the band outward', (given, kept) => {
    expect(atPrecision(factDefinition(soil), given)).toEqual(kept);
  });
});

describe('a reading at another depth', () => {
  test.each([
    [4.99, false],
    [5, true],
    [100, true],
    [100.01, false],
  ])('of %d cm can be taken: %s', (depthCm, taken) => {
    expect(depthProblem(depthCm) === null).toBe(taken);
  });

  test.each([
    [29.4, false],
    [29.5, true],
    [30.5, true],
    [30.6, false],
  ])('of %d cm counts as 30 cm: %s', (depthCm, counts) => {
    expect(is30cm(depthCm)).toBe(counts);
  });

  test('says what it was worked out from, to the minute; one at 30 cm says nothing', () => {
    const read = { type: 'number', value: 7 } as const;
    const worked = workOutAt30cm(read, 10, utc('2026-11-06T15:40Z'), 'Europe/London');
    expect(workedOutNote(worked)).toBe('worked out from 7 C at 10 cm at 15:40');
    expect([isWorkedOut(worked), isWorkedOut(read), isWorkedOut(choice('dry'))]).toEqual([true, false, false]);
    expect(workedOutNote(read)).toBeNull();
    const hour = workOutAt30cm(read, 10, utc('2026-11-06T15:00Z'), 'Europe/London');
    expect(hour.value).not.toBe(worked.value);
    expect(worked.low! < worked.value && worked.value < worked.high!).toBe(true);
    for (const one of [worked.value, worked.low!, worked.high!])
      expect(Math.round(one * 100)).toBeCloseTo(one * 100, 9);
  });

  test('is never told as minus nothing', () => {
    const shift = temperatureAt30cm(0, 10, 9 * 3600).valueC;
    const { value } = workOutAt30cm({ type: 'number', value: -shift - 0.002 }, 10, at, 'Europe/London');
    expect(value).toBe(0);
  });
});

describe('the start of the season by which a field ages', () => {
  test.each(['1 July', '13-01', '00-10', '07-32', '07-00', '107-01', '07-011', 701])('%j is refused', (value) => {
    const parameters = testParameters({ fieldProfileSeasonStart: value });
    expect(() => goodUntilOf({ kind: 'season' }, at, { ...ageing, parameters })).toThrow(
      expect.objectContaining({
        code: 'PARAMETER_MISSING',
        details: {
          expected: 'a month and day (MM-DD) in force on this day',
          came: String(value),
          parameter: 'fieldProfileSeasonStart',
        },
      }),
    );
  });

  test.each(['01-01', '12-31', '10-10', '02-29'])('%s is taken', (value) => {
    const parameters = testParameters({ fieldProfileSeasonStart: value });
    expect(goodUntilOf({ kind: 'season' }, at, { ...ageing, parameters })).toBeGreaterThan(at);
  });
});
