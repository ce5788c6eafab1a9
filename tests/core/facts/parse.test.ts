import { describe, expect, test } from 'vitest';
import { isLoamwardError, type LoamwardError } from '../../../src/core/errors/coded-error.ts';
import { countryCodes } from '../../../src/core/facts/country-codes.ts';
import { momentOfFacts, parseFacts } from '../../../src/core/facts/parse/index.ts';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const zone = 'Europe/London';

function refusal(json: unknown): LoamwardError {
  try {
    parseFacts(json, at, zone, coreFacts);
  } catch (error) {
    if (isLoamwardError(error)) return error;
    throw error;
  }
  throw new Error(`taken: ${JSON.stringify(json)}`);
}

describe('a value that fits is read', () => {
  test.each([
    ['soil.temperature30cmC', 9.8, { type: 'number', value: 9.8 }],
    [
      'soil.temperature30cmC',
      { value: 9.8, low: 9.4, high: 10.3 },
      { type: 'number', value: 9.8, low: 9.4, high: 10.3 },
    ],
    ['soil.temperature30cmC', { value: 9.8, high: 10.3 }, { type: 'number', value: 9.8, high: 10.3 }],
    ['air.temperatureC', -0, { type: 'number', value: 0 }],
    ['field.drained', true, { type: 'choice', possible: ['yes'] }],
    ['field.drained', false, { type: 'choice', possible: ['no'] }],
    ['field.drained', { value: 'no' }, { type: 'choice', possible: ['no'] }],
    ['soil.feel', 'moist', { type: 'choice', possible: ['moist'] }],
    ['soil.feel', ['wet', 'moist', 'wet'], { type: 'choice', possible: ['moist', 'wet'] }],
    ['soil.surface', 'cracked', { type: 'signs', present: ['cracked'], absent: [], complete: true }],
    [
      'soil.surface',
      ['sticky', 'cracked'],
      { type: 'signs', present: ['cracked', 'sticky'], absent: [], complete: true },
    ],
    ['soil.surface', [], { type: 'signs', present: [], absent: [], complete: true }],
    [
      'soil.surface',
      { value: ['friable'], possible: ['cracked'] },
      { type: 'signs', present: ['friable'], absent: ['sticky', 'ponded', 'frozen', 'snow'], complete: false },
    ],
    ['field.country', 'GB-SCT', { type: 'choice', possible: ['GB-SCT'] }],
    ['field.country', 'IE', { type: 'choice', possible: ['IE'] }],
    ['field.country', 'GB', { type: 'choice', possible: ['GB'] }],
    ['field.country', 'UK', { type: 'choice', possible: ['UK'] }],
    ['field.country', ['GB-ENG', 'GB-WLS'], { type: 'choice', possible: ['GB-ENG', 'GB-WLS'] }],
  ])('%s = %j', (fact, given, reading) => {
    expect(parseFacts({ [fact]: given }, at, zone, coreFacts)).toEqual([{ fact, reading, at, source: 'said' }]);
  });

  test('null and a missing key are left out', () => {
    expect(parseFacts({ 'soil.feel': null }, at, zone, coreFacts)).toEqual([]);
  });

  test('every id of the registry of countries is taken, and there are 249 of them (ISO 3166-1)', () => {
    expect(new Set(countryCodes).size).toBe(249);
    for (const code of countryCodes) expect(parseFacts({ 'field.country': code }, at, zone, coreFacts)).toHaveLength(1);
  });
});

describe('a value that does not fit is refused with code, fact, place and nearest right name', () => {
  test.each([
    [{ 'soil.temperature30cmC': '12' }, 'FACT_WRONG_TYPE', '/soil.temperature30cmC', undefined],
    [{ 'soil.temperature30cmC': true }, 'FACT_WRONG_TYPE', '/soil.temperature30cmC', undefined],
    [{ 'soil.temperature30cmC': [9] }, 'FACT_WRONG_TYPE', '/soil.temperature30cmC', undefined],
    [{ 'soil.temperature30cmC': Number.POSITIVE_INFINITY }, 'FACT_WRONG_TYPE', '/soil.temperature30cmC', undefined],
    [{ 'soil.temperature30cmC': { value: null } }, 'FACT_WRONG_TYPE', '/soil.temperature30cmC/value', undefined],
    [{ 'soil.temperature30cmC': { low: 1 } }, 'FACT_WRONG_TYPE', '/soil.temperature30cmC', undefined],
    [{ 'soil.temperature30cmC': { value: 9, hihg: 10 } }, 'FACT_WRONG_TYPE', '/soil.temperature30cmC', 'high'],
    [{ 'soil.temperature30cmC': { value: 9, low: '8' } }, 'FACT_WRONG_TYPE', '/soil.temperature30cmC/low', undefined],
    [{ 'soil.temperature30cmC': 45.01 }, 'FACT_OUT_OF_RANGE', '/soil.temperature30cmC', undefined],
    [{ 'soil.temperature30cmC': -20.01 }, 'FACT_OUT_OF_RANGE', '/soil.temperature30cmC', undefined],
    [
      { 'soil.temperature30cmC': { value: 9, high: 99 } },
      'FACT_OUT_OF_RANGE',
      '/soil.temperature30cmC/high',
      undefined,
    ],
    [{ 'soil.temperature30cmC': { value: 9, low: 9.1 } }, 'FACT_BAND_WRONG', '/soil.temperature30cmC/low', undefined],
    [{ 'soil.temperature30cmC': { value: 9, high: 8.9 } }, 'FACT_BAND_WRONG', '/soil.temperature30cmC/high', undefined],
    [{ 'soil.temprature30cmC': 9 }, 'FACT_UNKNOWN_ID', '/soil.temprature30cmC', 'soil.temperature30cmC'],
    [{ 'a/b~c': 9 }, 'FACT_UNKNOWN_ID', '/a~1b~0c', undefined],
    [JSON.parse('{"__proto__":1}'), 'FACT_UNKNOWN_ID', '/__proto__', undefined],
    [{ 'soil.feel': 'most' }, 'FACT_CHOICE_UNKNOWN', '/soil.feel', 'moist'],
    [{ 'soil.feel': ['moist', 'Wet'] }, 'FACT_CHOICE_UNKNOWN', '/soil.feel/1', 'wet'],
    [{ 'soil.feel': [] }, 'FACT_WRONG_TYPE', '/soil.feel', undefined],
    [{ 'soil.feel': true }, 'FACT_WRONG_TYPE', '/soil.feel', undefined],
    [{ 'soil.feel': { value: 'moist', low: 'dry' } }, 'FACT_WRONG_TYPE', '/soil.feel', undefined],
    [{ 'soil.surface': ['crackd'] }, 'FACT_CHOICE_UNKNOWN', '/soil.surface/0', 'cracked'],
    [{ 'field.country': 'gb-eng' }, 'FACT_CHOICE_UNKNOWN', '/field.country', 'GB-ENG'],
    [{ 'field.country': 'GB-LND' }, 'FACT_CHOICE_UNKNOWN', '/field.country', 'GB-ENG'],
    [{ 'field.country': 'XX' }, 'FACT_CHOICE_UNKNOWN', '/field.country', undefined],
    [{ date: '2026-02-30' }, 'FACT_WRONG_TYPE', '/date', undefined],
    [{ date: '6 November 2026' }, 'FACT_WRONG_TYPE', '/date', undefined],
    [{ date: 20261106 }, 'FACT_WRONG_TYPE', '/date', undefined],
    [{ date: '2026-11-05' }, 'FACT_DATE_OTHER_DAY', '/date', undefined],
    [[], 'FACTS_NOT_AN_OBJECT', '', undefined],
    [null, 'FACTS_NOT_AN_OBJECT', '', undefined],
    ['facts', 'FACTS_NOT_AN_OBJECT', '', undefined],
  ])('%j is %s at %s', (json, code, pointer, nearest) => {
    const error = refusal(json);
    expect(error.code).toBe(code);
    expect(error.details.pointer).toBe(pointer);
    expect(error.details.nearest).toBe(nearest);
    if (code !== 'FACTS_NOT_AN_OBJECT') expect(error.details.fact).toBe(Object.keys(json)[0]);
  });

  test('the range is said with its unit', () => {
    expect(refusal({ 'soil.temperature30cmC': 99 }).details.expected).toBe('-20 to 45 C');
  });
});

describe('the date is that of the moment in the zone', () => {
  test.each([
    ['2026-11-06T23:59Z', 'Europe/London', '2026-11-06'],
    ['2026-11-06T23:59Z', 'Asia/Kolkata', '2026-11-07'],
    ['2026-07-06T23:30Z', 'Europe/London', '2026-07-07'],
  ])('%s in %s is %s', (moment, where, day) => {
    expect(parseFacts({ date: day }, utc(moment), where, coreFacts)).toEqual([]);
  });

  test.each([
    ['2026-11-06', 'Europe/London', '2026-11-06T12:00Z'],
    ['2026-07-06', 'Europe/London', '2026-07-06T11:00Z'],
    ['2026-10-25', 'Europe/London', '2026-10-25T12:00Z'],
    ['2026-11-06', 'Asia/Kolkata', '2026-11-06T06:30Z'],
  ])('a date %s alone means noon in %s', (date, where, moment) => {
    expect(momentOfFacts({ date }, where, coreFacts)).toBe(utc(moment));
    expect(momentOfFacts({}, where, coreFacts)).toBeNull();
  });

  test('a zone that does not exist is refused', () => {
    expect(() => momentOfFacts({ date: '2026-11-06' }, 'Europe/Nowhere', coreFacts)).toThrowError(/ZONE_UNKNOWN/);
  });
});

describe('several readings of the soil temperature', () => {
  const early = { value: 9, readAt: '2026-11-06T06:00Z' };
  const late = { value: 10, readAt: '2026-11-06T08:00Z' };

  test('are a list of readings that each say when, told oldest first', () => {
    const readings = parseFacts({ 'soil.temperature30cmC': [late, early] }, at, zone, coreFacts);
    expect(readings.map(({ at: seenAt }) => seenAt)).toEqual([utc('2026-11-06T06:00Z'), utc('2026-11-06T08:00Z')]);
  });

  test.each([
    ['an empty list', []],
    ['a list in which one does not say when', [early, { value: 10 }]],
    ['a list in which one is a bare number', [early, 10]],
    ['a list of nothing', [null]],
  ])('%s is refused at the fact', (_, given) => {
    expect(refusal({ 'soil.temperature30cmC': given })).toMatchObject({
      code: 'FACT_WRONG_TYPE',
      details: { pointer: '/soil.temperature30cmC' },
    });
  });

  test('no other fact is a list of readings', () => {
    expect(refusal({ 'wind.boomKmh': [early] }).code).toBe('FACT_WRONG_TYPE');
  });
});
