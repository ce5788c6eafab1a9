import { describe, expect, test } from 'vitest';
import { isLoamwardError } from '../../../src/core/errors/coded-error.ts';
import { cameAs, keyAs } from '../../../src/core/facts/parse/given.ts';
import { factIdOf, parseFacts, parseReading } from '../../../src/core/facts/parse/index.ts';
import { coreFacts } from '../../../src/core/facts/registry/index.ts';
import { utc } from './moments.ts';

const at = utc('2026-11-06T09:00Z');
const soil = 'soil.temperature30cmC';

/** What a refused facts file is told, but for the sentences of its code. */
function refused(json: unknown): Readonly<Record<string, unknown>> {
  try {
    parseFacts(json, at, 'Europe/London', coreFacts);
  } catch (error) {
    if (isLoamwardError(error)) return { code: error.code, ...error.details };
    throw error;
  }
  return {};
}

const feels = 'dry, slightly-moist, moist, wet, at-capacity, saturated';
const signs = 'friable, cracked, sticky, ponded, frozen, snow';
const countries =
  "GB-ENG, GB-SCT, GB-WLS, GB-NIR (ISO 3166-2), or another country's ISO 3166-1 alpha-2 code in capitals";
const wrongType = 'FACT_WRONG_TYPE';
const unknownChoice = 'FACT_CHOICE_UNKNOWN';

describe('a value that does not fit is told in full: what was expected, what came, where', () => {
  test.each<
    [string, unknown, code: string, expected: string, came: string, within?: string | undefined, nearest?: string]
  >([
    [soil, '12', wrongType, 'a number in C', '"12"'],
    [soil, { value: 9, low: null }, wrongType, 'a number in C', 'null', 'low'],
    [soil, { value: 9, high: true }, wrongType, 'a number in C', 'true', 'high'],
    [soil, Number.NaN, wrongType, 'a number in C', 'NaN'],
    [soil, { low: 1 }, wrongType, 'a member "value"', '{"low":1}'],
    [soil, { value: 9, hihg: 10 }, wrongType, 'only "value", "low", "high"', '"hihg"', undefined, 'high'],
    [soil, { value: 9, xxxxxxx: 1 }, wrongType, 'only "value", "low", "high"', '"xxxxxxx"'],
    [soil, 45.01, 'FACT_OUT_OF_RANGE', '-20 to 45 C', '45.01'],
    [soil, { value: 99, low: 9 }, 'FACT_OUT_OF_RANGE', '-20 to 45 C', '99', 'value'],
    [soil, { value: 9, low: -99 }, 'FACT_OUT_OF_RANGE', '-20 to 45 C', '-99', 'low'],
    [soil, { value: 9, low: 9.1 }, 'FACT_BAND_WRONG', 'low <= value <= high', '9.1, 9, 9', 'low'],
    [soil, { value: 9, high: 8 }, 'FACT_BAND_WRONG', 'low <= value <= high', '9, 9, 8', 'high'],
    ['soil.feel', 'most', unknownChoice, `one of ${feels}`, '"most"', undefined, 'moist'],
    ['soil.feel', 'qqqqqqqqqqqq', unknownChoice, `one of ${feels}`, '"qqqqqqqqqqqq"'],
    ['soil.feel', true, wrongType, `one of ${feels}`, 'true'],
    ['soil.feel', ['dry', 3], wrongType, `one of ${feels}`, '3', '1'],
    ['soil.feel', { value: ['dry', 'wett'] }, unknownChoice, `one of ${feels}`, '"wett"', 'value/1', 'wet'],
    ['soil.feel', { value: 7 }, wrongType, `one of ${feels}`, '7', 'value'],
    ['soil.feel', [], wrongType, `at least one of ${feels}`, '[]'],
    ['soil.feel', { value: 'dry', low: 'dry' }, wrongType, 'only "value"', '"low"'],
    ['field.drained', 'true', unknownChoice, 'one of yes, no', '"true"'],
    ['field.drained', 1, wrongType, 'one of yes, no', '1'],
    ['soil.surface', ['crackd'], unknownChoice, `one of ${signs}`, '"crackd"', '0', 'cracked'],
    ['soil.surface', { value: [], possible: 'snoww' }, unknownChoice, `one of ${signs}`, '"snoww"', 'possible', 'snow'],
    ['soil.surface', { value: [], possible: ['snow', 2] }, wrongType, `one of ${signs}`, '2', 'possible/1'],
    ['soil.surface', { value: [], absent: [] }, wrongType, 'only "value", "possible"', '"absent"'],
    ['field.country', 7, wrongType, countries, '7'],
    ['field.country', [], wrongType, countries, '[]'],
    ['field.country', { value: 'GB', low: 'x' }, wrongType, 'only "value"', '"low"'],
    ['field.country', ['GB', 'gb-wls'], unknownChoice, countries, '"gb-wls"', '1', 'GB-WLS'],
    ['field.country', { value: 'fr' }, unknownChoice, countries, '"fr"', 'value', 'FR'],
    ['field.country', 'XX', unknownChoice, countries, '"XX"'],
    ['field.country', 'xxxxxxxxxx', unknownChoice, countries, '"xxxxxxxxxx"'],
    ['date', '2026-02-30', wrongType, 'a calendar day written YYYY-MM-DD', '"2026-02-30"'],
    ['date', { value: '2026-11-06', low: 'x' }, wrongType, 'only "value"', '"low"'],
    ['date', '2026-11-05', 'FACT_DATE_OTHER_DAY', '2026-11-06', '2026-11-05'],
  ])('%s = %j', (fact, given, code, expected, came, within, nearest) => {
    const pointer = `/${fact}${within === undefined ? '' : `/${within}`}`;
    const near = nearest === undefined ? {} : { nearest };
    expect(refused({ [fact]: given })).toStrictEqual({ code, expected, came, fact, pointer, ...near });
  });

  test.each<[unknown, code: string, expected: string, came: string, within?: string]>([
    [{ value: 7, readAt: 'noon' }, wrongType, 'a date and time with Z or an offset', '"noon"', 'readAt'],
    [{ value: 7, readAt: 5 }, wrongType, 'a date and time with Z or an offset', '5', 'readAt'],
    [
      { value: 7, readAt: '2026-11-06T09:00:01Z' },
      'READING_IN_FUTURE',
      'a time up to 2026-11-06 09:00',
      '"2026-11-06T09:00:01Z"',
      'readAt',
    ],
    [{ value: 7, depthCm: 'ten' }, wrongType, 'a depth in cm', '"ten"', 'depthCm'],
    [{ value: 7, depthCm: Number.NaN }, wrongType, 'a depth in cm', 'NaN', 'depthCm'],
    [{ value: 7, depthCm: 10 }, 'DEPTH_NEEDS_HOUR', '"readAt" beside "depthCm"', '10 cm alone'],
    [{ value: 7, depthCm: 4.98765 }, 'DEPTH_NOT_30CM', '30 cm, or 5 to 100 cm with the hour', 'at 4.988 cm', 'depthCm'],
    [{ value: 7, depthCm: 100.1 }, 'DEPTH_NOT_30CM', '30 cm, or 5 to 100 cm with the hour', 'at 100.1 cm', 'depthCm'],
    [{ value: 7, depthCm: 30, low: 1, deep: 1 }, wrongType, 'only "value", "low", "high"', '"deep"'],
  ])('a reading of the soil with its depth or its moment: %j', (given, code, expected, came, within) => {
    const pointer = `/${soil}${within === undefined ? '' : `/${within}`}`;
    expect(refused({ [soil]: given })).toStrictEqual({ code, expected, came, fact: soil, pointer });
  });

  test('a list of readings names the one at fault', () => {
    const good = { value: 9, readAt: '2026-11-05T09:00Z' };
    expect(refused({ [soil]: [good, { ...good, value: 99 }] })).toMatchObject({ pointer: `/${soil}/1/value` });
  });

  test('depth and moment belong to the soil at 30 cm alone', () => {
    expect(refused({ 'air.temperatureC': { value: 7, depthCm: 30 } })).toMatchObject({
      expected: 'only "value", "low", "high"',
      came: '"depthCm"',
    });
  });

  test('an unknown name is told with the nearest right one, a long or hidden one cut and escaped', () => {
    const told = (key: string) => refused({ [key]: 1 });
    expect(told('soil.fele')).toStrictEqual({
      code: 'FACT_UNKNOWN_ID',
      expected: 'the id of a fact',
      came: '"soil.fele"',
      fact: 'soil.fele',
      pointer: '/soil.fele',
      nearest: 'soil.feel',
    });
    expect(told('qqqqqqqqqqqqqqqqqqqq')).not.toHaveProperty('nearest');
    const long = `soil.feel${'l'.repeat(72)}`;
    expect(told(long)).toMatchObject({ fact: `${long.slice(0, 77)}...`, pointer: `/${long.slice(0, 77)}...` });
    expect(told(long)).not.toHaveProperty('nearest');
    expect(told('a\u001b[2J')).toMatchObject({ fact: 'a\\u001b[2J' });
    expect(factIdOf('soil.feel', coreFacts)).toBe('soil.feel');
  });

  test('a file that is no object is told so', () => {
    const told = (came: string) => ({ code: 'FACTS_NOT_AN_OBJECT', expected: 'a JSON object', came, pointer: '' });
    expect(refused([1])).toStrictEqual(told('[1]'));
    expect(refused(null)).toStrictEqual(told('null'));
    expect(refused(undefined)).toStrictEqual(told('undefined'));
  });
});

describe('what came', () => {
  test.each<[unknown, string]>([
    [7, '7'],
    [Number.POSITIVE_INFINITY, 'Infinity'],
    ['x'.repeat(78), `"${'x'.repeat(78)}"`],
    ['x'.repeat(79), `"${'x'.repeat(76)}...`],
    [undefined, 'undefined'],
    [{ a: [1] }, '{"a":[1]}'],
  ])('%j is written %s, 80 characters at most', (value, text) => {
    expect(cameAs(value)).toBe(text);
    expect(cameAs(value).length).toBeLessThanOrEqual(80);
  });

  test('nested too deep to be written out is named as such', () => {
    const round: Record<string, unknown> = {};
    round['self'] = round;
    expect([cameAs(round), cameAs([round])]).toEqual(['an object nested too deep', 'a list nested too deep']);
  });

  test('a key keeps its letters and loses what steers a terminal', () => {
    expect(keyAs('soil "x"\n')).toBe('soil \\"x\\"\\n');
  });
});

describe('one value alone', () => {
  test('is read by its fact, at its own place unless another is named', () => {
    expect(parseReading(coreFacts, 'field.drained', { value: false })).toEqual({ type: 'choice', possible: ['no'] });
    expect(() => parseReading(coreFacts, 'wind.boomKmh', 'x')).toThrow('/wind.boomKmh');
    expect(() => parseReading(coreFacts, 'wind.boomKmh', 'x', '/facts/3')).toThrow('/facts/3');
  });
});
