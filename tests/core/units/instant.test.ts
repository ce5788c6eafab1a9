import { describe, expect, test } from 'vitest';
import { parseInstant } from '../../../src/core/units/instant.ts';
import { remember } from '../../../src/core/units/remember.ts';

const nine = Date.UTC(2026, 10, 6, 9) / 1000;

describe('a written moment', () => {
  test.each([
    ['2026-11-06T09:00:00Z', nine],
    ['2026-11-06T09:00Z', nine],
    ['2026-11-06T09Z', nine],
    ['2026-11-06T0900Z', nine],
    ['2026-11-06T09:00:30Z', nine + 30],
    ['2026-11-06T09:00:00.250Z', nine + 0.25],
    ['2026-11-06T09:00:00,5Z', nine + 0.5],
    ['2026-11-06T10:00+01:00', nine],
    ['2026-11-06T10:00+01', nine],
    ['2026-11-06T10:00+0100', nine],
    ['2026-11-06T05:30-03:30', nine],
    ['2026-11-06T23:00+14:00', nine],
    ['2028-02-29T00:00Z', Date.UTC(2028, 1, 29) / 1000],
  ])('%s is read', (text, seconds) => {
    expect(parseInstant(text)).toBe(seconds);
  });

  test.each([
    '',
    '2026-11-06',
    '2026-11-06T09:00',
    '2026-11-06 09:00Z',
    '2026-11-06T09:00 Z',
    '2026-11-06T09:00+15:00',
    '2026-11-06T09:00+1',
    '2026-11-06T09:00+01:60',
    '2026-11-06T25:00Z',
    '2026-13-06T09:00Z',
    '2026-02-29T09:00Z',
    '26-11-06T09:00Z',
    '2026-W45-5T09:00Z',
    'x2026-11-06T09:00Z',
    '2026-11-06T09:00Zx',
    '2026-11-06T09:00:00.Z',
  ])('"%s" is refused with what is wanted', (text) => {
    expect(() => parseInstant(text)).toThrow(
      expect.objectContaining({
        code: 'MOMENT_UNREADABLE',
        details: { expected: 'a date and time with Z or an offset', came: text },
      }),
    );
  });
});

describe('what is remembered', () => {
  test('is worked out once for the same questions, and apart for others', () => {
    const asked: string[] = [];
    const sum = remember((a: number, b: number) => {
      asked.push(`${a} ${b}`);
      return a + b;
    });
    expect([sum(1, 2), sum(1, 2), sum(12, 0), sum(1, 20)]).toEqual([3, 3, 12, 21]);
    expect(asked).toEqual(['1 2', '12 0', '1 20']);
  });

  test('is at most 512 answers, then all are let go', () => {
    let worked = 0;
    const same = remember((n: number) => {
      worked += 1;
      return n;
    });
    for (let n = 0; n < 512; n += 1) same(n);
    same(0);
    expect(worked).toBe(512);
    same(512);
    same(0);
    expect(worked).toBe(514);
  });
});
