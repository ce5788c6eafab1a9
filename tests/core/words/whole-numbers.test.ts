import { expect, test } from 'vitest';
import { words as english } from '../../../src/core/words/en/index.ts';
import { showNumber, showWhole } from '../../../src/core/words/numbers.ts';

test('every whole number up to a thousand is said as itself', () => {
  const numbers = Array.from({ length: 1001 }, (_, number) => number);
  expect(numbers.map((number) => showWhole(english, number))).toEqual(numbers.map(String));
});

test('a number beside its limit is said to four places at most, without noise', () => {
  expect(showNumber(english, 839.9999, 0, [840])).toBe('839.9999');
  expect(showNumber(english, 10.04, 0, [10])).toBe('10.04');
});
