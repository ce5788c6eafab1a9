import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inputModeOf, parseNumber } from '../../web/forms/parse-number.ts';
import { loadWords } from '../../web/words.ts';

await loadWords('en');

const wind = { label: 'wind at the boom', unit: 'km/h', low: 0, high: 150 };
const soil = { label: 'soil temperature', unit: 'C', low: -20, high: 40 };

describe('a number box', () => {
  test.each([
    ['9.2', 9.2],
    ['9,2', 9.2],
    [' 12 ', 12],
    ['0,125', 0.125],
    ['+3', 3],
  ])('takes %j as %d', (text, value) => {
    expect(parseNumber(text, wind)).toEqual({ value });
  });

  test.each([
    ['-1.5', -1.5],
    ['−1,5', -1.5],
  ])('takes the minus sign of %j', (text, value) => {
    expect(parseNumber(text, soil)).toEqual({ value });
  });

  test.each([
    '12 mph',
    '9.2 C',
    '1e3',
    '0x10',
    'NaN',
    'Infinity',
    '1.2.3',
    '9.',
    '.5',
    '1 2',
    '٣',
    '10-12',
    '<5',
    'ten',
  ])('never makes a number of %j', (text) => {
    expect(parseNumber(text, wind)).toEqual({
      problem: `"${text}" is not just a number. For wind at the boom write only the number (in km/h), for example 9.2 or 9,2. Other units go in the box for your own words.`,
    });
  });

  test('an empty box is no zero', () => {
    expect(parseNumber('  ', wind)).toEqual({ problem: expect.stringContaining('Nothing is filled in') });
  });

  test('a comma before three digits is not guessed at', () => {
    expect(parseNumber('1,250', { ...wind, high: 5000 })).toEqual({
      problem: '"1,250" can be read in two ways. Write 1250, or 1.250.',
    });
  });

  test.each(['-1', '151'])('refuses %j outside its range and names the range', (text) => {
    expect(parseNumber(text, wind)).toEqual({
      problem: `wind at the boom goes from 0 to 150 km/h; ${text} lies outside.`,
    });
  });

  test('whatever is typed gives a number in range or a sentence, never anything else', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.double().map(String), fc.stringMatching(/^[-+.,0-9a-e ]{0,8}$/)), (text) => {
        const read = parseNumber(text, soil);
        if ('problem' in read) expect(read.problem).not.toBe('');
        else expect(read.value >= -20 && read.value <= 40).toBe(true);
      }),
    );
  });

  test('asks for a keyboard that has the signs it needs', () => {
    expect(inputModeOf({ low: -20, step: 0.1 })).toBe('text');
    expect(inputModeOf({ low: 0, step: 0.1 })).toBe('decimal');
    expect(inputModeOf({ low: 0, step: 1 })).toBe('numeric');
  });
});
